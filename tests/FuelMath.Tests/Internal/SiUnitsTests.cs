using UnitsNet;

namespace FuelMath.Tests.Internal;

/// <summary>
/// The door between quantities and numbers: a slip of a factor there would be a slip everywhere. The unit library holds
/// some factors to seven digits only; those are named with their tolerance.
/// </summary>
public sealed class SiUnitsTests
{
    private const double Exact = 3e-14;

    /// <summary>Pound per mechanical horsepower and hour, in kg/J.</summary>
    private const double Consumption = 608.277387832e-3 / 3.6e6;

    /// <summary>Defined or exact factors, as the table of the guide and an independent program of conversions have them.</summary>
    [Fact]
    [Trait("Source", "NIST-SP-811")]
    public void InSi_DefinedFactors_Agrees()
    {
        Close.Within(Exact, 3.785411784e-3, Volume.FromUsGallons(1).InSi());
        Close.Within(Exact, 4.54609e-3, Volume.FromImperialGallons(1).InSi());
        Close.Within(Exact, 3.785411784e-3 / 60, VolumeFlow.FromUsGallonsPerMinute(1).InSi());
        Close.Within(Exact, 1e5, Pressure.FromBars(1).InSi());
        Close.Within(Exact, 0.0254, Length.FromInches(1).InSi());
        Close.Within(Exact, 0.3048, Length.FromFeet(1).InSi());
        Close.Within(Exact, 0.45359237, Mass.FromPounds(1).InSi());
        Close.Within(Exact, 1e-3, DynamicViscosity.FromCentipoise(1).InSi());
        Close.Within(Exact, 1e-6, KinematicViscosity.FromCentistokes(1).InSi());
        Close.Within(Exact, 735.49875, Power.FromMetricHorsepower(1).InSi());
        Close.Within(Exact, 1e-6 / 60, VolumeFlow.FromCubicCentimetersPerMinute(1).InSi());
        Close.Within(Exact, 273.15, Temperature.FromDegreesCelsius(0).InSi());
        Close.Within(Exact, 288.70555555555558, Temperature.FromDegreesFahrenheit(60).InSi());
        Close.Within(Exact, 9.80665, Acceleration.FromStandardGravity(1).InSi());
    }

    /// <summary>Factors with many digits: the digits that the unit library keeps.</summary>
    [Fact]
    [Trait("Source", "GNU-units")]
    public void InSi_FactorsOfManyDigits_AgreesToThoseTheLibraryKeeps()
    {
        Close.Within(Exact, 6894.757293168361, Pressure.FromPoundsForcePerSquareInch(1).InSi());
        Close.Within(Exact, 101_325, Pressure.FromAtmospheres(1).InSi());
        Close.Within(Exact, 4.4482216152605, Force.FromPoundsForce(1).InSi());
        Close.Within(5e-12, Math.PI / 30, RotationalSpeed.FromRevolutionsPerMinute(1).InSi());
        Close.Within(2e-11, Consumption, BrakeSpecificFuelConsumption.FromPoundsPerMechanicalHorsepowerHour(1).InSi());
        Close.Within(4e-8, 2326, SpecificEnergy.FromBtuPerPound(1).InSi());
        Close.Within(2e-7, 133.322368421053, Pressure.FromMillimetersOfMercury(1).InSi());
        Close.Within(2e-7, 0.45359237 / 3600, MassFlow.FromPoundsPerHour(1).InSi());
        // The unit library takes 745.69 W.
        Close.Within(1.4e-5, 745.69987158227, Power.FromMechanicalHorsepower(1).InSi());
    }

    /// <summary>In and out again is the same number.</summary>
    [Theory]
    [InlineData(1.2345e-5)]
    [InlineData(987.654)]
    public void FactoriesAndReaders_ThereAndBack_AreTheSame(double x)
    {
        Assert.Equal(x, SiUnits.Pressure(x).InSi());
        Assert.Equal(x, SiUnits.VolumeFlow(x).InSi());
        Assert.Equal(x, SiUnits.MassFlow(x).InSi());
        Assert.Equal(x, SiUnits.Volume(x).InSi());
        Assert.Equal(x, SiUnits.Mass(x).InSi());
        Assert.Equal(x, SiUnits.Length(x).InSi());
        Assert.Equal(x, SiUnits.Area(x).InSi());
        Assert.Equal(x, SiUnits.Density(x).InSi());
        Assert.Equal(x, SiUnits.DynamicViscosity(x).InSi());
        Assert.Equal(x, SiUnits.KinematicViscosity(x).InSi());
        Assert.Equal(x, SiUnits.Temperature(x).InSi());
        Assert.Equal(x, SiUnits.ElectricPotential(x).InSi());
        Assert.Equal(x, SiUnits.ElectricCurrent(x).InSi());
        Assert.Equal(x, SiUnits.ElectricResistance(x).InSi());
        Assert.Equal(x, SiUnits.Duration(x).InSi());
        Assert.Equal(x, SiUnits.RotationalSpeed(x).InSi());
        Assert.Equal(x, SiUnits.Frequency(x).InSi());
        Assert.Equal(x, SiUnits.Power(x).InSi());
        Assert.Equal(x, SiUnits.SpecificEnergy(x).InSi());
        Assert.Equal(x, SiUnits.Speed(x).InSi());
        Assert.Equal(x, SiUnits.Force(x).InSi());
        Assert.Equal(x, SiUnits.Ratio(x).InSi());
    }
}

using UnitsNet;
using UnitsNet.Units;
using static FuelMath.Tests.Fuels.TestFuels;

namespace FuelMath.Tests.Fuels;

/// <summary>Where density, viscosity and vapor pressure end, and what can't be made into one.</summary>
public sealed class LiquidPropertyLimitsTests
{
    [Fact]
    public void At_OutsideTheRange_SaysTheRangeInTheCallersUnit()
    {
        var error = Assert.Throws<OutsideTableException>(() =>
            StandardFuels.Ethanol.DensityAt(Temperature.FromDegreesFahrenheit(300))
        );

        Words.Says("-4, 212, 300", error);
        Assert.Equal(212, error.Maximum, 1e-9);
    }

    [Theory]
    [InlineData(-18)]
    [InlineData(90)]
    public void At_TheEdgesInOtherUnits_Counts(double celsius)
    {
        Fuel gasoline = StandardFuels.PumpGasoline;
        Temperature edge = Celsius.Of(celsius);

        foreach (TemperatureUnit unit in Temperature.Units)
        {
            Close.Within(
                1e-9,
                gasoline.DensityAt(edge).KilogramsPerCubicMeter,
                gasoline.DensityAt(edge.ToUnit(unit)).KilogramsPerCubicMeter
            );
        }
    }

    [Fact]
    public void VaporPressureFromReid_AboveItsTable_Refuses()
    {
        LiquidVaporPressure strict = LiquidVaporPressure.FromReid(new(Pressure.FromKilopascals(60)));

        Assert.Throws<OutsideTableException>(() => strict.At(Celsius.Of(45)));
        Assert.Empty(strict.Estimates);
    }

    [Fact]
    public void VaporPressureFromReidCarriedOn_AboveItsTable_IsLabelled()
    {
        LiquidVaporPressure carried = LiquidVaporPressure.FromReidCarriedOn(new(Pressure.FromKilopascals(60)));

        Assert.True(carried.At(Celsius.Of(45)) > carried.At(Celsius.Of(37)));
        Assert.StartsWith("Vapor pressure above 37.8 °C", Assert.Single(carried.Estimates));
        Assert.Throws<OutsideTableException>(() => carried.At(Celsius.Of(121)));
    }

    [Fact]
    public void VaporPressureFromReid_OutsideTheTable_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            LiquidVaporPressure.FromReid(new(Pressure.FromKilopascals(20)))
        );

        Words.Says("41.37 kPa, 103.42 kPa, 20 kPa", error);
    }

    [Fact]
    public void Unknown_Asked_SaysWhy()
    {
        LiquidVaporPressure unknown = LiquidVaporPressure.Unknown("nobody measured it.");

        Assert.False(unknown.IsKnown);
        var error = Assert.Throws<UnknownPropertyException>(() => unknown.At(Celsius.Of(20)));
        Assert.Equal("The vapor pressure is not known: nobody measured it.", error.Message);
    }

    [Fact]
    public void Unknown_WithoutReason_Refuses() =>
        Assert.Throws<ArgumentException>(() => LiquidVaporPressure.Unknown(" "));

    [Fact]
    public void DensityFromPoints_Rising_Refuses()
    {
        var error = Assert.Throws<ArgumentException>(() => Densities([0, 20], [700, 710]));

        Words.Says("1", error);
    }

    [Fact]
    public void DensityFromPoints_TemperaturesUnsorted_Refuses()
    {
        var error = Assert.Throws<ArgumentException>(() => Densities([20, 0], [710, 700]));

        Words.Says("1", error);
    }

    [Fact]
    public void DensityFromPoints_OnePoint_Refuses()
    {
        var error = Assert.Throws<ArgumentException>(() => Densities([20], [710]));

        Words.Says("2, 1", error);
    }

    [Fact]
    public void DensityFromPoints_UnequalNumbers_Refuses()
    {
        var error = Assert.Throws<ArgumentException>(() => Densities([0, 20, 40], [710, 700]));

        Words.Says("3, 2", error);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(-1)]
    public void DensityFromPoints_NotPositive_Refuses(double density) =>
        Assert.ThrowsAny<ArgumentException>(() => Densities([0, 20], [710, density]));

    [Fact]
    public void ViscosityFromOil_TooThin_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Oil(10, 1.5));

        Words.Says("2 cSt, 1.5 cSt", error);
    }

    [Fact]
    public void ViscosityFromOil_WrongWayRound_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Oil(8, 50));

        Words.Says("50 cSt, 8 cSt", error);
    }

    private static LiquidDensity Densities(double[] celsius, double[] densities) =>
        LiquidDensity.FromPoints(
            celsius.Select(Celsius.Of),
            densities.Select(d => Density.FromKilogramsPerCubicMeter(d)),
            Invented
        );

    private static LiquidViscosity Oil(double at40, double at100) =>
        LiquidViscosity.FromOil(
            KinematicViscosity.FromCentistokes(at40),
            KinematicViscosity.FromCentistokes(at100),
            StandardFuels.TwoStrokeOil.Density,
            Invented
        );
}

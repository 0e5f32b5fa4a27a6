using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;
using static FuelMath.Tests.Fuels.TestFuels;

namespace FuelMath.Tests.Fuels;

/// <summary>Density, viscosity and vapor pressure against temperature, and what they refuse.</summary>
[Properties(Arbitrary = [typeof(FuelArbitraries)])]
public sealed class LiquidPropertyTests
{
    private static readonly Temperature[] ThreeTemperatures = [Celsius.Of(0), Celsius.Of(20), Celsius.Of(50)];

    // Expansion constants of the gasoline band, evaluated apart from this code to six digits.
    [Theory]
    [InlineData(700, 5, 709.298)]
    [InlineData(730, 25, 720.833)]
    [InlineData(745, -10, 767.376)]
    [InlineData(745, 50, 713.000)]
    [InlineData(770, 30, 756.603)]
    [Trait("Source", "ASTM-D1250")]
    public void DensityAt_Gasoline_IsTheSeparateEvaluation(double at15, double celsius, double density) =>
        Assert.Equal(
            density,
            LiquidDensity
                .FromGasolineAt15Celsius(Density.FromKilogramsPerCubicMeter(at15))
                .At(Celsius.Of(celsius))
                .KilogramsPerCubicMeter,
            6e-4
        );

    // Table 7.1-2: true vapor pressure in psi at °F for Reid vapor pressures of 13, 10 and 7 psi. Table and equation differ
    // by up to 0.2 psi, and editions by 0.1 psi: 4 %.
    [Theory]
    [InlineData(13, 40, 4.7)]
    [InlineData(13, 60, 6.9)]
    [InlineData(13, 80, 9.9)]
    [InlineData(13, 100, 13.8)]
    [InlineData(10, 50, 4.2)]
    [InlineData(10, 70, 6.2)]
    [InlineData(10, 90, 8.8)]
    [InlineData(10, 100, 10.5)]
    [InlineData(7, 60, 3.5)]
    [InlineData(7, 100, 7.4)]
    [Trait("Source", "EPA-AP42")]
    public void VaporPressureAt_Gasoline_IsThePrintedTable(double reidPsi, double fahrenheit, double psi) =>
        Close.Within(
            0.04,
            psi,
            LiquidVaporPressure
                .FromReid(new AbsolutePressure(Pressure.FromPoundsForcePerSquareInch(reidPsi)))
                .At(Temperature.FromDegreesFahrenheit(fahrenheit))
                .AboveVacuum.PoundsForcePerSquareInch
        );

    // Worked example of a public page: 404 mm²/s at 40 °C and 28 mm²/s at 100 °C give 132.126 mm²/s at 60 °C.
    [Fact]
    [Trait("Source", "ASTM-D341")]
    public void ViscosityAt_OilBetweenItsTwoPoints_IsTheWorkedExample()
    {
        LiquidDensity density = LiquidDensity.FromLubricantAt15Celsius(Density.FromKilogramsPerCubicMeter(900));
        LiquidViscosity oil = LiquidViscosity.FromOil(
            KinematicViscosity.FromCentistokes(404),
            KinematicViscosity.FromCentistokes(28),
            density,
            Invented
        );

        double kinematic =
            oil.At(Celsius.Of(60)).PascalSeconds / density.At(Celsius.Of(60)).KilogramsPerCubicMeter * 1e6;

        // The page uses 273.15 and six digits.
        Close.Within(1e-5, 132.126, kinematic);
    }

    [Property]
    public void DensityAt_Warmer_IsLess(Fuel fuel, Warmth a, Warmth b)
    {
        if (Math.Abs(a.Degrees - b.Degrees) < 1e-9)
        {
            return;
        }

        (Warmth cold, Warmth hot) = a.Degrees < b.Degrees ? (a, b) : (b, a);

        Assert.True(fuel.DensityAt(hot.Temperature) < fuel.DensityAt(cold.Temperature));
        Assert.True(fuel.ViscosityAt(hot.Temperature) < fuel.ViscosityAt(cold.Temperature));
    }

    [Property]
    public void At_SameTemperatureInFahrenheit_IsTheSame(Fuel fuel, Warmth at)
    {
        Temperature fahrenheit = at.Temperature.ToUnit(TemperatureUnit.DegreeFahrenheit);

        // Two conversions round by a few parts in 1e16 of 300 K, and density goes with about 1e-3/K.
        Close.Within(
            1e-14,
            fuel.DensityAt(at.Temperature).KilogramsPerCubicMeter,
            fuel.DensityAt(fahrenheit).KilogramsPerCubicMeter
        );
    }

    [Property]
    public void VaporPressure_OfGasoline_RisesWithReidVaporPressure(Gasoline gasoline)
    {
        Gasoline drier = gasoline with { Reid = gasoline.Reid * 0.98 };
        if (drier.Reid < 42)
        {
            return;
        }

        Assert.True(gasoline.ToFuel().VaporPressureAt(Celsius.Of(20)) > drier.ToFuel().VaporPressureAt(Celsius.Of(20)));
    }

    // The Reid pressure is measured at 100 °F with four volumes of vapor space, which holds some of the fuel back.
    [Property]
    public void VaporPressure_OfGasolineAtTheReidTemperature_ExceedsTheReidPressure(Gasoline gasoline) =>
        Assert.InRange(
            gasoline.ToFuel().VaporPressureAt(Temperature.FromDegreesFahrenheit(100)).AboveVacuum.Kilopascals,
            gasoline.Reid,
            gasoline.Reid * 1.1
        );

    [Fact]
    public void DensityFromPoints_ThroughItsPoints_GivesThemBack()
    {
        double[] given = [760, 742, 715];
        LiquidDensity density = LiquidDensity.FromPoints(
            ThreeTemperatures,
            given.Select(d => Density.FromKilogramsPerCubicMeter(d)),
            Invented
        );

        Assert.Equal(given, ThreeTemperatures.Select(t => Math.Round(density.At(t).KilogramsPerCubicMeter, 9)));
        Assert.Equal(0, density.LowestTemperature!.Value.DegreesCelsius, 1e-9);
        Assert.Equal(50, density.HighestTemperature!.Value.DegreesCelsius, 1e-9);
        Assert.Equal(Invented, Assert.Single(density.Sources));
    }

    // Two points make ln mu straight over 1/T: the geometric mean where 1/T is halfway.
    [Fact]
    [Trait("Source", "Definition")]
    public void ViscosityFromPoints_TwoPoints_IsStraightInTheLogarithm()
    {
        LiquidViscosity viscosity = LiquidViscosity.FromPoints(
            [Temperature.FromKelvins(250), Temperature.FromKelvins(375)],
            [DynamicViscosity.FromMillipascalSeconds(4), DynamicViscosity.FromMillipascalSeconds(1)],
            Invented
        );

        Close.Within(1e-12, 2, viscosity.At(Temperature.FromKelvins(300)).MillipascalSeconds);
    }

    [Fact]
    public void VaporPressureFromPoints_ThroughItsPoints_GivesThemBack()
    {
        double[] given = [10, 30, 90];
        LiquidVaporPressure pressure = LiquidVaporPressure.FromPoints(
            ThreeTemperatures,
            given.Select(k => new AbsolutePressure(Pressure.FromKilopascals(k))),
            Invented
        );

        Assert.Equal(given, ThreeTemperatures.Select(t => Math.Round(pressure.At(t).AboveVacuum.Kilopascals, 9)));
    }
}

using UnitsNet;

namespace FuelMath.Tests.Fuels;

/// <summary>Bench fluids by their standard, and the blends that come with the library.</summary>
public sealed class CalibrationFluidTests
{
    [Fact]
    [Trait("Source", "ISO-4113")]
    public void DieselBench_HasTheRangesOfTheStandard()
    {
        CalibrationFluid fluid = CalibrationFluid.DieselBench;

        Close.Within(1e-12, 820, fluid.LowestDensity.KilogramsPerCubicMeter);
        Close.Within(1e-12, 830, fluid.HighestDensity.KilogramsPerCubicMeter);
        Close.Within(1e-12, 2.45, fluid.LowestViscosity.Centistokes);
        Close.Within(1e-12, 2.75, fluid.HighestViscosity.Centistokes);
        Assert.Equal(40, fluid.ViscosityTemperature.DegreesCelsius, 1e-9);
    }

    // The closer grade of the standard, 823.5 to 826.5 kg/m³ and 2.50 to 2.55 mm²/s, lies inside the wider one.
    [Theory]
    [InlineData(823.5, 2.50)]
    [InlineData(826.5, 2.55)]
    [Trait("Source", "ISO-4113")]
    public void ToFuel_CloserGrade_IsAccepted(double density, double centistokes)
    {
        Fuel fuel = CalibrationFluid.DieselBench.ToFuel(
            Density.FromKilogramsPerCubicMeter(density),
            Viscosity(centistokes, density, 40),
            TestFuels.Invented
        );

        Close.Within(1e-12, density, fuel.DensityAt(Celsius.Of(15)).KilogramsPerCubicMeter);
        Assert.Contains(fuel.Cautions, c => c.Contains("mist", StringComparison.Ordinal));
        Assert.False(fuel.VaporPressure.IsKnown);
        Assert.Null(fuel.LowerHeatingValue);
    }

    [Fact]
    public void ToFuel_DensityOutsideTheStandard_Refuses() =>
        Words.Says(
            "820 kg/m³, 830 kg/m³, 840 kg/m³",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                CalibrationFluid.DieselBench.ToFuel(
                    Density.FromKilogramsPerCubicMeter(840),
                    Viscosity(2.5, 840, 40),
                    TestFuels.Invented
                )
            )
        );

    [Fact]
    public void ToFuel_ViscosityOutsideTheStandard_Refuses() =>
        Words.Says(
            "0.9 cSt, 1.3 cSt, 25 °C, 2",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                CalibrationFluid.MineralSpirits.ToFuel(
                    Density.FromKilogramsPerCubicMeter(780),
                    Viscosity(2, 780, 25),
                    TestFuels.Invented
                )
            )
        );

    // A quarter of what is sold at most is winter fuel: 51 to 83 % of ethanol; between them 14.6 and 9.0 mix to 9.9 to 11.6.
    [Theory]
    [InlineData(51)]
    [InlineData(83)]
    [Trait("Source", "ASTM-D5798")]
    public void E85_AtTheEndsOfItsSeason_IsAccepted(double percent)
    {
        Fuel blend = StandardFuels.E85(StandardFuels.PumpGasoline, Ratio.FromPercent(percent));

        Assert.InRange(blend.StoichiometricRatio.ToMassRatio(), 9.8, 11.8);
        Assert.True(blend.VaporPressure.IsKnown);
    }

    [Theory]
    [InlineData(50)]
    [InlineData(85)]
    [Trait("Source", "ASTM-D5798")]
    public void E85_OutsideItsSeason_Refuses(double percent) =>
        Words.Says(
            $"51 %, 83 %, {percent} %",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                StandardFuels.E85(StandardFuels.PumpGasoline, Ratio.FromPercent(percent))
            )
        );

    // Table 1: vapor pressures in psi of the four classes.
    [Theory]
    [InlineData(1, 5.5, 9.0)]
    [InlineData(2, 7.0, 9.5)]
    [InlineData(3, 8.5, 12.0)]
    [InlineData(4, 9.5, 15.0)]
    [Trait("Source", "ASTM-D5798")]
    public void E85Class_Each_HasThePrintedRange(int number, double lowest, double highest)
    {
        E85Class season = E85Class.All.Single(c => c.Number == number);

        Close.Within(1e-9, lowest, season.LowestVaporPressure.AboveVacuum.PoundsForcePerSquareInch);
        Close.Within(1e-9, highest, season.HighestVaporPressure.AboveVacuum.PoundsForcePerSquareInch);
        Assert.True(season.Allows(new(Pressure.FromPoundsForcePerSquareInch(lowest))));
        Assert.True(season.Allows(new(Pressure.FromPoundsForcePerSquareInch(highest))));
        Assert.False(season.Allows(new(Pressure.FromPoundsForcePerSquareInch(highest + 0.01))));
        Assert.False(season.Allows(new(Pressure.FromPoundsForcePerSquareInch(lowest - 0.01))));
    }

    // Commonly quoted 14.1 for 10 % of ethanol.
    [Fact]
    [Trait("Source", "Common-practice")]
    public void PumpGasolineWithEthanol_HasTheUsualRatio() =>
        Close.Within(0.01, 14.1, StandardFuels.PumpGasolineWithEthanol.StoichiometricRatio.ToMassRatio());

    [Fact]
    public void OxygenatedRaceBlend_FollowsFromItsComposition()
    {
        Fuel blend = StandardFuels.OxygenatedRaceBlend;

        Close.Within(1e-12, 0.2 * 15.999 / 46.069, blend.Composition.Oxygen.DecimalFractions);
        Close.Within(
            1e-12,
            (0.45 * StandardFuels.IsoOctane.StoichiometricRatio.ToMassRatio())
                + (0.25 * StandardFuels.Toluene.StoichiometricRatio.ToMassRatio())
                + (0.1 * StandardFuels.NHeptane.StoichiometricRatio.ToMassRatio())
                + (0.2 * StandardFuels.Ethanol.StoichiometricRatio.ToMassRatio()),
            blend.StoichiometricRatio.ToMassRatio()
        );
        Assert.True(blend.HeatCapacity.IsKnown);
        Assert.False(blend.VaporPressure.IsKnown);
    }

    [Fact]
    public void WithVaporPressure_OfABlend_TakesTheMeasuredOne()
    {
        LiquidVaporPressure measured = LiquidVaporPressure.FromPoints(
            [Celsius.Of(10), Celsius.Of(40)],
            [new(Pressure.FromKilopascals(25)), new(Pressure.FromKilopascals(75))],
            TestFuels.Invented
        );

        Fuel blend = StandardFuels.PumpGasolineWithEthanol.WithVaporPressure("measured E10", measured);

        Assert.Equal("measured E10", blend.Name);
        Close.Within(1e-12, 25, blend.VaporPressureAt(Celsius.Of(10)).AboveVacuum.Kilopascals);
        Assert.Equal(
            StandardFuels.PumpGasolineWithEthanol.StoichiometricRatio.ToMassRatio(),
            blend.StoichiometricRatio.ToMassRatio()
        );
    }

    private static LiquidViscosity Viscosity(double centistokes, double at15, double celsius)
    {
        double density = LiquidDensity
            .FromProductAt15Celsius(Density.FromKilogramsPerCubicMeter(at15))
            .At(Celsius.Of(celsius))
            .KilogramsPerCubicMeter;
        double middle = centistokes * 1e-6 * density;
        return LiquidViscosity.FromPoints(
            [Celsius.Of(celsius), Celsius.Of(celsius + 20)],
            [DynamicViscosity.FromPascalSeconds(middle), DynamicViscosity.FromPascalSeconds(middle * 0.7)],
            TestFuels.Invented
        );
    }
}

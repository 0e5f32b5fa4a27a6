using UnitsNet;

namespace FuelMath.Tests.Fuels;

/// <summary>The vapor pressure of hot gasoline and of gasoline with ethanol, against a calculation with eight hydrocarbons.</summary>
public sealed class GasolineEthanolVaporTests
{
    // Eight hydrocarbons with ethanol, Wilson's equation for each pair, vapor pressures of the handbook, matched to the equation for
    // gasolines at 37.8 °C: kPa by Reid pressure in psi and ethanol in percent by volume. Ours has one component for the
    // gasoline, and the error that it tells covers the difference.
    [Theory]
    [InlineData(7, 5, 58.9)]
    [InlineData(7, 10, 59.4)]
    [InlineData(7, 20, 59.2)]
    [InlineData(7, 40, 57.3)]
    [InlineData(7, 60, 52.5)]
    [InlineData(7, 70, 48.0)]
    [InlineData(7, 95, 24.6)]
    [InlineData(9, 10, 73.2)]
    [InlineData(9, 30, 71.4)]
    [InlineData(9, 50, 67.1)]
    [InlineData(9, 85, 42.8)]
    [InlineData(9, 95, 26.9)]
    [InlineData(11, 5, 87.1)]
    [InlineData(11, 15, 86.5)]
    [InlineData(11, 30, 84.4)]
    [InlineData(11, 60, 73.9)]
    [InlineData(11, 70, 66.7)]
    [InlineData(11, 85, 48.8)]
    [InlineData(11, 95, 29.4)]
    [Trait("Source", "ChemSep-IPD")]
    public void At_BodyTemperature_IsThatOfEightHydrocarbons(double reid, double percent, double kilopascals)
    {
        LiquidVaporPressure blend = Mixed(reid, percent).VaporPressure;
        Temperature warm = Celsius.Of(37.8);

        Close.Within(blend.ErrorAt(warm).DecimalFractions, kilopascals, blend.At(warm).AboveVacuum.Kilopascals);
        Assert.Contains(blend.Estimates, e => e.StartsWith("Vapor pressure of the blend", StringComparison.Ordinal));
    }

    // The same calculation, of a gasoline with 4 % of butane: vapor pressure of the blend over that of the gasoline. Its own Reid
    // pressure is not told; for 7 to 11 psi the ratio moves by up to 6 %.
    [Theory]
    [InlineData(10, 20, 1.092)]
    [InlineData(10, 60, 1.234)]
    [InlineData(10, 80, 1.321)]
    [InlineData(50, 20, 1.001)]
    [InlineData(50, 60, 1.168)]
    [InlineData(50, 80, 1.277)]
    [InlineData(85, 20, 0.627)]
    [InlineData(85, 60, 0.825)]
    [InlineData(85, 80, 0.955)]
    [Trait("Source", "ChemSep-IPD")]
    public void At_OtherTemperatures_KeepsTheRatioToGasoline(double percent, double celsius, double ratio)
    {
        Temperature there = Celsius.Of(celsius);

        Close.Within(
            0.06,
            ratio,
            Mixed(9, percent).VaporPressureAt(there).AboveVacuum / Mixed(9, 0).VaporPressureAt(there).AboveVacuum
        );
    }

    // Ten percent of ethanol lift the Reid pressure of a gasoline by about 1 psi, 6.9 kPa: common practice, which laws on fuels
    // allow for. From memory; a third of it either way.
    [Fact]
    [Trait("Source", "Common-practice")]
    public void At_TenPercent_IsAboutOnePsiMore()
    {
        double more =
            Mixed(9, 10).VaporPressureAt(Celsius.Of(37.8)).AboveVacuum.Kilopascals
            - Mixed(9, 0).VaporPressureAt(Celsius.Of(37.8)).AboveVacuum.Kilopascals;

        Assert.InRange(more, 4.6, 9.2);
    }

    // An ideal mixture of hydrocarbons that has the vapor pressure of the equation at 37.8 °C has this much more above: percent
    // for 7, 9 and 11 psi.
    [Theory]
    [InlineData(7, 60, 2.8)]
    [InlineData(9, 50, 1.4)]
    [InlineData(9, 70, 3.5)]
    [InlineData(11, 80, 4.7)]
    [InlineData(7, 90, 5.8)]
    [InlineData(9, 100, 6.3)]
    [InlineData(7, 100, 6.8)]
    [Trait("Source", "Perry-2008")]
    public void ErrorAt_AboveTheTable_CoversTheIdealMixture(double reid, double celsius, double percent)
    {
        double told = Mixed(reid, 0).VaporPressure.ErrorAt(Celsius.Of(celsius)).Percent;

        Assert.InRange(told, percent, 1.3 * percent);
    }

    [Fact]
    public void ErrorAt_InsideTheTable_IsNone() =>
        Assert.Equal(0, StandardFuels.PumpGasoline.VaporPressure.ErrorAt(Celsius.Of(30)).DecimalFractions);

    [Fact]
    public void Mix_NearNoEthanol_IsTheGasoline()
    {
        Temperature warm = Celsius.Of(30);

        Close.Within(
            1e-5,
            Mixed(9, 0).VaporPressureAt(warm).AboveVacuum.Pascals,
            Mixed(9, 1e-5).VaporPressureAt(warm).AboveVacuum.Pascals
        );
        Close.Within(
            5e-3,
            StandardFuels.Ethanol.VaporPressureAt(warm).AboveVacuum.Pascals,
            Mixed(9, 99.99).VaporPressureAt(warm).AboveVacuum.Pascals
        );
    }

    // What is mixed in two steps is what is mixed in one.
    [Fact]
    public void Mix_OfABlend_IsTheSameAsOfItsParts()
    {
        Fuel first = Mixed(9, 10);
        Fuel twice = FuelBlend.ByMass("twice", TestFuels.Two(StandardFuels.Ethanol, 50, first));
        Temperature warm = Celsius.Of(40);
        double ethanol = 0.1 * StandardFuels.Ethanol.DensityAt(Celsius.Of(15)).KilogramsPerCubicMeter;
        double gasoline = 0.9 * 745;
        double mass = 0.5 + (0.5 * ethanol / (ethanol + gasoline));
        Fuel once = FuelBlend.ByMass("once", TestFuels.Two(StandardFuels.Ethanol, 100 * mass, Mixed(9, 0)));

        Close.Within(
            1e-12,
            once.VaporPressureAt(warm).AboveVacuum.Pascals,
            twice.VaporPressureAt(warm).AboveVacuum.Pascals
        );
    }

    [Fact]
    public void Mix_WithMethanol_IsStillRefused() =>
        Assert.False(
            FuelBlend
                .ByMass("mix", TestFuels.Two(StandardFuels.Methanol, 10, StandardFuels.PumpGasoline))
                .VaporPressure.IsKnown
        );

    private static Fuel Mixed(double reidPsi, double percent)
    {
        Fuel gasoline = StandardFuels.Gasoline(
            Density.FromKilogramsPerCubicMeter(745),
            new AbsolutePressure(Pressure.FromPoundsForcePerSquareInch(reidPsi))
        );
        return percent > 0
            ? FuelBlend.ByVolume(
                "mix",
                Celsius.Of(15),
                [
                    new(StandardFuels.Ethanol, Ratio.FromPercent(percent)),
                    new(gasoline, Ratio.FromPercent(100 - percent)),
                ]
            )
            : gasoline;
    }
}

using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Fuels;

public sealed class ElementalCompositionTests
{
    // Mass fractions of ethanol, C2H6O: 24.022, 6.048 and 15.999 of 46.069 g/mol; printed as 52.2, 13.1 and 34.7 % (from memory).
    [Fact]
    [Trait("Source", "DOE-AFDC")]
    public void FromFormula_Ethanol_GivesThePrintedWeights()
    {
        ElementalComposition ethanol = ElementalComposition.FromFormula(2, 6, 1, 0, 0);

        // Half a unit of the last printed digit, doubled because the table rounds each on its own.
        Assert.Equal(52.2, ethanol.Carbon.Percent, 0.1);
        Assert.Equal(13.1, ethanol.Hydrogen.Percent, 0.1);
        Assert.Equal(34.7, ethanol.Oxygen.Percent, 0.1);
    }

    [Fact]
    public void FromAtomRatios_OfAFormula_IsThatFormula()
    {
        ElementalComposition octane = ElementalComposition.FromFormula(8, 18, 0, 0, 0);
        ElementalComposition same = ElementalComposition.FromAtomRatios(
            Ratio.FromDecimalFractions(18.0 / 8),
            Ratio.FromDecimalFractions(0)
        );

        Close.Within(1e-15, octane.Carbon.DecimalFractions, same.Carbon.DecimalFractions);
        Close.Within(1e-15, octane.Hydrogen.DecimalFractions, same.Hydrogen.DecimalFractions);
    }

    [Fact]
    public void Constructor_Sulfur_IsKept()
    {
        ElementalComposition sour = Of(85, 14.5, 0, 0.2, 0.3);

        Assert.Equal(0.3, sour.Sulfur.Percent, 1e-12);
        Assert.Equal(0.2, sour.Nitrogen.Percent, 1e-12);
    }

    /// <summary>
    /// Thiophene, C4H4S + 6 O2 -> 4 CO2 + 2 H2O + SO2: 48.044 of carbon, 4.032 of hydrogen and 32.06 of sulfur in 84.136 g/mol,
    /// and 12 x 15.999 / 84.136 = 2.28187 of oxygen for each mass.
    /// </summary>
    [Fact]
    [Trait("Source", "IUPAC-2021")]
    public void FromFormula_WithSulfur_CountsItsMassAndItsOxygen()
    {
        ElementalComposition thiophene = ElementalComposition.FromFormula(4, 4, 0, 0, 1);

        Assert.Equal(32.06 / 84.136, thiophene.Sulfur.DecimalFractions, 1e-12);
        Assert.Equal(48.044 / 84.136, thiophene.Carbon.DecimalFractions, 1e-12);
        Assert.Equal(12 * 15.999 / 84.136, thiophene.OxygenDemandSi, 1e-12);
    }

    /// <summary>S + O2 -> SO2.</summary>
    [Fact]
    [Trait("Source", "IUPAC-2021")]
    public void FromFormula_SulfurAlone_TakesUpTwoOxygen() =>
        Assert.Equal(2 * 15.999 / 32.06, ElementalComposition.FromFormula(0, 0, 0, 0, 1).OxygenDemandSi, 1e-12);

    /// <summary>What holds as much oxygen as it can takes up none, whichever way its mass fractions are rounded.</summary>
    [Property]
    public void FromFormula_OxidesOfAnyShare_AreRefused(byte carbon, byte water, byte sulfur, byte nitrogen)
    {
        int dioxides = carbon % 100;
        int sulfurs = sulfur % 100;
        int oxygen = 1 + (2 * dioxides) + water + (2 * sulfurs);

        Assert.Throws<ArgumentException>(() =>
            ElementalComposition.FromFormula(dioxides, 2 * (water + 1), oxygen, nitrogen, sulfurs)
        );
    }

    [Fact]
    public void Constructor_FractionsThatMissOne_SaysTheirSum()
    {
        var error = Assert.Throws<ArgumentException>(() => Of(80, 14, 0, 0, 0));

        Words.Says("100 %, 94 %, 6 %", error);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(101)]
    public void Constructor_FractionOutsideOne_Refuses(double percent)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Of(percent, 14, 0, 0, 0));

        Assert.Equal("carbon", error.ParamName);
        Words.Says($"0 %, 100 %, {percent} %", error);
    }

    [Fact]
    public void FromFormula_Water_RefusesBecauseItDoesNotBurn()
    {
        var error = Assert.Throws<ArgumentException>(() => ElementalComposition.FromFormula(0, 2, 1, 0, 0));

        Assert.StartsWith("Must take up oxygen when it burns", error.Message);
    }

    [Fact]
    public void FromFormula_NoAtoms_Refuses()
    {
        var error = Assert.Throws<ArgumentException>(() => ElementalComposition.FromFormula(0, 0, 0, 0, 0));

        Assert.StartsWith("Must have at least one atom.", error.Message);
    }

    [Fact]
    public void FromFormula_NegativeAtoms_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => ElementalComposition.FromFormula(8, -18, 0, 0, 0));

        Assert.Equal("hydrogen", error.ParamName);
        Words.Says("0, 1000, -18", error);
    }

    [Fact]
    public void FromAtomRatios_TooMuchHydrogen_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            ElementalComposition.FromAtomRatios(Ratio.FromDecimalFractions(4.5), Ratio.FromDecimalFractions(0))
        );

        Assert.Equal("hydrogenPerCarbon", error.ParamName);
        Words.Says("0, 4, 4.5", error);
    }

    private static ElementalComposition Of(double c, double h, double o, double n, double s) =>
        new(
            Ratio.FromPercent(c),
            Ratio.FromPercent(h),
            Ratio.FromPercent(o),
            Ratio.FromPercent(n),
            Ratio.FromPercent(s)
        );
}

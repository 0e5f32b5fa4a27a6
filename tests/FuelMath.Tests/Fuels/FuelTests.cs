using UnitsNet;

namespace FuelMath.Tests.Fuels;

/// <summary>A fuel that a caller describes.</summary>
public sealed class FuelTests
{
    private static readonly DataSource Invented = new("Workshop-class", "test fuel");

    [Fact]
    public void Constructor_OwnFuel_KeepsWhatItWasGiven()
    {
        Fuel fuel = Own("paddock", SpecificEnergy.FromMegajoulesPerKilogram(42));

        Assert.Equal("paddock", fuel.Name);
        Assert.Equal("paddock", fuel.ToString());
        Close.Within(1e-15, 42, fuel.LowerHeatingValue!.Value.MegajoulesPerKilogram);
        Assert.Equal("Guessed.", Assert.Single(fuel.Estimates));
        Assert.Equal("Burns.", Assert.Single(fuel.Cautions));
        Assert.Contains(Invented, fuel.Sources);
    }

    [Fact]
    public void Constructor_BlankName_Refuses()
    {
        var error = Assert.Throws<ArgumentException>(() => Own(" ", null));

        Assert.StartsWith("Must be a name, not blank.", error.Message);
    }

    [Fact]
    public void Constructor_NoHeat_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Own("cold", SpecificEnergy.FromMegajoulesPerKilogram(0))
        );

        Assert.Equal("lowerHeatingValue", error.ParamName);
        Words.Says("0 MJ/kg", error);
    }

    [Fact]
    public void Constructor_NoSource_Refuses() =>
        Assert.Throws<ArgumentNullException>(() =>
            new Fuel(
                "x",
                StandardFuels.IsoOctane.Composition,
                StandardFuels.IsoOctane.Density,
                StandardFuels.IsoOctane.Viscosity,
                StandardFuels.IsoOctane.VaporPressure,
                null,
                (DataSource)null!,
                [],
                []
            )
        );

    private static Fuel Own(string name, SpecificEnergy? heat) =>
        new(
            name,
            ElementalComposition.FromAtomRatios(Ratio.FromDecimalFractions(1.9), Ratio.FromDecimalFractions(0.02)),
            LiquidDensity.FromGasolineAt15Celsius(Density.FromKilogramsPerCubicMeter(738)),
            StandardFuels.IsoOctane.Viscosity,
            LiquidVaporPressure.Unknown("not measured."),
            heat,
            Invented,
            ["Guessed."],
            ["Burns."]
        );
}

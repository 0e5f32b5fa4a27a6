using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Fuels;

/// <summary>Generators of fuels, recipes and temperatures that all of them know.</summary>
public static class FuelArbitraries
{
    public static Arbitrary<Fuel> Fuels() => AnyFuel().ToArbitrary();

    public static Arbitrary<Gasoline> Gasolines() =>
        (
            from tenths in Gen.Choose(6530, 7700)
            from reid in Gen.Choose(42, 103)
            select new Gasoline(tenths / 10.0, reid)
        ).ToArbitrary();

    /// <summary>Two to four fuels with whole percents that add up to 100.</summary>
    public static Arbitrary<Recipe> Recipes() =>
        (
            from count in Gen.Choose(2, 4)
            from fuels in AnyFuel().ArrayOf(count)
            from cuts in Gen.Choose(1, 99).ArrayOf(count - 1)
            let edges = cuts.Append(0).Append(100).Order().ToArray()
            select new Recipe(fuels, [.. edges.Skip(1).Zip(edges, (high, low) => high - low)])
        ).ToArbitrary();

    /// <summary>From 0 °C to 60 °C, where every fuel here knows its density and viscosity.</summary>
    public static Arbitrary<Warmth> Temperatures() =>
        Gen.Choose(0, 6000).Select(hundredths => new Warmth(hundredths / 100.0)).ToArbitrary();

    public static Arbitrary<Parts> PremixParts() => Gen.Choose(8, 200).Select(n => new Parts(n)).ToArbitrary();

    private static Gen<Fuel> AnyFuel() =>
        Gen.OneOf(
            Gen.Elements(
                StandardFuels.Ethanol,
                StandardFuels.Methanol,
                StandardFuels.IsoOctane,
                StandardFuels.NHeptane,
                StandardFuels.Toluene,
                StandardFuels.TwoStrokeOil
            ),
            Gasolines().Generator.Select(g => g.ToFuel())
        );
}

/// <summary>A gasoline by density in kg/m³ and Reid vapor pressure in kPa.</summary>
public readonly record struct Gasoline(double At15, double Reid)
{
    public Fuel ToFuel() =>
        StandardFuels.Gasoline(
            Density.FromKilogramsPerCubicMeter(At15),
            new AbsolutePressure(Pressure.FromKilopascals(Reid))
        );
}

/// <summary>Fuels and their percents.</summary>
public sealed record Recipe(Fuel[] Fuels, int[] Percents)
{
    public IReadOnlyList<FuelBlend.Part> Parts =>
        [.. Fuels.Zip(Percents, (f, p) => new FuelBlend.Part(f, Ratio.FromPercent(p)))];

    public IReadOnlyList<FuelBlend.Part> Backwards => [.. Parts.Reverse()];

    public override string ToString() => string.Join(", ", Fuels.Zip(Percents, (f, p) => $"{p} % {f}"));
}

/// <summary>A temperature in °C.</summary>
public readonly record struct Warmth(double Degrees)
{
    public Temperature Temperature => Celsius.Of(Degrees);
}

/// <summary>Parts of fuel to one of oil.</summary>
public readonly record struct Parts(int Fuel);

using System.Collections.Immutable;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

/// <summary>How each property of a blend follows from its parts and their masses.</summary>
internal static class BlendRules
{
    /// <summary>The mass fraction of oil up to which a premix keeps the vapor pressure of its fuel.</summary>
    internal const double MostOil = 0.1;

    private static readonly string IdealVolumes =
        "Density of the blend: volumes are taken as additive; ethanol in gasoline swells by a few tenths of a percent.";

    private static readonly string IndexedViscosity =
        "Viscosity of the blend: blending indices by mass, a rule for petroleum liquids.";

    private static readonly string IdealHeat =
        "Heat capacity of the blend: by mass, heat of mixing left out; alcohol in gasoline has a few percent more (from memory).";

    private static readonly string IdealModulus =
        "Bulk modulus of the blend: compressibilities by volume, which is exact where volumes add up at every pressure.";

    private static readonly string WilsonVapor =
        "Vapor pressure of the blend: gasoline taken as one component, within 5 % at 37.8 °C of a calculation with eight "
        + "hydrocarbons; no water, no other alcohol or ether in it. Measure yours where it counts.";

    private static readonly DataSource[] WilsonSources =
    [
        new("Pumphrey-2000", "Wilson equation, gasoline as one component"),
        new("ChemSep-IPD", "Wilson constants of ethanol with isopentane"),
    ];

    private static readonly DataSource IndexSource = new("Maples-2000", "viscosity blending index");

    internal static Fuel Mix(string name, Fuel[] fuels, double[] masses, FuelRecipe? recipe)
    {
        double total = masses.Sum();
        double[] fractions = [.. masses.Select(m => m / total)];
        bool pure = fuels.All(f => ReferenceEquals(f, fuels[0]));
        double ByMass(Func<ElementalComposition, double> element) =>
            fuels.Zip(fractions, (f, w) => w * element(f.Composition)).Sum();

        LiquidDensity density = pure ? fuels[0].Density : Density(fuels, fractions);
        bool heat = fuels.All(f => f.LowerHeatingValue is not null);
        return new(
            name,
            new ElementalComposition(
                ByMass(c => c.CarbonFraction),
                ByMass(c => c.HydrogenFraction),
                ByMass(c => c.OxygenFraction),
                ByMass(c => c.NitrogenFraction),
                ByMass(c => c.SulfurFraction)
            ),
            density,
            pure ? fuels[0].Viscosity : Viscosity(fuels, fractions, density),
            VaporPressureOf(fuels, fractions, pure),
            heat ? SiUnits.SpecificEnergy(fuels.Zip(fractions, (f, w) => w * f.HeatSi).Sum()) : null,
            fuels.SelectMany(f => f.OwnSources),
            fuels.SelectMany(f => f.OwnEstimates),
            fuels.SelectMany(f => f.Cautions)
        )
        {
            Recipe = recipe,
            Oil = fuels.Zip(fractions, (f, w) => f.Oil.Times(w)).Aggregate((a, b) => a.Plus(b)),
            HeatCapacity = pure ? fuels[0].HeatCapacity : HeatCapacity(fuels, fractions),
            BulkModulus = pure ? fuels[0].BulkModulus : BulkModulus(fuels, fractions),
            Volatiles = VolatilesOf(fuels, fractions),
        };
    }

    private static LiquidDensity Density(Fuel[] fuels, double[] fractions)
    {
        TemperatureLaw[] laws = [.. fuels.Select(f => f.Density.Law)];
        return new(Joined("Density", laws, new BlendLaws.Density(laws, fractions), [], [IdealVolumes]));
    }

    private static LiquidViscosity Viscosity(Fuel[] fuels, double[] fractions, LiquidDensity blend)
    {
        if (fuels.FirstOrDefault(f => !f.Viscosity.IsKnown) is { } unknown)
        {
            return LiquidViscosity.Unknown(
                $"that of '{unknown.Name}' is not, because {unknown.Viscosity.ReasonUnknown}"
            );
        }

        TemperatureLaw[] laws = [.. fuels.Select(f => f.Viscosity.Law), .. fuels.Select(f => f.Density.Law)];
        BlendLaws.Viscosity law = new(fuels, fractions, blend.Law);
        return new(Joined("Viscosity", laws, law, [IndexSource], [IndexedViscosity]));
    }

    private static LiquidHeatCapacity HeatCapacity(Fuel[] fuels, double[] fractions)
    {
        if (fuels.FirstOrDefault(f => !f.HeatCapacity.IsKnown) is { } unknown)
        {
            return LiquidHeatCapacity.Unknown($"that of '{unknown.Name}' is not: {unknown.HeatCapacity.ReasonUnknown}");
        }

        TemperatureLaw[] laws = [.. fuels.Select(f => f.HeatCapacity.Law)];
        BlendLaws.HeatCapacity law = new(laws, fractions);
        return new(Joined("Heat capacity", laws, law, [], [IdealHeat]));
    }

    private static LiquidVaporPressure VaporPressureOf(Fuel[] fuels, double[] fractions, bool pure)
    {
        if (pure)
        {
            return fuels[0].VaporPressure;
        }

        // The oil of a premix adds no vapor, and lowers the vapor pressure by less than its mass fraction.
        int[] volatileOnes = [.. Enumerable.Range(0, fuels.Length).Where(i => !fuels[i].VaporPressure.IsNegligible)];
        double volatileShare = volatileOnes.Sum(i => fractions[i]);
        if (volatileOnes is [int one] && fuels[one].VaporPressure.IsKnown && volatileShare >= 1 - MostOil)
        {
            return new(
                fuels[one]
                    .VaporPressure.Law.With(
                        $"Vapor pressure: that of '{fuels[one].Name}' alone, which a little oil lowers by less than its share."
                    )
            );
        }

        VaporPart[] parts = [.. VolatilesOf(fuels, fractions)];
        if (parts.Length > 0 && volatileShare >= 1 - MostOil)
        {
            return new(
                Joined(
                    "Vapor pressure",
                    [.. parts.Select(p => p.Pressure)],
                    new BlendLaws.GasolineVapor(parts),
                    parts.Any(p => p.IsEthanol) ? WilsonSources : [],
                    [WilsonVapor]
                )
            );
        }

        if (fuels.Any(f => f.Composition.OxygenFraction > 0 && !f.VaporPressure.IsNegligible))
        {
            return LiquidVaporPressure.Unknown(
                "a part of it holds oxygen and is not ethanol in gasoline, and alcohol lifts the vapor pressure of a blend above that "
                    + "of both parts. Measure the blend's."
            );
        }

        return LiquidVaporPressure.Unknown(
            "no rule with a source gives that of a blend from its parts. Measure the blend's."
        );
    }

    /// <summary>
    /// The volatile parts with their mass fractions among themselves; empty where the vapor pressure of one is not
    /// known well enough.
    /// </summary>
    private static ImmutableArray<VaporPart> VolatilesOf(Fuel[] fuels, double[] fractions)
    {
        int[] volatileOnes = [.. Enumerable.Range(0, fuels.Length).Where(i => !fuels[i].VaporPressure.IsNegligible)];
        double share = volatileOnes.Sum(i => fractions[i]);
        return volatileOnes.Any(i => fuels[i].Volatiles.IsEmpty)
            ? []
            : [.. volatileOnes.SelectMany(i => fuels[i].Volatiles.Select(p => p.Times(fractions[i] / share)))];
    }

    private static LiquidBulkModulus BulkModulus(Fuel[] fuels, double[] fractions)
    {
        if (fuels.FirstOrDefault(f => !f.BulkModulus.IsKnown) is { } unknown)
        {
            return LiquidBulkModulus.Unknown($"that of '{unknown.Name}' is not: {unknown.BulkModulus.ReasonUnknown}");
        }

        TemperatureLaw[] moduli = [.. fuels.Select(f => f.BulkModulus.Law)];
        TemperatureLaw[] densities = [.. fuels.Select(f => f.Density.Law)];
        BlendLaws.BulkModulus law = new(moduli, densities, fractions);
        TemperatureLaw joined = Joined("Bulk modulus", [.. moduli, .. densities], law, [], [IdealModulus]);
        return new(joined);
    }

    private static TemperatureLaw Joined(
        string property,
        TemperatureLaw[] laws,
        PropertyLaw law,
        IEnumerable<DataSource> sources,
        IEnumerable<string> estimates
    )
    {
        TemperatureLaw low = laws.MaxBy(l => l.Lowest)!;
        TemperatureLaw high = laws.MinBy(l => l.Highest)!;
        return low.Lowest < high.Highest
            ? new(
                property,
                low.Lowest,
                high.Highest,
                law,
                laws.SelectMany(l => l.Sources).Concat(sources),
                laws.SelectMany(l => l.Estimates).Concat(estimates)
            )
            : throw new RefusedArgumentException(
                RefusalCode.NoCommonRange,
                $"{property:subject} of the blend is known nowhere: that of one part begins at {Amount.Celsius(low.Lowest):begin}, that of another ends at {Amount.Celsius(high.Highest):end}."
            );
    }
}

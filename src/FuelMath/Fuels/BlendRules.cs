using FuelMath.Internal;
using FuelMath.Sources;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath.Fuels;

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

    private static readonly DataSource IndexSource = new("Maples-2000", "viscosity blending index");

    internal static Fuel Mix(string name, Fuel[] fuels, double[] masses, FuelRecipe? recipe)
    {
        double total = masses.Sum();
        double[] fractions = [.. masses.Select(m => m / total)];
        bool pure = fuels.All(f => ReferenceEquals(f, fuels[0]));
        double ByMass(Func<ElementalComposition, double> element) =>
            fuels.Zip(fractions, (f, w) => w * element(f.Composition)).Sum();

        LiquidDensity density = pure ? fuels[0].Density : Density(fuels, fractions);
        bool heat = fuels.All(f => f.HasLowerHeatingValue);
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
            heat ? SiUnits.SpecificEnergy(fuels.Zip(fractions, (f, w) => w * f.LowerHeatingValue.InSi()).Sum()) : null,
            fuels.SelectMany(f => f.OwnSources),
            fuels.SelectMany(f => f.OwnEstimates),
            fuels.SelectMany(f => f.Cautions)
        )
        {
            Recipe = recipe,
            Oil = fuels.Zip(fractions, (f, w) => f.Oil.Times(w)).Aggregate((a, b) => a.Plus(b)),
            HeatCapacity = pure ? fuels[0].HeatCapacity : HeatCapacity(fuels, fractions),
            BulkModulus = pure
                ? fuels[0].BulkModulus
                : LiquidBulkModulus.Unknown("no rule with a source gives that of a blend from its parts."),
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

        TemperatureLaw[] laws = [.. fuels.Select(f => f.HeatCapacity.Known)];
        BlendLaws.HeatCapacity law = new(laws, fractions);
        return new(Joined("Heat capacity", laws, law, [], [IdealHeat]));
    }

    private static LiquidVaporPressure VaporPressureOf(Fuel[] fuels, double[] fractions, bool pure)
    {
        if (pure)
        {
            return fuels[0].VaporPressure;
        }

        if (fuels.Any(f => f.Composition.OxygenFraction > 0 && !f.VaporPressure.IsNegligible))
        {
            return LiquidVaporPressure.Unknown(
                "a part of it holds oxygen, and alcohol lifts the vapor pressure of a blend above that of both parts, so that "
                    + "it can't be had from the parts. Measure the blend's."
            );
        }

        // The oil of a premix adds no vapor of its own and dilutes the fuel by less than its share.
        int[] volatileOnes = [.. Enumerable.Range(0, fuels.Length).Where(i => !fuels[i].VaporPressure.IsNegligible)];
        return volatileOnes is [int one] && fuels[one].HasVaporPressure && fractions[one] >= 1 - MostOil
            ? new(
                fuels[one]
                    .VaporPressure.Known.With(
                        $"Vapor pressure: that of '{fuels[one].Name}' alone, which a little oil lowers by less than its share."
                    )
            )
            : LiquidVaporPressure.Unknown(
                "no rule with a source gives that of a blend from its parts. Measure the blend's."
            );
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
            : throw new ArgumentException(
                $"{property} of the blend is known nowhere: that of one part begins at "
                    + $"{Guard.Show(SiUnits.Temperature(low.Lowest), TemperatureUnit.DegreeCelsius)}, that of another ends at "
                    + $"{Guard.Show(SiUnits.Temperature(high.Highest), TemperatureUnit.DegreeCelsius)}."
            );
    }
}

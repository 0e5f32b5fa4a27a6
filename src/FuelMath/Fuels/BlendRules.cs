using FuelMath.Formulas;
using FuelMath.Internal;
using FuelMath.Scalars;
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
        };
    }

    private static LiquidDensity Density(Fuel[] fuels, double[] fractions)
    {
        TemperatureLaw[] laws = [.. fuels.Select(f => f.Density.Law)];
        double At(double kelvins)
        {
            double volume = 0;
            for (int i = 0; i < laws.Length; i++)
            {
                volume += fractions[i] / laws[i].AtKelvins(kelvins);
            }

            return 1 / volume;
        }

        return new(Joined("Density", laws, At, [], [IdealVolumes]));
    }

    private static LiquidViscosity Viscosity(Fuel[] fuels, double[] fractions, LiquidDensity blend)
    {
        TemperatureLaw[] densities = [.. fuels.Select(f => f.Density.Law)];
        TemperatureLaw[] laws = [.. fuels.Select(f => f.Viscosity.Law)];
        double At(double kelvins)
        {
            double index = 0;
            for (int i = 0; i < laws.Length; i++)
            {
                double kinematic = laws[i].AtKelvins(kelvins) / densities[i].AtKelvins(kelvins);
                if (!(kinematic > PetroleumViscosity.LowestKinematicViscosityOfIndex))
                {
                    throw new InvalidOperationException(
                        $"The viscosity of the blend is not known: that of '{fuels[i].Name}' is too low for the blending rule, "
                            + "which needs more than 0.2 mm²/s of every part."
                    );
                }

                index += fractions[i] * PetroleumViscosity.BlendingIndex(new Real(kinematic)).Value;
            }

            return PetroleumViscosity.FromBlendingIndex(new Real(index)).Value * blend.Law.AtKelvins(kelvins);
        }

        return new(Joined("Viscosity", [.. laws, .. densities], At, [IndexSource], [IndexedViscosity]));
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
        Func<double, double> at,
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
                at,
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

using System.Globalization;
using FuelMath.Formulas;
using FuelMath.Internal;
using FuelMath.Scalars;
using FuelMath.Sources;
using UnitsNet;

namespace FuelMath.Fuels;

/// <summary>Mixes fuels.</summary>
/// <remarks>
/// <para>
/// A blend by volume passes through mass: volumes become masses with the densities at the temperature of mixing, and
/// everything that counts by mass (elements, heating value) follows. Density: volumes are taken as additive at every
/// temperature. Ethanol and gasoline swell by a few tenths of a percent when mixed (from memory); ethanol and water shrink
/// by up to several percent, so that water is no part of a blend here.
/// </para>
/// <para>
/// Viscosity: blending indices by mass, an estimate. Source: [Maples-2000] viscosity blending index. Vapor pressure: alcohol
/// lifts that of gasoline above both parts, so that it can't be had from the parts and is refused.
/// </para>
/// </remarks>
public static class FuelBlend
{
    /// <summary>How far fractions may miss 100 %: rounding of what was typed, not a missing part.</summary>
    internal const double SumTolerance = 1e-6;

    /// <summary>The volume fraction of oil up to which a premix keeps the vapor pressure of its fuel.</summary>
    internal const double MostOilInPremix = 0.1;

    private static readonly string IdealVolumes =
        "Density of the blend: volumes are taken as additive; ethanol in gasoline swells by a few tenths of a percent.";

    private static readonly string IndexedViscosity =
        "Viscosity of the blend: blending indices by mass, a rule for petroleum liquids.";

    private static readonly DataSource IndexSource = new("Maples-2000", "viscosity blending index");

    /// <summary>Mixes volumes.</summary>
    /// <param name="name">The blend's name; not blank.</param>
    /// <param name="mixedAt">The temperature at which the volumes were measured.</param>
    /// <param name="parts">The fuels and their fractions of the volume before mixing, which add up to 100 %.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">There is no part, or the fractions do not add up.</exception>
    /// <exception cref="OutsideTableException">A density is not known at the temperature of mixing.</exception>
    public static Fuel ByVolume(string name, Temperature mixedAt, IReadOnlyList<FuelPart> parts) =>
        Mix(name, mixedAt, parts, parts is null ? null : new VolumeBlendRecipe(mixedAt, parts));

    /// <summary>Mixes masses.</summary>
    /// <param name="name">The blend's name; not blank.</param>
    /// <param name="parts">The fuels and their fractions of the mass, which add up to 100 %.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">There is no part, or the fractions do not add up.</exception>
    public static Fuel ByMass(string name, IReadOnlyList<FuelPart> parts)
    {
        FuelPart[] used = Checked(parts);
        return Mix(name, [.. used.Select(p => p.Fuel)], [.. used.Select(p => p.Si)], new MassBlendRecipe(parts));
    }

    internal static Fuel Mix(string name, Temperature mixedAt, IReadOnlyList<FuelPart> parts, FuelRecipe? recipe)
    {
        FuelPart[] used = Checked(parts);
        double[] masses = [.. used.Select(p => p.Si * p.Fuel.Density.Law.At(mixedAt))];
        return Mix(name, [.. used.Select(p => p.Fuel)], masses, recipe);
    }

    private static FuelPart[] Checked(IReadOnlyList<FuelPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        double sum = parts.Sum(p => p.Si);
        if (!(Math.Abs(sum - 1) <= SumTolerance))
        {
            throw new ArgumentException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Fractions of a blend must add up to 100 %; they add up to {100 * sum:0.#####} %."
                ),
                nameof(parts)
            );
        }

        return [.. parts.Where(p => p.Si > 0)];
    }

    private static Fuel Mix(string name, Fuel[] fuels, double[] masses, FuelRecipe? recipe)
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
            fuels.SelectMany(f => f.Sources),
            fuels.SelectMany(f => f.Estimates),
            fuels.SelectMany(f => f.Cautions)
        )
        {
            Recipe = recipe,
        };
    }

    private static LiquidDensity Density(Fuel[] fuels, double[] fractions)
    {
        TemperatureLaw[] laws = [.. fuels.Select(f => f.Density.Law)];
        return new(
            Joined(
                "Density",
                laws,
                t => 1 / laws.Zip(fractions, (l, w) => w / l.AtKelvins(t)).Sum(),
                [],
                [IdealVolumes]
            )
        );
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

        if (fuels.Any(f => f.Composition.OxygenFraction > 0))
        {
            return LiquidVaporPressure.Unknown(
                "alcohol lifts the vapor pressure of a blend above that of both parts, so that it can't be had from the parts. Measure the blend's."
            );
        }

        // The oil of a premix adds no vapor of its own and dilutes the fuel by less than its share.
        int volatileOnes = fuels.Count(f => f.HasVaporPressure);
        int main = Array.IndexOf(fractions, fractions.Max());
        return volatileOnes == 1 && fuels[main].HasVaporPressure && fractions[main] >= 1 - MostOilInPremix
            ? new(
                fuels[main]
                    .VaporPressure.Known.With(
                        $"Vapor pressure: that of '{fuels[main].Name}' alone, which a little oil lowers by less than its share."
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
                    + $"{Guard.Show(SiUnits.Temperature(low.Lowest), UnitsNet.Units.TemperatureUnit.DegreeCelsius)}, that of another ends at "
                    + $"{Guard.Show(SiUnits.Temperature(high.Highest), UnitsNet.Units.TemperatureUnit.DegreeCelsius)}."
            );
    }
}

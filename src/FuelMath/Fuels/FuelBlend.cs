using System.Globalization;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Mixes fuels.</summary>
/// <remarks>
/// <para>
/// A blend by volume is computed by mass: volumes are converted to masses with the densities at the temperature of
/// mixing, and everything per mass (elements, heating value) follows. Density: volumes are taken as additive at every
/// temperature. Ethanol and gasoline swell by a few tenths of a percent when mixed (from memory); ethanol and water
/// contract by up to several percent, so that blends with water are not supported.
/// </para>
/// <para>
/// Viscosity: blending indices by mass, an estimate. Source: [Maples-2000] viscosity blending index. Vapor pressure:
/// that of gasoline and ethanol is an estimate with its error stated; with other alcohols it exceeds that of both parts
/// and is not known.
/// </para>
/// </remarks>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public static partial class FuelBlend
{
    /// <summary>
    /// Allowed difference of the sum of fractions from 100 %: covers rounding of the input, not a missing part.
    /// </summary>
    internal const double SumTolerance = 1e-6;

    /// <summary>Mixes volumes.</summary>
    /// <param name="name">The blend's name; not blank.</param>
    /// <param name="mixedAt">The temperature at which the volumes were measured.</param>
    /// <param name="parts">The fuels and their fractions of the volume before mixing, which add up to 100 %.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">There is no part, or the fractions do not add up.</exception>
    /// <exception cref="OutsideTableException">A density is not known at the temperature of mixing.</exception>
    public static Fuel ByVolume(string name, Temperature mixedAt, IReadOnlyList<Part> parts) =>
        Mix(name, mixedAt, parts, parts is null ? null : new VolumeBlendRecipe(mixedAt, parts));

    /// <summary>Mixes masses.</summary>
    /// <param name="name">The blend's name; not blank.</param>
    /// <param name="parts">The fuels and their fractions of the mass, which add up to 100 %.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">There is no part, or the fractions do not add up.</exception>
    public static Fuel ByMass(string name, IReadOnlyList<Part> parts)
    {
        Part[] used = Checked(parts);
        return BlendRules.Mix(
            name,
            [.. used.Select(p => p.Fuel)],
            [.. used.Select(p => p.Si)],
            new MassBlendRecipe(parts)
        );
    }

    /// <summary>
    /// How the stoichiometric ratio of a blend by volume follows from those of its parts: volumes are converted to
    /// masses, and the ratio is averaged by mass. Formula, inserted values, result, source.
    /// </summary>
    /// <param name="mixedAt">The temperature at which the volumes were measured.</param>
    /// <param name="parts">The fuels and their fractions of the volume before mixing, which add up to 100 %.</param>
    /// <param name="air">The air model.</param>
    /// <returns>The working.</returns>
    /// <exception cref="ArgumentException">There is no part, or the fractions do not add up.</exception>
    /// <exception cref="OutsideTableException">A density is not known at the temperature of mixing.</exception>
    public static Working StoichiometricWorkingByVolume(Temperature mixedAt, IReadOnlyList<Part> parts, AirModel air)
    {
        Part[] used = Checked(parts);
        return Combustion
            .MeanByVolume<Traced>(
                [.. used.Select(p => ReaderUnits.Input(FuelSymbols.VolumeFraction, p.Fraction, p.Si))],
                [.. used.Select(p => Traced.Input(Symbols.Density, p.Fuel.Density.Law.At(mixedAt)))],
                [.. used.Select(p => Traced.Input(Symbols.StoichiometricRatio, p.Fuel.StoichiometricRatioWith(air).Si))]
            )
            .ToWorking();
    }

    /// <summary>
    /// How the lower heating value of a blend by volume follows from those of its parts: volumes are converted to
    /// masses, and heat is averaged by mass. Formula, inserted values, result, source.
    /// </summary>
    /// <param name="mixedAt">The temperature at which the volumes were measured.</param>
    /// <param name="parts">The fuels and their fractions of the volume before mixing, which add up to 100 %.</param>
    /// <returns>The working.</returns>
    /// <exception cref="ArgumentException">There is no part, or the fractions do not add up.</exception>
    /// <exception cref="UnknownPropertyException">The lower heating value of a part is not known.</exception>
    /// <exception cref="OutsideTableException">A density is not known at the temperature of mixing.</exception>
    public static Working LowerHeatingValueWorkingByVolume(Temperature mixedAt, IReadOnlyList<Part> parts)
    {
        Part[] used = Checked(parts);
        return Combustion
            .MeanByVolume<Traced>(
                [.. used.Select(p => ReaderUnits.Input(FuelSymbols.VolumeFraction, p.Fraction, p.Si))],
                [.. used.Select(p => Traced.Input(Symbols.Density, p.Fuel.Density.Law.At(mixedAt)))],
                [.. used.Select(p => Traced.Input(FuelSymbols.FuelHeat, p.Fuel.HeatSi))]
            )
            .ToWorking();
    }

    internal static Fuel Mix(string name, Temperature mixedAt, IReadOnlyList<Part> parts, FuelRecipe? recipe)
    {
        Part[] used = Checked(parts);
        double[] masses = [.. used.Select(p => p.Si * p.Fuel.Density.Law.At(mixedAt))];
        return BlendRules.Mix(name, [.. used.Select(p => p.Fuel)], masses, recipe);
    }

    private static Part[] Checked(IReadOnlyList<Part> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        parts = Lists.NoNulls(parts);
        double sum = parts.Sum(p => p.Si);
        if (!(Math.Abs(sum - 1) <= SumTolerance))
        {
            throw new RefusedArgumentException(
                RefusalCode.Sum,
                $"Fractions of a blend must add up to {Amount.Percent(1):exactly}; they add up to {Amount.Percent(sum):value}, which is {Amount.Percent(Math.Abs(sum - 1)):difference} too {(sum < 1 ? "little" : "much"):side}.",
                nameof(parts)
            );
        }

        return [.. parts.Where(p => p.Si > 0)];
    }
}

using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Air and fuel by mass. SI units; every fraction is a mass fraction unless it says otherwise.</summary>
/// <remarks>Atomic weights. Source: [IUPAC-2021] abridged standard atomic weights.</remarks>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public static class Combustion
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource OxygenDemandSource = new(
        "Heywood-1988",
        "section 3.4 (combustion stoichiometry)"
    );

    internal static readonly DataSource StoichiometricAirFuelRatioSource = new(
        "Heywood-1988",
        "section 3.4 (combustion stoichiometry)"
    );

    internal static readonly DataSource LambdaSource = new("Heywood-1988", "section 3.4 (relative air/fuel ratio)");

    internal static readonly DataSource BlendByMassSource = new("Definition", "conservation of mass");

    internal static readonly DataSource MassFractionSource = new("Definition", "mass is volume times density");

    internal static readonly DataSource FuelFractionSource = new("Definition", "of the fraction");

    internal static readonly DataSource EquivalenceRatioSource = new(
        "Heywood-1988",
        "section 3.4 (fuel/air equivalence ratio)"
    );

    internal static readonly DataSource AirFuelRatioFromScaleSource = new("Definition", "of the display's scale");

    internal static readonly DataSource AirFuelRatioFromFuelFractionSource = new("Definition", "of the fraction");

    internal static readonly DataSource MeanByVolumeSource = new(
        "Definition",
        "mass is volume times density, and mass is kept"
    );

    internal static readonly Symbol MassFractionResult = new("w1", "", "mass fraction of the first");

    /// <summary>Atomic weight of carbon, g/mol.</summary>
    public const double Carbon = 12.011;

    /// <summary>Atomic weight of hydrogen, g/mol.</summary>
    public const double Hydrogen = 1.008;

    /// <summary>Atomic weight of oxygen, g/mol.</summary>
    public const double Oxygen = 15.999;

    /// <summary>Atomic weight of nitrogen, g/mol.</summary>
    public const double Nitrogen = 14.007;

    /// <summary>Atomic weight of sulfur, g/mol.</summary>
    public const double Sulfur = 32.06;

    /// <summary>The oxygen that burns a fuel completely, to carbon dioxide, water and sulfur dioxide.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="carbon">Mass fraction of carbon, 0 to 1.</param>
    /// <param name="hydrogen">Mass fraction of hydrogen, 0 to 1.</param>
    /// <param name="sulfur">Mass fraction of sulfur, 0 to 1.</param>
    /// <param name="oxygen">Mass fraction of oxygen, 0 to 1.</param>
    /// <returns>Mass of oxygen over mass of fuel; oxygen in the fuel is subtracted.</returns>
    /// <remarks>Source: [Heywood-1988] section 3.4 (combustion stoichiometry).</remarks>
    [MethodImpl(Inline)]
    public static T OxygenDemand<T>(T carbon, T hydrogen, T sulfur, T oxygen)
        where T : struct, IScalar<T> =>
        T.Step(
            (2 * Oxygen / Carbon * carbon)
                + (Oxygen / (2 * Hydrogen) * hydrogen)
                + (2 * Oxygen / Sulfur * sulfur)
                - oxygen,
            Symbols.OxygenDemand,
            OxygenDemandSource
        );

    /// <summary>The stoichiometric ratio of air to fuel, by mass, of a fuel without sulfur.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="carbonMassFraction">Mass fraction of carbon, 0 to 1.</param>
    /// <param name="hydrogenMassFraction">Mass fraction of hydrogen, 0 to 1.</param>
    /// <param name="oxygenMassFraction">Mass fraction of oxygen, 0 to 1.</param>
    /// <param name="airOxygenMassFraction">Mass fraction of oxygen in the air, about 0.23; greater than zero.</param>
    /// <returns>Mass of air over mass of fuel.</returns>
    /// <remarks>
    /// Published models of air differ by 0.7 % in this ratio: state the model with the number. Source: [Heywood-1988]
    /// section 3.4 (combustion stoichiometry).
    /// </remarks>
    [MethodImpl(Inline)]
    public static T StoichiometricAirFuelRatio<T>(
        T carbonMassFraction,
        T hydrogenMassFraction,
        T oxygenMassFraction,
        T airOxygenMassFraction
    )
        where T : struct, IScalar<T> =>
        T.Step(
            OxygenDemand(carbonMassFraction, hydrogenMassFraction, T.Of(0), oxygenMassFraction) / airOxygenMassFraction,
            Symbols.StoichiometricRatio,
            StoichiometricAirFuelRatioSource
        );

    /// <summary>Lambda: the air present over the air that the fuel needs.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="airMass">Mass of air, kg (or mass flow, kg/s).</param>
    /// <param name="fuelMass">Mass of fuel in the same unit; greater than zero.</param>
    /// <param name="stoichiometricRatio">Stoichiometric ratio by mass; greater than zero.</param>
    /// <returns>Lambda: above 1 lean, below 1 rich.</returns>
    /// <remarks>Source: [Heywood-1988] section 3.4 (relative air/fuel ratio).</remarks>
    [MethodImpl(Inline)]
    public static T Lambda<T>(T airMass, T fuelMass, T stoichiometricRatio)
        where T : struct, IScalar<T> =>
        T.Step(airMass / (fuelMass * stoichiometricRatio), Symbols.Lambda, LambdaSource);

    /// <summary>A property per mass of a blend: w x1 + (1 - w) x2, for a stoichiometric ratio or a heating value.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="firstMassFraction">Mass fraction of the first, 0 to 1.</param>
    /// <param name="first">The property of the first, per mass.</param>
    /// <param name="second">The property of the second, per mass.</param>
    /// <returns>The property of the blend, per mass.</returns>
    /// <remarks>Source: [Definition] conservation of mass.</remarks>
    [MethodImpl(Inline)]
    public static T BlendByMass<T>(T firstMassFraction, T first, T second)
        where T : struct, IScalar<T> =>
        T.Step((firstMassFraction * first) + ((1 - firstMassFraction) * second), Symbols.MeanByMass, BlendByMassSource);

    /// <summary>Mass fraction from a volume fraction: w = x rho1 / (x rho1 + (1 - x) rho2).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="firstVolumeFraction">Volume fraction of the first before mixing, 0 to 1.</param>
    /// <param name="firstDensity">Density of the first, kg/m³.</param>
    /// <param name="secondDensity">Density of the second at the same temperature, kg/m³.</param>
    /// <returns>Mass fraction of the first, 0 to 1.</returns>
    /// <remarks>Source: [Definition] mass is volume times density.</remarks>
    [MethodImpl(Inline)]
    public static T MassFraction<T>(T firstVolumeFraction, T firstDensity, T secondDensity)
        where T : struct, IScalar<T>
    {
        T first = firstVolumeFraction * firstDensity;
        return T.Step(
            first / (first + ((1 - firstVolumeFraction) * secondDensity)),
            MassFractionResult,
            MassFractionSource
        );
    }

    /// <summary>Mass fraction of fuel in a mixture: 1/(1 + AFR).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="airFuelRatio">Air-fuel ratio by mass; greater than zero.</param>
    /// <returns>Mass of fuel over mass of mixture.</returns>
    /// <remarks>Source: [Definition] of the fraction.</remarks>
    [MethodImpl(Inline)]
    public static T FuelFraction<T>(T airFuelRatio)
        where T : struct, IScalar<T> => T.Step(1 / (1 + airFuelRatio), Symbols.FuelFraction, FuelFractionSource);

    /// <summary>Equivalence ratio: the fuel present over the fuel that the air could burn.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="airFuelRatio">Air-fuel ratio by mass; greater than zero.</param>
    /// <param name="stoichiometricRatio">Stoichiometric ratio by mass.</param>
    /// <returns>Equivalence ratio: above 1 rich, below 1 lean; the inverse of lambda.</returns>
    /// <remarks>Source: [Heywood-1988] section 3.4 (fuel/air equivalence ratio).</remarks>
    [MethodImpl(Inline)]
    public static T EquivalenceRatio<T>(T airFuelRatio, T stoichiometricRatio)
        where T : struct, IScalar<T> =>
        T.Step(stoichiometricRatio / airFuelRatio, Symbols.EquivalenceRatio, EquivalenceRatioSource);

    /// <summary>The air-fuel ratio behind a display that shows lambda times a fixed ratio, whatever the fuel.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reading">The ratio on the display.</param>
    /// <param name="scaleRatio">
    /// The ratio by which the display multiplies lambda, usually 14.7; greater than zero.
    /// </param>
    /// <param name="stoichiometricRatio">Stoichiometric ratio by mass of the fuel that burns.</param>
    /// <returns>Air-fuel ratio by mass of the mixture.</returns>
    /// <remarks>Source: [Definition] of the display's scale.</remarks>
    [MethodImpl(Inline)]
    public static T AirFuelRatioFromScale<T>(T reading, T scaleRatio, T stoichiometricRatio)
        where T : struct, IScalar<T>
    {
        T lambda = T.Step(reading / scaleRatio, Symbols.Lambda, AirFuelRatioFromScaleSource);
        return T.Step(lambda * stoichiometricRatio, Symbols.AirFuelRatio, AirFuelRatioFromScaleSource);
    }

    /// <summary>The air-fuel ratio from the mass fraction of fuel in a mixture: (1 - f)/f.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="fuelFraction">Mass of fuel over mass of mixture; greater than zero, below one.</param>
    /// <returns>Air-fuel ratio by mass.</returns>
    /// <remarks>Source: [Definition] of the fraction.</remarks>
    [MethodImpl(Inline)]
    public static T AirFuelRatioFromFuelFraction<T>(T fuelFraction)
        where T : struct, IScalar<T> =>
        T.Step((1 - fuelFraction) / fuelFraction, Symbols.AirFuelRatio, AirFuelRatioFromFuelFractionSource);

    /// <summary>A property per mass of a blend by volume: the sum of x rho q over the sum of x rho.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="volumeFractions">Volume fraction of each part before mixing; one or more.</param>
    /// <param name="densities">Density of each at the temperature of mixing, kg/m³.</param>
    /// <param name="perMass">The property of each per mass: a stoichiometric ratio, a heating value.</param>
    /// <returns>The property of the blend, per mass.</returns>
    /// <remarks>Source: [Definition] mass is volume times density, and mass is kept.</remarks>
    /// <exception cref="ArgumentException">The spans are empty or differ in length.</exception>
    public static T MeanByVolume<T>(ReadOnlySpan<T> volumeFractions, ReadOnlySpan<T> densities, ReadOnlySpan<T> perMass)
        where T : struct, IScalar<T>
    {
        if (
            volumeFractions.IsEmpty
            || volumeFractions.Length != densities.Length
            || volumeFractions.Length != perMass.Length
        )
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must have as many densities and properties as volume fractions, {1:least} or more.",
                nameof(volumeFractions)
            );
        }

        T mass = volumeFractions[0] * densities[0];
        T sum = mass * perMass[0];
        for (int i = 1; i < volumeFractions.Length; i++)
        {
            T part = volumeFractions[i] * densities[i];
            mass += part;
            sum += part * perMass[i];
        }

        return T.Step(sum / mass, Symbols.MeanByMass, MeanByVolumeSource);
    }
}

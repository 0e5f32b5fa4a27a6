using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>What a change of fuel requires of injectors and pump, relative to a baseline fuel. SI units.</summary>
/// <seealso href="../guide/fuel-change.html">Another fuel</seealso>
public static class FuelChangeRatios
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource MassRatioAtEqualLambdaSource = new(
        "Heywood-1988",
        "section 3.4 (relative air/fuel ratio)"
    );

    internal static readonly DataSource MassRatioAtEqualPowerSource = new(
        "Heywood-1988",
        "section 2.8 (fuel conversion efficiency)"
    );

    internal static readonly DataSource VolumeRatioSource = new("Definition", "mass over density");

    internal static readonly DataSource OpenTimeRatioSource = new("White-2003", "section 6.12 (obstruction flow)");

    internal static readonly Symbol MassAtLambda = new(
        "rm",
        "",
        "mass of the fuel over that of the baseline at equal lambda"
    );

    internal static readonly Symbol MassAtPower = new(
        "rmp",
        "",
        "mass of the fuel over that of the baseline at equal power"
    );

    internal static readonly Symbol VolumeRatioStep = new("rv", "", "volume of the fuel over that of the baseline");

    internal static readonly Symbol TimeRatio = new("rt", "", "time open over that with the baseline");

    /// <summary>Mass of a fuel over that of the baseline, for the same air and lambda.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="baselineStoichiometricRatio">Stoichiometric ratio by mass of the baseline.</param>
    /// <param name="stoichiometricRatio">Stoichiometric ratio by mass of the fuel; greater than zero.</param>
    /// <returns>Ratio of masses.</returns>
    /// <remarks>Source: [Heywood-1988] section 3.4 (relative air/fuel ratio).</remarks>
    [MethodImpl(Inline)]
    public static T MassRatioAtEqualLambda<T>(T baselineStoichiometricRatio, T stoichiometricRatio)
        where T : struct, IScalar<T> =>
        T.Step(baselineStoichiometricRatio / stoichiometricRatio, MassAtLambda, MassRatioAtEqualLambdaSource);

    /// <summary>Mass of a fuel over that of the baseline, for the same power at the same efficiency.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="baselineHeatingValue">Lower heating value of the baseline, J/kg.</param>
    /// <param name="heatingValue">Lower heating value of the fuel, J/kg; greater than zero.</param>
    /// <returns>Ratio of masses.</returns>
    /// <remarks>
    /// Efficiency is assumed equal, which is not quite true: an alcohol cools the charge and allows a higher
    /// compression ratio. Source: [Heywood-1988] section 2.8 (fuel conversion efficiency).
    /// </remarks>
    [MethodImpl(Inline)]
    public static T MassRatioAtEqualPower<T>(T baselineHeatingValue, T heatingValue)
        where T : struct, IScalar<T> =>
        T.Step(baselineHeatingValue / heatingValue, MassAtPower, MassRatioAtEqualPowerSource);

    /// <summary>Volume of a fuel over that of the baseline.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="massRatio">Ratio of masses.</param>
    /// <param name="baselineDensity">Density of the baseline, kg/m³.</param>
    /// <param name="density">Density of the fuel, kg/m³; greater than zero.</param>
    /// <returns>Ratio of volumes.</returns>
    /// <remarks>Source: [Definition] mass over density.</remarks>
    [MethodImpl(Inline)]
    public static T VolumeRatio<T>(T massRatio, T baselineDensity, T density)
        where T : struct, IScalar<T> =>
        T.Step(massRatio * baselineDensity / density, VolumeRatioStep, VolumeRatioSource);

    /// <summary>Time that an injector has to be open over that with the baseline, at the same differential pressure.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="massRatio">Ratio of masses.</param>
    /// <param name="baselineDensity">Density of the baseline, kg/m³.</param>
    /// <param name="density">Density of the fuel, kg/m³; greater than zero.</param>
    /// <returns>Ratio of times without dead time.</returns>
    /// <remarks>
    /// Mass flow is proportional to the square root of the density. Source: [White-2003] section 6.12 (obstruction
    /// flow).
    /// </remarks>
    [MethodImpl(Inline)]
    public static T OpenTimeRatio<T>(T massRatio, T baselineDensity, T density)
        where T : struct, IScalar<T> =>
        T.Step(massRatio * T.Sqrt(baselineDensity / density), TimeRatio, OpenTimeRatioSource);
}

using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Beta ratios and efficiencies of filters, for particles of a size and above.</summary>
/// <remarks>
/// A beta ratio belongs to one particle size, one test dust and one flow. All of these hold for particles of one named size
/// and above.
/// </remarks>
/// <seealso href="../guide/filters.html">Filters</seealso>
public static class Filtration
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource EfficiencySource = new("ISO-16889", "definition of the filtration ratio");

    internal static readonly DataSource BetaRatioSource = new(
        "ISO-16889",
        "definition of the filtration ratio, solved for it"
    );

    internal static readonly DataSource InSeriesSource = new("Definition", "the ratio of a ratio");

    internal static readonly DataSource AddedCoefficientSource = new(
        "Forchheimer-1901",
        "the first of the two terms, that of the medium"
    );

    internal static readonly Symbol EfficiencyResult = new("E", "", "share of particles held back");

    internal static readonly Symbol BetaRatioResult = new("beta", "", "beta ratio");

    internal static readonly Symbol InSeriesResult = new("beta", "", "beta ratio of both");

    internal static readonly Symbol AddedCoefficientResult = new("aa", "1/m3", "addition to the linear coefficient");

    /// <summary>The share of particles that is held back: 1 - 1/beta.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="betaRatio">Particles upstream over particles downstream; 1 or more.</param>
    /// <returns>Efficiency, 0 to 1.</returns>
    /// <remarks>Source: [ISO-16889] definition of the filtration ratio.</remarks>
    [MethodImpl(Inline)]
    public static T Efficiency<T>(T betaRatio)
        where T : struct, IScalar<T> => T.Step(1 - (1 / betaRatio), EfficiencyResult, EfficiencySource);

    /// <summary>The beta ratio of an efficiency: 1/(1 - efficiency).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="efficiency">Share of particles that is held back; 0 to less than 1.</param>
    /// <returns>Particles upstream over particles downstream.</returns>
    /// <remarks>Source: [ISO-16889] definition of the filtration ratio, solved for it.</remarks>
    [MethodImpl(Inline)]
    public static T BetaRatio<T>(T efficiency)
        where T : struct, IScalar<T> => T.Step(1 / (1 - efficiency), BetaRatioResult, BetaRatioSource);

    /// <summary>The beta ratio of two filters one behind the other, for one particle size: their product.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="first">Beta ratio of the first, at that size.</param>
    /// <param name="second">Beta ratio of the second, at the same size.</param>
    /// <returns>Beta ratio of both.</returns>
    /// <remarks>
    /// True if the second holds back the same share of what passes the first as of its test dust. What passes the first
    /// is finer within "this size and above", so the second performs slightly worse. Source: [Definition] the ratio of
    /// a ratio.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T InSeries<T>(T first, T second)
        where T : struct, IScalar<T> => T.Step(first * second, InSeriesResult, InSeriesSource);

    /// <summary>The loss that retained dirt adds to the medium, as a coefficient: dp / (mu Q).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="addedLoss">Loss with the retained mass less the clean one, Pa.</param>
    /// <param name="dynamicViscosity">Dynamic viscosity of the fluid of that reading, Pa s; greater than zero.</param>
    /// <param name="volumeFlow">Flow of that reading, m³/s; greater than zero.</param>
    /// <returns>The addition to the linear coefficient of <see cref="PorousMedium.PressureLoss{T}"/>, 1/m³.</returns>
    /// <remarks>
    /// Retained dirt clogs the medium, whose loss is proportional to viscosity and flow; the loss of the housing does
    /// not change. Source: [Forchheimer-1901] the first of the two terms, that of the medium.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T AddedCoefficient<T>(T addedLoss, T dynamicViscosity, T volumeFlow)
        where T : struct, IScalar<T> =>
        T.Step(addedLoss / (dynamicViscosity * volumeFlow), AddedCoefficientResult, AddedCoefficientSource);
}

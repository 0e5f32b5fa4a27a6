using System.Runtime.CompilerServices;
using FuelMath.Scalars;
using FuelMath.Sources;

namespace FuelMath.Formulas;

/// <summary>Loss coefficients of bends and of gradual changes of bore, each for the velocity in a named bore.</summary>
/// <remarks>
/// For turbulent flow: in laminar flow fittings lose more than these coefficients say. Angles come with the sine of
/// their half, because a scalar has no sine of its own.
/// </remarks>
public static class BendLoss
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource RoundedBendSource = new(
        "Rennels-Hudson-2012",
        "chapter 15, smooth bends, as the open library fluids states it"
    );

    internal static readonly DataSource MiterBendSource = new(
        "Rennels-Hudson-2012",
        "chapter 15, miter bends, as the open library fluids states it"
    );

    internal static readonly DataSource TwoConstantsSource = new("Hooper-1981", "as the open library fluids states it");

    internal static readonly DataSource GradualContractionSource = new("Crane-TP410", "appendix A, formulas 1 and 2");

    internal static readonly DataSource GradualExpansionSource = new("Crane-TP410", "appendix A, formulas 3 and 4");

    /// <summary>A rounded bend, for the bore that is bent.</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="frictionFactor">Darcy friction factor of the bent bore, 0.008 to 0.1.</param>
    /// <param name="angle">Angle that the flow is turned by, rad, 0 to pi.</param>
    /// <param name="sineOfHalf">Sine of half that angle.</param>
    /// <param name="bendRatio">Radius of the center line over the bore, 0.7 or more.</param>
    /// <returns>The loss coefficient, with the friction along the bend in it.</returns>
    /// <remarks>Source: [Rennels-Hudson-2012] chapter 15, smooth bends, as the open library fluids states it.</remarks>
    [MethodImpl(Inline)]
    public static T RoundedBend<T>(T frictionFactor, T angle, T sineOfHalf, T bendRatio)
        where T : struct, IScalar<T>
    {
        T friction = frictionFactor * angle * bendRatio;
        T turning = (0.10 + (2.4 * frictionFactor)) * sineOfHalf;
        T fall = T.Exp(-(4 / Math.PI * angle) * T.Log(bendRatio));
        T sharpness = 6.6 * frictionFactor * (T.Sqrt(sineOfHalf) + sineOfHalf) * fall;
        return T.Step(friction + turning + sharpness, Symbols.LossCoefficient, RoundedBendSource);
    }

    /// <summary>A bend with a sharp inner corner, such as two holes drilled to meet in a forged elbow.</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="sineOfHalf">Sine of half the angle that the flow is turned by; the angle 0 to 150 degrees.</param>
    /// <returns>The loss coefficient of its bore.</returns>
    /// <remarks>Source: [Rennels-Hudson-2012] chapter 15, miter bends, as the open library fluids states it.</remarks>
    [MethodImpl(Inline)]
    public static T MiterBend<T>(T sineOfHalf)
        where T : struct, IScalar<T> =>
        T.Step(sineOfHalf * (0.42 + (2.56 * sineOfHalf * sineOfHalf)), Symbols.LossCoefficient, MiterBendSource);

    /// <summary>A fitting by two constants: K = K1 / Re + K2 (1 + 1 in / D), for its bore.</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="laminarConstant">K1, the coefficient at a Reynolds number of one.</param>
    /// <param name="largeConstant">K2, the coefficient of a large fitting at a high Reynolds number.</param>
    /// <param name="reynolds">Reynolds number, greater than zero.</param>
    /// <param name="bore">Bore, m; greater than zero.</param>
    /// <returns>The loss coefficient.</returns>
    /// <remarks>Holds for laminar flow too. Source: [Hooper-1981] as the open library fluids states it.</remarks>
    [MethodImpl(Inline)]
    public static T TwoConstants<T>(T laminarConstant, T largeConstant, T reynolds, T bore)
        where T : struct, IScalar<T> =>
        T.Step(
            (laminarConstant / reynolds) + (largeConstant * (1 + (0.0254 / bore))),
            Symbols.LossCoefficient,
            TwoConstantsSource
        );

    /// <summary>A conical contraction, for the smaller bore.</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="sineOfHalf">Sine of half the included angle of the cone, 0 to 1 (a step).</param>
    /// <param name="areaRatio">Smaller area over larger area, 0 to 1.</param>
    /// <returns>The loss coefficient of the smaller bore.</returns>
    /// <remarks>
    /// Two formulas, for narrow cones and for wide ones. The book changes over at 45 degrees of included angle, where they
    /// differ by 1 %; here the smaller of the two is taken, which changes over at 46 degrees without a jump.
    /// Source: [Crane-TP410] appendix A, formulas 1 and 2.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T GradualContraction<T>(T sineOfHalf, T areaRatio)
        where T : struct, IScalar<T> =>
        T.Step(
            T.Min(0.8 * sineOfHalf, 0.5 * T.Sqrt(sineOfHalf)) * (1 - areaRatio),
            Symbols.LossCoefficient,
            GradualContractionSource
        );

    /// <summary>A conical expansion, for the smaller bore.</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="sineOfHalf">Sine of half the included angle of the cone, 0 to 1 (a step).</param>
    /// <param name="areaRatio">Smaller area over larger area, 0 to 1.</param>
    /// <returns>The loss coefficient of the smaller bore.</returns>
    /// <remarks>
    /// From 45 degrees of included angle on it is the sudden expansion of Borda and Carnot.
    /// Source: [Crane-TP410] appendix A, formulas 3 and 4.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T GradualExpansion<T>(T sineOfHalf, T areaRatio)
        where T : struct, IScalar<T>
    {
        T rest = 1 - areaRatio;
        return T.Step(T.Min(2.6 * sineOfHalf, T.Of(1)) * rest * rest, Symbols.LossCoefficient, GradualExpansionSource);
    }
}

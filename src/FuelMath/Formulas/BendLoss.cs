using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Loss coefficients of bends and of gradual changes of bore, each for the velocity in a named bore.</summary>
/// <remarks>
/// For turbulent flow: in laminar flow fittings lose more than these coefficients say. A bend takes its angle and the
/// sine of half the angle, because scalars have no sine function; the angle of a cone is a plain number.
/// </remarks>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
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

    internal static readonly DataSource GradualContractionSource = new(
        "Rennels-Hudson-2012",
        "conical contraction, as the open library fluids states it"
    );

    internal static readonly DataSource GradualExpansionSource = new(
        "Rennels-Hudson-2012",
        "conical expansion, as the open library fluids states it"
    );

    /// <summary>Loss coefficient of a rounded bend, for the velocity in its bore.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="frictionFactor">Darcy friction factor of the bent bore, 0.008 to 0.1.</param>
    /// <param name="angle">Angle that the flow is turned by, rad, 0 to pi.</param>
    /// <param name="sineOfHalf">Sine of half that angle.</param>
    /// <param name="bendRatio">Radius of the center line over the bore, 0.7 or more.</param>
    /// <returns>The loss coefficient, friction along the bend included.</returns>
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

    /// <summary>
    /// Loss coefficient of a bend with a sharp inner corner, such as two holes drilled to meet in a forged elbow.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="sineOfHalf">Sine of half the angle that the flow is turned by; the angle 0 to 150 degrees.</param>
    /// <returns>The loss coefficient of its bore.</returns>
    /// <remarks>Source: [Rennels-Hudson-2012] chapter 15, miter bends, as the open library fluids states it.</remarks>
    [MethodImpl(Inline)]
    public static T MiterBend<T>(T sineOfHalf)
        where T : struct, IScalar<T> =>
        T.Step(sineOfHalf * (0.42 + (2.56 * sineOfHalf * sineOfHalf)), Symbols.LossCoefficient, MiterBendSource);

    /// <summary>
    /// Loss coefficient of a fitting by two constants: K = K1 / Re + K2 (1 + 1 in / D), for its bore.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
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

    /// <summary>Loss coefficient of a conical contraction, for the velocity in the smaller bore.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="frictionFactor">Darcy friction factor in the cone, 0.008 to 0.1.</param>
    /// <param name="areaRatio">Smaller area over larger area, above 0 to 1.</param>
    /// <param name="included">Included angle of the cone, rad, above 0 to pi.</param>
    /// <returns>The loss coefficient of the smaller bore.</returns>
    /// <remarks>
    /// As for a sharp edge, with the jet's contraction multiplied by (angle/pi)^0.8 and the first term by sin(angle/2),
    /// plus the friction f (1 - b^4) / (8 sin(angle/2)). Source: [Rennels-Hudson-2012] conical contraction, as the open
    /// library fluids states it.
    /// </remarks>
    public static T GradualContraction<T>(T frictionFactor, T areaRatio, double included)
        where T : struct, IScalar<T>
    {
        double sine = Math.Sin(included / 2);
        T fifth = areaRatio * areaRatio * T.Sqrt(areaRatio);
        T jet = 1 + (0.622 * Math.Pow(included / Math.PI, 0.8) * (1 - (0.215 * areaRatio) - (0.785 * fifth)));
        T widening = jet - 1;
        return T.Step(
            ConeFriction(frictionFactor, areaRatio, sine)
                + (0.0696 * sine * (1 - fifth) * jet * jet)
                + (widening * widening),
            Symbols.LossCoefficient,
            GradualContractionSource
        );
    }

    /// <summary>Loss coefficient of a conical expansion, for the velocity in the smaller bore.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="frictionFactor">Darcy friction factor in the cone, 0.008 to 0.1; not used above 60 degrees.</param>
    /// <param name="areaRatio">Smaller area over larger area, 0 to 1.</param>
    /// <param name="included">Included angle of the cone, rad, above 0 to pi.</param>
    /// <returns>The loss coefficient of the smaller bore.</returns>
    /// <remarks>
    /// Three formulas: up to 20 degrees, up to 60 and up to 180. Between 45 and 120 degrees a cone loses more than a
    /// step. At 60 degrees they differ by 0.009 (1 - A1/A2)^2 and the friction; at 180 degrees the last lies 0.5 %
    /// above Borda and Carnot. Source: [Rennels-Hudson-2012] conical expansion, as the open library fluids states it.
    /// </remarks>
    public static T GradualExpansion<T>(T frictionFactor, T areaRatio, double included)
        where T : struct, IScalar<T>
    {
        double degrees = included * 180 / Math.PI;
        T rest = 1 - areaRatio;
        T fourth = areaRatio * areaRatio;
        T belowHalf = 3.28 * T.Max(0.0625 - fourth, T.Of(0));
        T share =
            degrees <= 20 ? T.Of(8.30 * Math.Pow(Math.Tan(included / 2), 1.75))
            : degrees <= 60 ? Widening(degrees) - (belowHalf * Math.Sqrt((degrees - 20) / 40))
            : 1.205 - belowHalf - (T.Min(12.8 * fourth * areaRatio, T.Of(0.2)) * Math.Sqrt((degrees - 60) / 120));
        T friction = degrees <= 60 ? ConeFriction(frictionFactor, areaRatio, Math.Sin(included / 2)) : T.Of(0);
        return T.Step((share * rest * rest) + friction, Symbols.LossCoefficient, GradualExpansionSource);
    }

    private static double Widening(double degrees) =>
        (1.366 * Math.Sqrt(Math.Sin(2 * Math.PI * (degrees - 15) / 180))) - 0.170;

    private static T ConeFriction<T>(T frictionFactor, T areaRatio, double sineOfHalf)
        where T : struct, IScalar<T> => frictionFactor * (1 - (areaRatio * areaRatio)) / (8 * sineOfHalf);
}

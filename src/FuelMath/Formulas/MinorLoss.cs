using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Pressure lost in fittings, bends and changes of bore. SI units.</summary>
/// <remarks>
/// A loss coefficient belongs to the velocity in one named bore; convert it before using it with another.
/// </remarks>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public static class MinorLoss
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource PressureLossSource = new("White-2003", "section 6.9 (minor losses)");

    internal static readonly DataSource SuddenExpansionSource = new("White-2003", "section 6.9 (minor losses)");

    internal static readonly DataSource SuddenContractionSource = new(
        "Rennels-Hudson-2012",
        "sharp-edged contraction, as the open library fluids states it"
    );

    internal static readonly DataSource CarriedCoefficientSource = new("TP-410", "chapter 2");

    internal static readonly DataSource StraightLengthSource = new("TP-410", "chapter 2");

    /// <summary>The pressure lost: dp = K rho v|v| / 2.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="lossCoefficient">Loss coefficient for the bore in which <paramref name="velocity"/> is taken.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="velocity">Mean velocity, m/s; either sign.</param>
    /// <returns>Pressure lost, Pa, with the sign of the velocity.</returns>
    /// <remarks>Source: [White-2003] section 6.9 (minor losses).</remarks>
    [MethodImpl(Inline)]
    public static T PressureLoss<T>(T lossCoefficient, T density, T velocity)
        where T : struct, IScalar<T> =>
        T.Step(lossCoefficient * (density * velocity * T.Abs(velocity) / 2), Symbols.PressureLoss, PressureLossSource);

    /// <summary>A sudden expansion after Borda and Carnot: K = (1 - A1/A2)^2, for the smaller bore.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="areaRatio">Smaller area over larger area, 0 to 1.</param>
    /// <returns>The loss coefficient of the smaller bore.</returns>
    /// <remarks>Source: [White-2003] section 6.9 (minor losses).</remarks>
    [MethodImpl(Inline)]
    public static T SuddenExpansion<T>(T areaRatio)
        where T : struct, IScalar<T>
    {
        T rest = 1 - areaRatio;
        return T.Step(rest * rest, Symbols.LossCoefficient, SuddenExpansionSource);
    }

    /// <summary>A sudden contraction with a sharp edge, for the smaller bore.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="areaRatio">Smaller area over larger area, above 0 to 1.</param>
    /// <returns>The loss coefficient of the smaller bore.</returns>
    /// <remarks>
    /// With b the smaller diameter over the larger: K = 0.0696 (1 - b^5) l^2 + (l - 1)^2, where l = 1 + 0.622 (1 - 0.215 b^2 -
    /// 0.785 b^5) is the velocity in the contracted jet over that in the bore. The older 0.5 (1 - b^2) lies up to 0.12 lower.
    /// Source: [Rennels-Hudson-2012] sharp-edged contraction, as the open library fluids states it.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T SuddenContraction<T>(T areaRatio)
        where T : struct, IScalar<T>
    {
        T fifth = areaRatio * areaRatio * T.Sqrt(areaRatio);
        T jet = 1 + (0.622 * (1 - (0.215 * areaRatio) - (0.785 * fifth)));
        T widening = jet - 1;
        return T.Step(
            (0.0696 * (1 - fifth) * jet * jet) + (widening * widening),
            Symbols.LossCoefficient,
            SuddenContractionSource
        );
    }

    /// <summary>A loss coefficient converted from one bore to another: K2 = K1 (D2/D1)^4.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="lossCoefficient">Loss coefficient of the first bore.</param>
    /// <param name="fromBore">The bore it belongs to, m; greater than zero.</param>
    /// <param name="toBore">The other bore, m.</param>
    /// <returns>The loss coefficient of the other bore.</returns>
    /// <remarks>Source: [TP-410] chapter 2.</remarks>
    [MethodImpl(Inline)]
    public static T CarriedCoefficient<T>(T lossCoefficient, T fromBore, T toBore)
        where T : struct, IScalar<T>
    {
        T ratio = toBore / fromBore;
        T square = ratio * ratio;
        return T.Step(lossCoefficient * (square * square), Symbols.LossCoefficient, CarriedCoefficientSource);
    }

    /// <summary>The loss coefficient of a straight length: K = f L / D.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="frictionFactor">Darcy friction factor.</param>
    /// <param name="length">Length, m.</param>
    /// <param name="bore">Inner diameter, m; greater than zero.</param>
    /// <returns>The loss coefficient of that bore.</returns>
    /// <remarks>Source: [TP-410] chapter 2.</remarks>
    [MethodImpl(Inline)]
    public static T StraightLength<T>(T frictionFactor, T length, T bore)
        where T : struct, IScalar<T> =>
        T.Step(frictionFactor * length / bore, Symbols.LossCoefficient, StraightLengthSource);
}

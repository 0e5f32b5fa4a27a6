using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>The implicit law of turbulent friction: x + C ln(rough + viscous x) = 0, where x = 1/sqrt(f).</summary>
/// <remarks>
/// The parameters are viscous = 2.51/Re and rough = e/(3.7 D). One fourth-order step from a linear initial guess and
/// one Newton step reach rounding error over Re from 4000 to 1e11 and e/D from 0 to 0.1. Source: [Colebrook-1939]
/// equation of the transition curve; [Householder-1970] the step of fourth order.
/// </remarks>
/// <seealso href="../guide/hoses.html">Hoses</seealso>
public readonly struct Colebrook : IImplicitLaw
{
    /// <summary>2 / ln 10.</summary>
    internal const double C = 0.86858896380650366;

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Near<T>(T a, T b)
        where T : struct, IScalar<T>
    {
        T x = -C * T.Log(b + (6.1 * a));
        T inside = b + (a * x);
        T f = x + (C * T.Log(inside));
        T r = a / inside;
        T f1 = 1 + (C * r);
        T f2 = -C * r * r;
        T f3 = -2 * f2 * r;
        T square = f1 * f1;
        return x - (f * ((6 * square) - (3 * f * f2)) / ((6 * f1 * (square - (f * f2))) + (f * f * f3)));
    }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Polish<T>(T near, T a, T b)
        where T : struct, IScalar<T>
    {
        T inside = b + (a * near);
        return near - ((near + (C * T.Log(inside))) * inside / (inside + (C * a)));
    }
}

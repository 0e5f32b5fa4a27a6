using System.Runtime.CompilerServices;

namespace FuelMath;

/// <summary>One piece of a curve: a cubic in the distance from its start.</summary>
internal readonly struct Piece
{
    private const double Most = 1e300;

    internal readonly double X0;
    internal readonly double C0;
    internal readonly double C1;
    internal readonly double C2;
    internal readonly double C3;

    internal Piece(double x0, double c0, double c1, double c2, double c3)
    {
        X0 = x0;
        C0 = c0;
        C1 = c1;
        C2 = c2;
        C3 = c3;
    }

    /// <summary>Whether what follows from it, and the slope of that, are numbers.</summary>
    internal bool IsFinite =>
        Math.Abs(C0) <= Most && Math.Abs(C1) <= Most && Math.Abs(C2) <= Most && Math.Abs(C3) <= Most;

    /// <summary>The same piece with its axis multiplied: the value at x is then at factor times x.</summary>
    internal Piece Stretched(double factor) =>
        new(factor * X0, C0, C1 / factor, C2 / factor / factor, C3 / factor / factor / factor);

    /// <summary>The same piece with its values multiplied.</summary>
    internal Piece Scaled(double factor) => new(X0, factor * C0, factor * C1, factor * C2, factor * C3);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double At(double x)
    {
        double t = x - X0;
        return C0 + (t * (C1 + (t * (C2 + (t * C3)))));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double Slope(double x)
    {
        double t = x - X0;
        return C1 + (t * ((2 * C2) + (t * 3 * C3)));
    }
}

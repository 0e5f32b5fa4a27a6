using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>The natural logarithm of many numbers at once, from their binary exponents and mantissas.</summary>
/// <remarks>
/// <para>
/// x = 2^k m with m from sqrt(1/2) to sqrt(2); with s = (m - 1)/(m + 1), ln m = 2 s + s z P(z), z = s^2, where P is the
/// Chebyshev fit of seven terms to the rest of the series (error 5e-18 of the result). Written once over the lanes,
/// with fused steps where it says so, so that every machine and both widths give the same bits, within 1 unit in the
/// last place of the true value. (The vector logarithm of .NET is off by up to 3 and differs between machines.)
/// </para>
/// <para>Source: [Muller-2016] chapter 11 (range reduction and the series of the logarithm).</para>
/// </remarks>
internal static class Logarithm
{
    /// <summary>Added to a number's bits, so that the range of the mantissa begins at sqrt(1/2).</summary>
    internal const ulong Shift = 0x3ff0000000000000 - RootOfHalf;

    /// <summary>The bits of sqrt(1/2), cut after 21 bits of mantissa.</summary>
    internal const ulong RootOfHalf = 0x3fe6a09e00000000;

    internal const ulong MantissaBits = 0x000fffffffffffff;

    /// <summary>The bits of 2^52: joined to a small whole number, they make a double of it.</summary>
    internal const ulong TwoTo52Bits = 0x4330000000000000;

    /// <summary>The offset of such a double from the exponent: 2^52 and the exponent bias.</summary>
    internal const double ExponentBias = 4503599627370496.0 + 1023;

    /// <summary>The smallest number that is not subnormal.</summary>
    internal const double Smallest = 2.2250738585072014e-308;

    /// <summary>A power of two that makes every subnormal number an ordinary one.</summary>
    internal const double Scaling = 18014398509481984.0;

    private const int ScalingExponent = 54;

    // ln 2 in two parts: the first has so few bits that its product with an exponent is exact.
    private const double Ln2High = 0.6931471803691238;
    private const double Ln2Low = 1.9082149292705877e-10;

    /// <summary>ln(2^exponent mantissa).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Join<T>(T exponent, T mantissa)
        where T : struct, ILane<T>
    {
        T f = mantissa - 1;
        T s = f / (f + 2);
        T z = s * s;
        T zz = z * z;
        T even = T.MultiplyAdd(zz, T.Of(0.14616449685043406), T.Of(0.18182889125261723));
        T odd = T.MultiplyAdd(zz, T.Of(0.15331721600556042), T.Of(0.2222221113479508));
        even = T.MultiplyAdd(zz, even, T.Of(0.28571428625975487));
        odd = T.MultiplyAdd(zz, odd, T.Of(0.39999999999899505));
        even = T.MultiplyAdd(zz, even, T.Of(0.666666666666667));
        T halfSquare = 0.5 * f * f;
        T series = T.MultiplyAdd(z, T.MultiplyAdd(z, odd, even), halfSquare);
        T rest = T.MultiplyAdd(s, series, exponent * Ln2Low);
        return (exponent * Ln2High) - (halfSquare - rest - f);
    }

    /// <summary>
    /// The logarithm of what is not ordinary: subnormal numbers from their logarithm times 2^54, and what zero, negative
    /// numbers, infinity and what is no number give.
    /// </summary>
    /// <remarks>Without a call: one on this rare side would make the usual side keep its registers in memory.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Rare<T>(T x, T ofScaled)
        where T : struct, ILane<T>
    {
        T zero = T.Of(0);
        T rare = ofScaled - (ScalingExponent * 0.6931471805599453);
        rare = T.Select(T.Less(zero, x), rare, T.Of(double.NegativeInfinity));
        rare = T.Select(T.Less(x, zero), T.Of(double.NaN), rare);
        return T.Select(T.Less(x, T.Of(Smallest)), rare, x);
    }
}

using MathNet.Numerics;

namespace FuelMath.Statistics;

/// <summary>Random numbers by position: the same seed and position give the same number in any order.</summary>
/// <remarks>Source: [Steele-Lea-Flood-2014] figure 17, and the constants of its 64-bit finalizer.</remarks>
internal static class Draws
{
    private const ulong Step = 0x9E3779B97F4A7C15;

    /// <summary>The number at a position in the sequence of a seed; the first position is 0.</summary>
    internal static ulong Bits(ulong seed, ulong place)
    {
        unchecked
        {
            ulong z = seed + (Step * (place + 1));
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }

    /// <summary>A number between 0 and 1, neither included.</summary>
    internal static double Share(ulong seed, ulong place) => ((Bits(seed, place) >> 11) + 0.5) / (1UL << 53);

    /// <summary>The quantile of a distribution, in standard deviations.</summary>
    internal static double Deviation(SpreadShape shape, double share) =>
        shape switch
        {
            SpreadShape.Normal => -Math.Sqrt(2) * SpecialFunctions.ErfcInv(2 * share),
            SpreadShape.Rectangular => Math.Sqrt(3) * ((2 * share) - 1),
            SpreadShape.Triangular => share < 0.5
                ? Math.Sqrt(6) * (Math.Sqrt(2 * share) - 1)
                : Math.Sqrt(6) * (1 - Math.Sqrt(2 * (1 - share))),
            SpreadShape.ArcSine => Math.Sqrt(2) * Math.Sin(Math.PI * (share - 0.5)),
            _ => throw Guard.NoChoice(shape),
        };
}

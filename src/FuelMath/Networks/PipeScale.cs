using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>Where a passage's cold start begins.</summary>
internal static class PipeScale
{
    /// <summary>A usual velocity, m/s.</summary>
    internal const double Velocity = 0.6;

    /// <summary>A millionth of the usual resistance: only a passage without length gets that low.</summary>
    internal static T LeastSlope<T>(T dynamic, double slender, double minor, T flow)
        where T : struct, IScalar<T> => 1e-6 * ((0.03 * slender) + minor) * dynamic * flow;
}

using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>Where a passage's cold start begins.</summary>
internal static class PipeScale
{
    /// <summary>A usual velocity, m/s.</summary>
    internal const double Velocity = 0.6;

    /// <summary>Its resistance at that velocity, with a usual friction factor.</summary>
    internal static T UsualSlope<T>(T dynamic, double slender, double minor, T flow)
        where T : struct, IScalar<T> => ((0.03 * slender) + minor) * dynamic * flow;
}

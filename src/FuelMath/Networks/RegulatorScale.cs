using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>Where a regulator's cold start begins.</summary>
internal static class RegulatorScale
{
    private const double UsualLoss = 1e3;
    private const double UsualPressure = 1e5;

    internal static T Flow<T>(T open)
        where T : struct, IScalar<T> => T.Sqrt(UsualLoss / open);

    /// <summary>A regulator without slope has none of its own while it regulates.</summary>
    internal static T UsualSlope<T>(T flow)
        where T : struct, IScalar<T> => UsualPressure / flow;
}

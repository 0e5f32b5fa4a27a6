using UnitsNet;

namespace FuelMath;

/// <summary>Where a node is in a vehicle that speeds up.</summary>
internal static class PlaceShape
{
    /// <summary>The properties "forward" and "left" of a node.</summary>
    internal static void Place<T>(
        this ObjectBuilder<T> o,
        Func<T, Length> forward,
        Func<T, Length> left,
        Func<T, Length, Length, T> at
    )
    {
        o.With("forward", QuantityShapes.Length, n => NotZero(forward(n)), (n, value) => at(n, value, left(n)))
            .Says("How far ahead of a place that all nodes share; it counts where the vehicle speeds up.");
        o.With("left", QuantityShapes.Length, n => NotZero(left(n)), (n, value) => at(n, forward(n), value))
            .Says("How far to the left of that place.");
    }

    private static Length? NotZero(Length length) => length.InSi() == 0 ? null : length;
}

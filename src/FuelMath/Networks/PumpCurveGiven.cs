using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A pump's curve: a table, or a power law through its shutoff and one point.</summary>
internal sealed class PumpCurveGiven(
    bool isSmooth,
    ImmutableArray<PlainPump.Point> points,
    OutsideRange outside,
    Pressure shutoff,
    Ratio exponent
)
{
    internal bool IsPower => Points.Length == 1;

    internal bool IsSmooth { get; } = isSmooth;

    /// <summary>Whether the rise fails to fall from some point to the next.</summary>
    internal bool HasHump { get; } =
        points.Skip(1).Zip(points, (next, last) => next.RiseSi >= last.RiseSi).Contains(true);

    internal ImmutableArray<PlainPump.Point> Points { get; } = points;

    internal OutsideRange Outside { get; } = outside;

    internal Pressure Shutoff { get; } = shutoff;

    internal Ratio Exponent { get; } = exponent;
}

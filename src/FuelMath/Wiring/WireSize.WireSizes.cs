using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <content>Series of sizes to choose from, thin to thick.</content>
/// <content>These are the usual ones; use your own list for what you stock.</content>
public sealed partial class WireSize
{
    private static readonly double[] SquareMillimeters =
    [
        0.5,
        0.75,
        1,
        1.5,
        2.5,
        4,
        6,
        10,
        16,
        25,
        35,
        50,
        70,
        95,
        120,
    ];

    /// <summary>Nominal areas from 0.5 mm² to 120 mm². Source: [IEC-60228] table 1.</summary>
    public static ImmutableArray<WireSize> Metric { get; } =
    [.. SquareMillimeters.Select(a => WireSize.FromArea(Area.FromSquareMillimeters(a)))];

    /// <summary>The even gauges from 22 to 2, then 1/0 to 4/0. Source: [Common-practice] what the trade stocks.</summary>
    public static ImmutableArray<WireSize> AmericanGauges { get; } =
    [
        .. Enumerable.Range(0, 11).Select(i => WireSize.FromAwg(22 - (2 * i))),
        .. Enumerable.Range(0, 4).Select(i => WireSize.FromAwg(-i)),
    ];
}

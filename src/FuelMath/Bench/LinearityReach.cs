using System.Collections.Immutable;
using FuelMath.Statistics;

namespace FuelMath.Bench;

/// <summary>Kernel: how far a dead time and a slope can be off because means depart from a straight line within a tolerance.</summary>
/// <remarks>
/// The line is a sum of its readings, each with a known pull on where it meets no fuel and on how steep it is. So the worst is known of
/// two cases, and the larger of them counts: every mean departs by the tolerance, each to the worse side; or one width
/// alone departs by so much that the line, which it pulls along, still passes it as within the tolerance.
/// </remarks>
internal sealed class LinearityReach
{
    private readonly FittedLine line;
    private readonly double tolerance;
    private readonly ImmutableArray<(double Mass, double Own, int[] Readings)> widths;

    internal LinearityReach(FittedLine line, double tolerance)
    {
        (this.line, this.tolerance) = (line, tolerance);
        widths =
        [
            .. Enumerable
                .Range(0, line.X.Length)
                .GroupBy(i => line.X[i])
                .Select(g => (line.At(g.Key), Pull([.. g], g.Key), g.ToArray())),
        ];
    }

    /// <summary>How far below this place, which lies below all readings, the line may meet no fuel.</summary>
    internal double Below(double low)
    {
        // What may be off grows in proportion to the distance from the readings, so that the two lines meet by a division.
        double away = line.X[^1] - low;
        double growth = (Off(low - away) - Off(low)) / away;
        return Off(low) / (line.Slope - Math.Min(growth, line.Slope / 2));
    }

    /// <summary>How far above this place the line may meet no fuel: toward the readings, where less may be off.</summary>
    internal double Above(double high) => Off(high) / line.Slope;

    /// <summary>By how much the slope may be off, to either side.</summary>
    internal double OfSlope() => Off(readings => Pull(readings, 1) - Pull(readings, 0));

    /// <summary>By how much mass the line may be off at a width.</summary>
    private double Off(double at) => Off(readings => Pull(readings, at));

    private double Off(Func<int[], double> pull)
    {
        (double sum, double most) = (0, 0);
        foreach ((double mass, double own, int[] readings) in widths)
        {
            double off = Math.Abs(pull(readings)) * tolerance * mass;
            sum += off;
            most = Math.Max(most, off / (1 - own));
        }

        return Math.Max(sum, most);
    }

    private double Pull(int[] readings, double at) => readings.Sum(i => line.Pull(i, at));
}

using System.Collections.Immutable;
using FuelMath.Statistics;

namespace FuelMath.Bench;

/// <summary>
/// Kernel: bounds on the errors of a dead time and a slope caused by departures of the means from a straight line
/// within a tolerance.
/// </summary>
/// <remarks>
/// The fit is linear in its readings, so the leverage of each on the zero crossing and on the slope is known. The bound
/// is the larger of two worst cases: every mean departs by the tolerance, each to the worse side; or a single width
/// departs so far that the line, which it pulls along, still accepts it as within the tolerance.
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

    /// <summary>How far the zero crossing may lie below this width, which lies below all readings.</summary>
    internal double Below(double low)
    {
        // The bound grows linearly with the distance from the readings, so the crossing of the two lines is one
        // division.
        double away = line.X[^1] - low;
        double growth = (Off(low - away) - Off(low)) / away;
        return Off(low) / (line.Slope - Math.Min(growth, line.Slope / 2));
    }

    /// <summary>
    /// How far the zero crossing may lie above this width: toward the readings, where the bound is smaller.
    /// </summary>
    internal double Above(double high) => Off(high) / line.Slope;

    /// <summary>The bound on the error of the slope, to either side.</summary>
    internal double OfSlope() => Off(readings => Pull(readings, 1) - Pull(readings, 0));

    /// <summary>The bound on the error of the line's mass at a width.</summary>
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

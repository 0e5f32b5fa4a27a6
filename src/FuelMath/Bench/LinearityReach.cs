using System.Collections.Immutable;
using FuelMath.Uncertainty;

namespace FuelMath.Bench;

/// <summary>Kernel: how far a dead time can be off because means depart from a straight line within a tolerance.</summary>
/// <remarks>
/// The line is a sum of its readings, each with a known pull on the place where it meets no fuel. So the worst is known of
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

    /// <summary>How far beyond this end, to the side of the sign, the line may meet no fuel.</summary>
    internal double Beyond(double end, int sign)
    {
        // What may be off grows in proportion to the distance, so that the two lines meet by one division.
        double step = sign * Math.Max(Math.Abs(line.X[^1] - end), double.Epsilon);
        double growth = Math.Max(0, Off(end + step) - Off(end)) / Math.Abs(step);
        return Off(end) / (line.Slope - Math.Min(growth, line.Slope / 2));
    }

    /// <summary>By how much mass the line may be off at a width.</summary>
    private double Off(double at)
    {
        (double sum, double most) = (0, 0);
        foreach ((double mass, double own, int[] readings) in widths)
        {
            double off = Math.Abs(Pull(readings, at)) * tolerance * mass;
            sum += off;
            most = Math.Max(most, off / (1 - own));
        }

        return Math.Max(sum, most);
    }

    private double Pull(int[] readings, double at) => readings.Sum(i => line.Pull(i, at));
}

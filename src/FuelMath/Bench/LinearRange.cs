using System.Collections.Immutable;
using FuelMath.Uncertainty;

namespace FuelMath.Bench;

/// <summary>Kernel: the longest run of pulse widths whose mean masses all lie within a share of their own line.</summary>
internal static class LinearRange
{
    private const int LeastWidths = 3;

    /// <summary>
    /// The line, the first and the past-the-last reading, and its worst departure; null when no three widths do. Among runs
    /// of the same number of widths the one with the smallest worst departure counts.
    /// </summary>
    internal static (FittedLine Line, int First, int End, double Worst)? Find(
        ImmutableArray<DynamicFlowReading> sorted,
        double tolerance
    )
    {
        int[] starts =
        [
            .. Enumerable.Range(0, sorted.Length).Where(i => i == 0 || sorted[i].WidthSi != sorted[i - 1].WidthSi),
            sorted.Length,
        ];
        for (int widths = starts.Length - 1; widths >= LeastWidths; widths--)
        {
            (FittedLine, int, int, double)? best = null;
            for (int i = 0; i + widths < starts.Length; i++)
            {
                FittedLine line = Fit(sorted.AsSpan()[starts[i]..starts[i + widths]]);
                double worst = Worst(sorted, starts.AsSpan(i, widths + 1), line);
                if (worst <= tolerance && !(best?.Item4 <= worst))
                {
                    best = (line, starts[i], starts[i + widths], worst);
                }
            }

            if (best is not null)
            {
                return best;
            }
        }

        return null;
    }

    /// <summary>The scatter from pulse to pulse averages out over the pulses, so that a reading counts by their number.</summary>
    private static FittedLine Fit(ReadOnlySpan<DynamicFlowReading> readings)
    {
        var (x, y, weights) = (new double[readings.Length], new double[readings.Length], new double[readings.Length]);
        for (int i = 0; i < readings.Length; i++)
        {
            (x[i], y[i], weights[i]) = (readings[i].WidthSi, readings[i].MassSi, readings[i].Pulses);
        }

        return new(x, y, weights);
    }

    /// <summary>The largest departure of a mean mass from the line, as a share of the line; infinite below its crossing.</summary>
    private static double Worst(ImmutableArray<DynamicFlowReading> sorted, ReadOnlySpan<int> starts, FittedLine line)
    {
        double worst = 0;
        for (int i = 1; i < starts.Length; i++)
        {
            double expected = line.At(sorted[starts[i - 1]].WidthSi);
            double mean = sorted.AsSpan()[starts[i - 1]..starts[i]].ToArray().Average(r => r.MassSi);
            worst = Math.Max(worst, expected > 0 ? Math.Abs((mean / expected) - 1) : double.PositiveInfinity);
        }

        return worst;
    }
}

using System.Collections.Immutable;
using FuelMath.Statistics;

namespace FuelMath.Bench;

/// <summary>
/// Kernel: the longest run of pulse widths whose mean masses all lie within a relative tolerance of the line fitted to
/// them.
/// </summary>
internal static class LinearRange
{
    private const int LeastWidths = 3;

    /// <summary>
    /// The line, the first and the past-the-last reading, and its worst departure; null when no three widths do. Among
    /// runs of equal length the one with the smallest worst departure is chosen.
    /// </summary>
    internal static (FittedLine Line, int First, int End, double Worst)? Find(
        ImmutableArray<DynamicFlowReading> sorted,
        double tolerance,
        PulseCharacterization.PulseScatter scatter
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
                FittedLine line = PulseLine.Of(sorted.AsSpan()[starts[i]..starts[i + widths]], scatter);
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

    /// <summary>
    /// The largest departure of a mean mass from the line, as a fraction of the line; infinite where the line is not
    /// positive.
    /// </summary>
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

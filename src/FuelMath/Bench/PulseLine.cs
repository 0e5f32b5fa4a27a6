using FuelMath.Statistics;

namespace FuelMath.Bench;

/// <summary>Kernel: the line of mass over pulse width through readings, each counting as its scatter says.</summary>
internal static class PulseLine
{
    private const int MostRounds = 50;

    /// <summary>
    /// The line. Weights that depend on mass are taken from the line itself, and the line from them, until it stands still;
    /// a line that gives one of its readings nothing is returned as it is, for the caller to dismiss.
    /// </summary>
    internal static FittedLine Of(ReadOnlySpan<DynamicFlowReading> readings, PulseScatter scatter)
    {
        DynamicFlowReading[] all = readings.ToArray();
        double[] x = [.. all.Select(r => r.WidthSi)];
        double[] y = [.. all.Select(r => r.MassSi)];
        FittedLine line = Fit(all, x, y, y, scatter);
        for (int round = 0; scatter.DependsOnMass && round < MostRounds; round++)
        {
            double[] masses = [.. x.Select(line.At)];
            if (masses.Min() <= 0)
            {
                break;
            }

            FittedLine next = Fit(all, x, y, masses, scatter);
            double moved = x.Max(at => Math.Abs(next.At(at) - line.At(at)));
            line = next;
            if (moved <= 1e-14 * y.Max())
            {
                break;
            }
        }

        return line;
    }

    /// <summary>How much each reading counts when pulses have these masses, kg.</summary>
    internal static double[] Weights(DynamicFlowReading[] readings, double[] masses, PulseScatter scatter)
    {
        double largest = masses.Max();
        return [.. readings.Select((r, i) => scatter.Weight(masses[i] / largest, largest, r.Pulses))];
    }

    /// <summary>The standard deviation that the step of the instrument brings to the mass of one pulse, kg.</summary>
    internal static double Rounding(DynamicFlowReading reading) => reading.MassSi * reading.Collected.RoundingShare;

    private static FittedLine Fit(
        DynamicFlowReading[] readings,
        double[] x,
        double[] y,
        double[] masses,
        PulseScatter scatter
    )
    {
        double[] weights = Weights(readings, masses, scatter);
        double least = Averages.RootMeanSquare(readings.Select((r, i) => Math.Sqrt(weights[i]) * Rounding(r)));
        return new FittedLine(x, y, weights).WithLeastDeviation(least);
    }
}

using FuelMath.Statistics;

namespace FuelMath.Bench;

/// <summary>Kernel: the line of mass over pulse width through readings weighted by their scatter.</summary>
internal static class PulseLine
{
    private const int MostRounds = 50;

    /// <summary>
    /// The line. Weights that depend on mass are computed from the line and the line from the weights, until it
    /// converges; a line with no mass at one of its readings is returned as it is, for the caller to reject.
    /// </summary>
    internal static FittedLine Of(ReadOnlySpan<DynamicFlowReading> readings, PulseCharacterization.PulseScatter scatter)
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

    /// <summary>The weight of each reading for pulses of these masses, kg.</summary>
    internal static double[] Weights(
        DynamicFlowReading[] readings,
        double[] masses,
        PulseCharacterization.PulseScatter scatter
    )
    {
        double largest = masses.Max();
        return [.. readings.Select((r, i) => scatter.Weight(masses[i] / largest, largest, r.Pulses))];
    }

    /// <summary>The standard deviation of the mass of one pulse from the resolution of the instrument, kg.</summary>
    internal static double Rounding(DynamicFlowReading reading) => reading.MassSi * reading.Collected.RoundingShare;

    private static FittedLine Fit(
        DynamicFlowReading[] readings,
        double[] x,
        double[] y,
        double[] masses,
        PulseCharacterization.PulseScatter scatter
    )
    {
        double[] weights = Weights(readings, masses, scatter);
        double least = Averages.RootMeanSquare(readings.Select((r, i) => Math.Sqrt(weights[i]) * Rounding(r)));
        return new FittedLine(x, y, weights).WithLeastDeviation(least);
    }
}

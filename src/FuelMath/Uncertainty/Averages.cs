namespace FuelMath.Statistics;

/// <summary>Kernel: accurate means and medians.</summary>
internal static class Averages
{
    /// <summary>The mean, corrected by the mean of the residuals.</summary>
    internal static double Mean(ReadOnlySpan<double> values)
    {
        double mean = 0;
        foreach (double value in values)
        {
            mean += value / values.Length;
        }

        double rest = 0;
        foreach (double value in values)
        {
            rest += value - mean;
        }

        return mean + (rest / values.Length);
    }

    /// <summary>The weighted mean, corrected by the weighted mean of the residuals.</summary>
    internal static double Mean(ReadOnlySpan<double> values, ReadOnlySpan<double> weights)
    {
        double total = 0;
        foreach (double weight in weights)
        {
            total += weight;
        }

        double mean = 0;
        for (int i = 0; i < values.Length; i++)
        {
            mean += values[i] * (weights[i] / total);
        }

        double rest = 0;
        for (int i = 0; i < values.Length; i++)
        {
            rest += (values[i] - mean) * (weights[i] / total);
        }

        return mean + rest;
    }

    /// <summary>The root of the mean of squares; one or more values.</summary>
    internal static double RootMeanSquare(IEnumerable<double> values) => Math.Sqrt(values.Average(v => v * v));

    /// <summary>The middle value, or the mean of the two in the middle. Sorts the array in place.</summary>
    internal static double Median(double[] values)
    {
        Array.Sort(values);
        int middle = values.Length / 2;
        return values.Length % 2 == 1 ? values[middle] : (values[middle - 1] / 2) + (values[middle] / 2);
    }
}

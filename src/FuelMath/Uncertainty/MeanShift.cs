using MathNet.Numerics;

namespace FuelMath.Statistics;

/// <summary>Kernel: outliers of a straight line, with a known rate of false ones.</summary>
/// <remarks>
/// <para>
/// The line of medians ranks the readings by their distance, an order that outliers do not distort. Then the k farthest
/// are tested for k = 1, 2, ...: if they are outliers, the line through the others has a much smaller residual sum of
/// squares than the line through all. Fisher's ratio of what they add to what the others leave has an exact
/// distribution for k readings chosen beforehand; for the selection of the farthest, the rate is divided among all ways
/// to choose k of n and among all k (Bonferroni). So the rate is an upper bound for any number of readings and any
/// abscissas. Outliers found are removed and the rest tested again.
/// </para>
/// <para>
/// Source: [Cook-Weisberg-1982] section 2.2, the mean shift and Bonferroni's bound; [Siegel-1982] the order.
/// </para>
/// </remarks>
internal static class MeanShift
{
    /// <summary>The outliers; the weights are one over the variances up to a factor.</summary>
    internal static int[] Suspects(double[] x, double[] y, double[] weights, double[] leastDeviations, double rate)
    {
        var suspects = new List<int>();
        int[] left = [.. Enumerable.Range(0, x.Length)];
        while (Farthest(left, x, y, weights, leastDeviations, rate) is { Length: > 0 } found)
        {
            suspects.AddRange(found);
            left = [.. left.Except(found)];
        }

        return [.. suspects.Order()];
    }

    private static int[] Farthest(
        int[] of,
        double[] x,
        double[] y,
        double[] weights,
        double[] leastDeviations,
        double rate
    )
    {
        // Fewer than half, and the rest must still suffice to estimate the scatter about a line.
        int most = Math.Min((of.Length - 1) / 2, of.Length - 3);
        if (most < 1 || of.Select(i => x[i]).Distinct().Count() < 2)
        {
            return [];
        }

        var median = new RepeatedMedianLine(of.Select(i => x[i]), of.Select(i => y[i]));
        int[] ranked =
        [
            .. of.Select((i, place) => (i, Math.Abs(median.Residuals[place]) * Math.Sqrt(weights[i])))
                .OrderByDescending(r => r.Item2)
                .Select(r => r.i),
        ];
        double all = Fit(ranked, x, y, weights).ResidualSumOfSquares;
        for (int k = 1; k <= most; k++)
        {
            int[] rest = ranked[k..];
            if (rest.Select(i => x[i]).Distinct().Count() < 2)
            {
                break;
            }

            FittedLine line = Fit(rest, x, y, weights);
            double least = rest.Average(i => weights[i] * leastDeviations[i] * leastDeviations[i]);
            double own = Math.Max(line.ResidualSumOfSquares, least * line.DegreesOfFreedom);
            double level = rate / most * Math.Exp(-SpecialFunctions.BinomialLn(of.Length, k));
            if (
                new FTest(Math.Max(0, all - line.ResidualSumOfSquares), k, own, line.DegreesOfFreedom).IsRarerThan(
                    level
                )
            )
            {
                return ranked[..k];
            }
        }

        return [];
    }

    private static FittedLine Fit(int[] of, double[] x, double[] y, double[] weights) =>
        new(of.Select(i => x[i]), of.Select(i => y[i]), of.Select(i => weights[i]));
}

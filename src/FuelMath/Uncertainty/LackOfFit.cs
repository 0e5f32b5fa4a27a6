using System.Collections.Immutable;

namespace FuelMath.Statistics;

/// <summary>Kernel: the test of a straight line by repeats at the same abscissa.</summary>
/// <remarks>
/// The residual sum of squares is that of repeats about their own mean plus that of the means about the line.
/// Source: [Draper-Smith-1998] chapter 2, with weights as in chapter 5.
/// </remarks>
internal static class LackOfFit
{
    internal static FTest Of(FittedLine line)
    {
        ImmutableArray<(double X, double Weight, double Mean, double Scatter, int Count)> levels =
        [
            .. Enumerable.Range(0, line.X.Length).GroupBy(i => line.X[i]).Select(g => Level(line, g.Key, [.. g])),
        ];
        int lack = levels.Length - (line.X.Length - line.DegreesOfFreedom);
        int error = line.X.Length - levels.Length;
        if (lack < 1 || error < 1)
        {
            throw Guard.NoSolution(
                RefusalCode.TooFewReadings,
                "a test for lack of fit",
                $"It needs {3:least} or more different abscissas ({2:leastThroughOrigin} through the origin), and repeats at one of them; {line.X.Length:readings} readings at {levels.Length:value} given."
            );
        }

        double pure = Math.Max(levels.Sum(l => l.Scatter), Square(line.LeastDeviation) * error);
        return pure > 0
            ? new(levels.Sum(l => l.Weight * Square(l.Mean - line.At(l.X))), lack, pure, error)
            : throw Guard.NoSolution(
                RefusalCode.NoScatter,
                "a test for lack of fit",
                "Repeats agree to the last digit, so that nothing measures the scatter: read a finer instrument."
            );
    }

    private static (double, double, double, double, int) Level(FittedLine line, double x, int[] at)
    {
        double[] weights = [.. at.Select(i => line.Weights[i])];
        double mean = Averages.Mean([.. at.Select(i => line.Y[i])], weights);
        return (x, weights.Sum(), mean, at.Sum(i => line.Weights[i] * Square(line.Y[i] - mean)), at.Length);
    }

    private static double Square(double value) => value * value;
}

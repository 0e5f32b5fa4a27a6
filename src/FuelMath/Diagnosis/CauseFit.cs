using FuelMath.Statistics;

namespace FuelMath;

/// <summary>
/// Kernel: fits a cause to logarithms of lambda. The sum of squares may have several local minima (more pressure gives
/// more flow but a longer dead time), so the possible range is scanned first and the fit is started from the lowest
/// points.
/// </summary>
internal static class CauseFit
{
    /// <summary>Number of starting points.</summary>
    private const int Descents = 3;

    private const int Places = 40;

    internal static CurveFit Of(CauseModel model, double[] logs, double[] uncertainties)
    {
        CurveFit? best = null;
        NoSolutionException? refused = null;
        foreach (double[] start in Starts(model, logs, uncertainties))
        {
            try
            {
                CurveFit fit = CurveFit.Of(model, logs, uncertainties, start);
                best = best is null || fit.ChiSquared < best.ChiSquared ? fit : best;
            }
            catch (NoSolutionException unsettled)
            {
                refused = unsettled;
            }
        }

        return best ?? throw refused!;
    }

    /// <summary>No change, and the lowest points of a scan over the range.</summary>
    private static IEnumerable<double[]> Starts(CauseModel model, double[] logs, double[] uncertainties)
    {
        yield return new double[model.ParameterCount];
        if (model.Kind.ScannedRange(model) is not var (low, high))
        {
            yield break;
        }

        var seen = new List<(double[] At, double Sum)>();
        for (int i = 0; i <= Places; i++)
        {
            double[] at = Place(model, logs, uncertainties, low + ((high - low) * i / Places));
            seen.Add((at, model.IsDefined(at) ? Sum(model, logs, uncertainties, at) : double.PositiveInfinity));
        }

        IEnumerable<double[]> valleys = Enumerable
            .Range(0, seen.Count)
            .Where(i =>
                double.IsFinite(seen[i].Sum)
                && (i == 0 || seen[i].Sum <= seen[i - 1].Sum)
                && (i == seen.Count - 1 || seen[i].Sum <= seen[i + 1].Sum)
            )
            .OrderBy(i => seen[i].Sum)
            .Take(Descents)
            .Select(i => seen[i].At);
        foreach (double[] at in valleys)
        {
            yield return at;
        }
    }

    /// <summary>
    /// The parameters at a point of the scan. Where a factor goes before the scanned parameter, it is the one that fits
    /// best there.
    /// </summary>
    private static double[] Place(CauseModel model, double[] logs, double[] uncertainties, double at)
    {
        if (model.ParameterCount == 1)
        {
            return [at];
        }

        double[] start = [0, at];
        if (!model.IsDefined(start))
        {
            return start;
        }

        (double sum, double weights) = (0, 0);
        for (int i = 0; i < logs.Length; i++)
        {
            double weight = 1 / (uncertainties[i] * uncertainties[i]);
            sum += weight * (model.At(start, i) - logs[i]);
            weights += weight;
        }

        return [sum / weights, at];
    }

    private static double Sum(CauseModel model, double[] logs, double[] uncertainties, double[] at)
    {
        double sum = 0;
        for (int i = 0; i < logs.Length; i++)
        {
            double left = (logs[i] - model.At(at, i)) / uncertainties[i];
            sum += left * left;
        }

        return sum;
    }
}

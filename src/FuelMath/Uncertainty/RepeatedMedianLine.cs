using System.Collections.Immutable;

namespace FuelMath.Statistics;

/// <summary>A robust straight line: it tolerates outliers of any size in nearly half of the readings.</summary>
/// <remarks>
/// <para>
/// The slope is a median of medians: for each reading the median slope to all others, then the median of those. The
/// intercept is the median of the residuals of the slope. There are no standard errors: use it to find an outlier, find
/// its cause, and fit the rest by <see cref="FittedLine"/>.
/// </para>
/// <para>
/// Source: [Siegel-1982] repeated medians; [Iglewicz-Hoaglin-1993] the scatter from the median of residuals. In the
/// units of the data.
/// </para>
/// </remarks>
/// <seealso href="../guide/uncertainty.html">Uncertainty</seealso>
public sealed class RepeatedMedianLine
{
    /// <summary>Factor from the median absolute deviation of normal scatter to its standard deviation.</summary>
    private const double DeviationOfMedian = 1.4826;

    /// <summary>Fits a line to readings.</summary>
    /// <param name="x">Three or more abscissas, at least two of them different. Copied.</param>
    /// <param name="y">Readings, as many. Copied.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The readings do not have the stated shape.</exception>
    public RepeatedMedianLine(IEnumerable<double> x, IEnumerable<double> y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        double[] xs = [.. x];
        double[] ys = [.. y];
        Guard.AtLeast(3, xs.Length, "A line of medians", nameof(x));
        LineChecks.SameCount(xs.Length, ys.Length, nameof(y));
        Guard.AllFinite(xs, "Abscissas", nameof(x));
        Guard.AllFinite(ys, "Readings", nameof(y));
        LineChecks.NotAllTheSame(xs, false, nameof(x));

        Slope = Averages.Median([.. Enumerable.Range(0, xs.Length).Select(i => MedianSlope(xs, ys, i))]);
        Intercept = Averages.Median([.. xs.Select((at, i) => ys[i] - (Slope * at))]);
        Residuals = [.. xs.Select((at, i) => ys[i] - (Intercept + (Slope * at)))];
        StandardDeviation = DeviationOfMedian * Averages.Median([.. Residuals.Select(Math.Abs)]);
        if (!(double.IsFinite(Slope) && double.IsFinite(Intercept) && Residuals.All(double.IsFinite)))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotFinite,
                "Abscissas must be so far apart that the slopes are finite.",
                nameof(x)
            );
        }
    }

    /// <summary>The slope.</summary>
    public double Slope { get; }

    /// <summary>The line at zero.</summary>
    public double Intercept { get; }

    /// <summary>The residual of each reading.</summary>
    public ImmutableArray<double> Residuals { get; }

    /// <summary>
    /// The scatter about the line, from the median of absolute residuals; zero when half of the readings lie on it.
    /// </summary>
    public double StandardDeviation { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Intercept} + {Slope} x");

    private static double MedianSlope(double[] x, double[] y, int from) =>
        Averages.Median([
            .. Enumerable
                .Range(0, x.Length)
                .Where(j => x[j] != x[from])
                .Select(j => (y[j] - y[from]) / (x[j] - x[from])),
        ]);
}

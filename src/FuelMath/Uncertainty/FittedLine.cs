using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>The straight line fitted to readings by weighted least squares, with its uncertainty.</summary>
/// <remarks>
/// <para>
/// In the units of the data. The readings of y scatter about the line, those of x are exact. Axes and weights are
/// scaled to order one and sums are taken about the mean, so that no accuracy is lost where the readings agree in their
/// first digits.
/// </para>
/// <para>
/// Source: [JCGM-100] section H.3, the calibration line; [Draper-Smith-1998] chapters 1 and 5 (weights); [Fieller-1954]
/// for where the line crosses zero.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/UncertaintyExamples.cs" region="Line" />
/// </example>
/// <seealso href="../guide/uncertainty.html">Uncertainty</seealso>
public sealed class FittedLine
{
    private readonly LineFit fit;
    private readonly double least;

    /// <summary>Fits a line with weights.</summary>
    /// <param name="x">Three or more abscissas, not all the same. Copied.</param>
    /// <param name="y">The reading at each abscissa. Copied.</param>
    /// <param name="weights">
    /// The weight of each reading, greater than zero: one over its variance, up to a common factor. Copied.
    /// </param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The readings do not have the stated shape.</exception>
    public FittedLine(IEnumerable<double> x, IEnumerable<double> y, IEnumerable<double> weights)
        : this(x, y, weights, false) { }

    private FittedLine(IEnumerable<double> x, IEnumerable<double> y, IEnumerable<double> weights, bool origin)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        ArgumentNullException.ThrowIfNull(weights);
        (X, Y, Weights, IsThroughOrigin) = ([.. x], [.. y], [.. weights], origin);
        LineChecks.Check(X.AsSpan(), Y.AsSpan(), Weights.AsSpan(), origin);
        fit = LineFit.Of(X.AsSpan(), Y.AsSpan(), Weights.AsSpan(), origin);
        LineChecks.Sound(fit, nameof(x));
    }

    private FittedLine(FittedLine line, double least)
    {
        (X, Y, Weights, IsThroughOrigin) = (line.X, line.Y, line.Weights, line.IsThroughOrigin);
        (fit, this.least) = (line.fit, least);
    }

    /// <summary>The abscissas.</summary>
    public ImmutableArray<double> X { get; }

    /// <summary>The readings.</summary>
    public ImmutableArray<double> Y { get; }

    /// <summary>The weights.</summary>
    public ImmutableArray<double> Weights { get; }

    /// <summary>Whether the line was made to pass through the origin.</summary>
    public bool IsThroughOrigin { get; }

    /// <summary>Readings minus fitted parameters: n - 2, or n - 1 through the origin.</summary>
    public int DegreesOfFreedom => X.Length - (IsThroughOrigin ? 1 : 2);

    /// <summary>The slope.</summary>
    public double Slope => fit.Slope;

    /// <summary>The standard error of the slope.</summary>
    public double SlopeStandardError => ResidualStandardDeviation / Math.Sqrt(fit.Sxx);

    /// <summary>The line at zero; zero through the origin.</summary>
    public double Intercept => At(0);

    /// <summary>The standard error of the intercept; zero through the origin.</summary>
    public double InterceptStandardError => StandardErrorAt(0);

    /// <summary>The correlation of slope and intercept, from -1 to 1; zero through the origin.</summary>
    public double Correlation =>
        IsThroughOrigin ? 0 : -fit.CenterX / Math.Sqrt((fit.Sxx / fit.TotalWeight) + (fit.CenterX * fit.CenterX));

    /// <summary>The sum of the weighted squares of the residuals.</summary>
    public double ResidualSumOfSquares => fit.Deviation * fit.Deviation * DegreesOfFreedom;

    /// <summary>
    /// The standard deviation of a reading of weight one about the line: that of the residuals or the known least
    /// deviation, whichever is greater.
    /// </summary>
    public double ResidualStandardDeviation => Math.Max(fit.Deviation, least);

    /// <summary>The known least standard deviation of a reading of weight one; zero unless given.</summary>
    public double LeastDeviation => least;

    /// <summary>
    /// The fraction of the variation of y that the line explains; about the mean, or about zero through the origin. One
    /// where y does not vary.
    /// </summary>
    public double RSquared => fit.RSquared;

    /// <summary>A line with equal weights.</summary>
    /// <param name="x">Three or more abscissas, not all the same. Copied.</param>
    /// <param name="y">The reading at each abscissa. Copied.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The readings do not have the stated shape.</exception>
    public static FittedLine FromPoints(IEnumerable<double> x, IEnumerable<double> y) => new(x, y, Ones(y), false);

    /// <summary>A line through the origin with equal weights.</summary>
    /// <param name="x">Two or more abscissas, not all zero. Copied.</param>
    /// <param name="y">The reading at each abscissa. Copied.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The readings do not have the stated shape.</exception>
    public static FittedLine FromOrigin(IEnumerable<double> x, IEnumerable<double> y) => new(x, y, Ones(y), true);

    /// <summary>
    /// The same line with a known lower limit of the scatter, for example from the resolution of the instrument, which
    /// equal readings do not show. Standard errors, intervals and tests use it where the readings scatter less.
    /// </summary>
    /// <param name="deviation">The least standard deviation of a reading of weight one; from zero to 1e100.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="deviation"/> is outside its range.</exception>
    public FittedLine WithLeastDeviation(double deviation) =>
        new(this, Guard.InRange(Guard.Finite(deviation), 0, LineChecks.Most, nameof(deviation)));

    /// <summary>The line at an abscissa.</summary>
    /// <param name="x">The abscissa; finite.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="x"/> is not finite, or too far from the readings.</exception>
    public double At(double x) => LineChecks.Near(fit.CenterY + (fit.Slope * (Guard.Finite(x) - fit.CenterX)), x);

    /// <summary>The standard error of the line at an abscissa; not that of a single reading there.</summary>
    /// <param name="x">The abscissa; finite.</param>
    /// <returns>The standard error.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="x"/> is not finite, or too far from the readings.</exception>
    public double StandardErrorAt(double x)
    {
        double u = Guard.Finite(x) - fit.CenterX;
        return LineChecks.Near(ResidualStandardDeviation * Math.Sqrt(fit.CenterVariance + (u * u / fit.Sxx)), x);
    }

    /// <summary>The range that holds the true line at an abscissa: a point of the confidence band.</summary>
    /// <param name="x">The abscissa; finite.</param>
    /// <param name="confidence">Confidence level; 50 % to 99.99 %.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="x"/> is not finite, or <paramref name="confidence"/> is outside its range.
    /// </exception>
    public Interval BandAt(double x, Ratio confidence) =>
        Interval.Around(At(x), Student.TwoSided(DegreesOfFreedom, confidence) * StandardErrorAt(x));

    /// <summary>The range that holds the true slope.</summary>
    /// <param name="confidence">Confidence level; 50 % to 99.99 %.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    public Interval SlopeInterval(Ratio confidence) =>
        Interval.Around(Slope, Student.TwoSided(DegreesOfFreedom, confidence) * SlopeStandardError);

    /// <summary>Where the line crosses zero: -intercept / slope.</summary>
    /// <returns>The abscissa.</returns>
    /// <exception cref="NoSolutionException">The line is level, or was fitted through the origin.</exception>
    public double ZeroCrossing() =>
        !IsThroughOrigin && LineChecks.IsNear(fit.CenterX - (fit.CenterY / fit.Slope))
            ? fit.CenterX - (fit.CenterY / fit.Slope)
            : throw Guard.NoSolution(
                RefusalCode.LineLevel,
                "where a line crosses zero",
                "It is level, or it was made to pass through the origin."
            );

    /// <summary>
    /// The standard error of the crossing by the law of propagation: valid only where the slope is well known.
    /// </summary>
    /// <returns>The standard error.</returns>
    /// <remarks>
    /// With few readings an interval computed from it contains the true value too seldom: use
    /// <see cref="ZeroInterval"/>.
    /// </remarks>
    /// <exception cref="NoSolutionException">There is no crossing.</exception>
    public double ZeroStandardError()
    {
        double error = Math.Abs(StandardErrorAt(ZeroCrossing()) / fit.Slope);
        return LineChecks.IsNear(error)
            ? error
            : throw Guard.NoSolution(
                RefusalCode.LineLevel,
                "where a line crosses zero",
                "It is so nearly level that the error is not finite."
            );
    }

    /// <summary>The range that holds the true crossing, by Fieller's theorem: exact for normal scatter.</summary>
    /// <param name="confidence">Confidence level; 50 % to 99.99 %.</param>
    /// <returns>The range; not symmetric about the crossing.</returns>
    /// <exception cref="NoSolutionException">
    /// The slope does not differ from zero at this confidence, so that no finite range contains the crossing; or there
    /// is no crossing.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    public Interval ZeroInterval(Ratio confidence)
    {
        double reach = Student.TwoSided(DegreesOfFreedom, confidence) * ResidualStandardDeviation / fit.Slope;
        double u = ZeroCrossing() - fit.CenterX;
        double rest = 1 - (reach * reach / fit.Sxx);
        if (!(rest > 0))
        {
            throw Guard.NoSolution(
                RefusalCode.SlopeNotSignificant,
                "a finite interval for where a line crosses zero",
                "Its slope does not differ from zero at this confidence: take more readings, farther apart."
            );
        }

        double half = Math.Abs(reach) * Math.Sqrt((rest * fit.CenterVariance) + (u * u / fit.Sxx));
        return new(fit.CenterX + ((u - half) / rest), fit.CenterX + ((u + half) / rest));
    }

    /// <summary>
    /// The test of linearity: whether the readings depart from the line by more than the scatter of repeats at the same
    /// abscissa.
    /// </summary>
    /// <returns>The test; a small <see cref="FTest.PValue"/> rejects a straight line.</returns>
    /// <remarks>Source: [Draper-Smith-1998] chapter 2, lack of fit and pure error.</remarks>
    /// <exception cref="NoSolutionException">
    /// There are no repeats, too few abscissas, or repeats without scatter.
    /// </exception>
    public FTest LackOfFitTest() => LackOfFit.Of(this);

    /// <summary>The test of whether the true slope may have a given value.</summary>
    /// <param name="slope">The slope under test; finite.</param>
    /// <returns>
    /// The probability that scatter alone puts the fitted slope this far from it or farther, to either side.
    /// </returns>
    /// <remarks>Source: [Draper-Smith-1998] chapter 1, Student's test of a slope.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="slope"/> is not finite.</exception>
    /// <exception cref="NoSolutionException">All readings lie on the line, so that the scatter is unknown.</exception>
    public Ratio SlopePValue(double slope) =>
        SlopeStandardError > 0
            ? Student.TwoSidedPValue((Slope - Guard.Finite(slope)) / SlopeStandardError, DegreesOfFreedom)
            : throw Guard.NoSolution(
                RefusalCode.NoScatter,
                "a test of a slope",
                "All readings lie on the line: nothing measures the scatter."
            );

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Intercept} + {Slope} x");

    /// <summary>The derivative of the line at an abscissa by one reading.</summary>
    internal double Pull(int reading, double x) =>
        Weights[reading] * (fit.CenterVariance + ((x - fit.CenterX) * (X[reading] - fit.CenterX) / fit.Sxx));

    private static IEnumerable<double> Ones(IEnumerable<double> y)
    {
        ArgumentNullException.ThrowIfNull(y);
        return y.Select(_ => 1.0);
    }
}

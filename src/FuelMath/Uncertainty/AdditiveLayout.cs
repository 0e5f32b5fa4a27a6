using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace FuelMath.Statistics;

/// <summary>
/// A two-way layout: readings in rows and columns, each the sum of a mean, an effect of its row and one of its column,
/// estimated by least squares. Not every pair must be read, and a pair may be read more than once.
/// </summary>
/// <remarks>
/// <para>
/// Effects of rows sum to zero, as do those of columns. They can be separated only where shared readings connect all
/// rows and columns. Source: [Scheffe-1959] section 4.4, two-way layout with unequal numbers, no interaction.
/// </para>
/// <para>In the unit of the data.</para>
/// </remarks>
/// <seealso href="../guide/uncertainty.html">Uncertainty</seealso>
public sealed class AdditiveLayout
{
    private readonly double[] solution;
    private readonly Matrix<double> covariance;
    private readonly double error;
    private readonly double rowsOnly;
    private readonly double columnsOnly;
    private readonly double least;

    /// <summary>Takes readings.</summary>
    /// <param name="rows">The row of each reading; two or more different ones. Copied.</param>
    /// <param name="columns">The column of each, as many; two or more different ones. Copied.</param>
    /// <param name="values">The readings, as many; finite. Copied.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// The readings do not have the stated shape, or do not connect all rows and columns.
    /// </exception>
    public AdditiveLayout(IEnumerable<string> rows, IEnumerable<string> columns, IEnumerable<double> values)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(columns);
        ArgumentNullException.ThrowIfNull(values);
        ImmutableArray<string> rowOf = [.. Lists.NoNulls(rows)];
        ImmutableArray<string> columnOf = [.. Lists.NoNulls(columns)];
        double[] all = [.. values];
        LayoutChecks.Check(rowOf, columnOf, all);
        (Rows, Columns) = ([.. rowOf.Distinct()], [.. columnOf.Distinct()]);

        double scale = Math.Max(all.Max(Math.Abs), double.Epsilon);
        double shift = Averages.Mean(all);
        Vector<double> y = Vector<double>.Build.Dense([.. all.Select(v => (v - shift) / scale)]);
        Matrix<double> design = Matrix<double>.Build.DenseOfRowArrays([
            .. rowOf.Select((r, i) => Contrast(Rows.IndexOf(r), Columns.IndexOf(columnOf[i]))),
        ]);
        Vector<double> fitted = design.QR().Solve(y);
        covariance = design
            .TransposeThisAndMultiply(design)
            .Cholesky()
            .Solve(Matrix<double>.Build.DenseIdentity(design.ColumnCount));
        solution = [.. fitted.Select(v => v * scale)];
        solution[0] += shift;
        DegreesOfFreedom = all.Length - design.ColumnCount;
        Vector<double> rest = y - (design * fitted);
        error = DegreesOfFreedom == 0 ? 0 : (rest * rest) * scale * scale;
        (rowsOnly, columnsOnly) = (About(rowOf, all), About(columnOf, all));
    }

    private AdditiveLayout(AdditiveLayout layout, double least)
    {
        (Rows, Columns, DegreesOfFreedom) = (layout.Rows, layout.Columns, layout.DegreesOfFreedom);
        (solution, covariance, error) = (layout.solution, layout.covariance, layout.error);
        (rowsOnly, columnsOnly, this.least) = (layout.rowsOnly, layout.columnsOnly, least);
    }

    /// <summary>The rows, in the order of their first reading.</summary>
    public ImmutableArray<string> Rows { get; }

    /// <summary>The columns, in the order of their first reading.</summary>
    public ImmutableArray<string> Columns { get; }

    /// <summary>Readings minus fitted parameters: n - rows - columns + 1; zero when there are just enough.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>The mean, with equal weight of all rows and of all columns.</summary>
    public double Mean => solution[0];

    /// <summary>The residual sum of squares.</summary>
    public double ErrorSumOfSquares => error;

    /// <summary>
    /// The same layout with a known lower limit of the scatter, for example from the resolution of the instrument.
    /// Standard errors and tests use it where the readings scatter less.
    /// </summary>
    /// <param name="deviation">The least standard deviation of a reading; zero or more.</param>
    /// <returns>The layout.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="deviation"/> is negative or not finite.</exception>
    public AdditiveLayout WithLeastDeviation(double deviation) =>
        new(this, Guard.InRange(Guard.Finite(deviation), 0, double.MaxValue, nameof(deviation)));

    /// <summary>
    /// The standard deviation of a reading about the sum of its effects, or the known least deviation, whichever is
    /// greater.
    /// </summary>
    /// <exception cref="NoSolutionException">There are no more readings than parameters.</exception>
    public double ErrorStandardDeviation() =>
        DegreesOfFreedom > 0
            ? Math.Max(Math.Sqrt(error / DegreesOfFreedom), least)
            : throw Guard.NoSolution(
                RefusalCode.TooFewReadings,
                "the scatter about rows and columns",
                "There are just as many readings as effects: take more, of pairs not yet read or once again."
            );

    /// <summary>The effect of a row.</summary>
    /// <param name="row">The row.</param>
    /// <returns>How far it lies above the mean of the rows.</returns>
    /// <exception cref="ArgumentException">There is no such row.</exception>
    public double RowEffect(string row) => Of(Weights(Find(Rows, row, nameof(row)), -1, 0));

    /// <summary>The effect of a column.</summary>
    /// <param name="column">The column.</param>
    /// <returns>How far it lies above the mean of the columns.</returns>
    /// <exception cref="ArgumentException">There is no such column.</exception>
    public double ColumnEffect(string column) => Of(Weights(-1, Find(Columns, column, nameof(column)), 0));

    /// <summary>The standard error of the effect of a row.</summary>
    /// <param name="row">The row.</param>
    /// <returns>The standard error.</returns>
    /// <exception cref="ArgumentException">There is no such row.</exception>
    /// <exception cref="NoSolutionException">There are no more readings than parameters.</exception>
    public double RowEffectStandardError(string row) => ErrorOf(Weights(Find(Rows, row, nameof(row)), -1, 0));

    /// <summary>The standard error of the effect of a column.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The standard error.</returns>
    /// <exception cref="ArgumentException">There is no such column.</exception>
    /// <exception cref="NoSolutionException">There are no more readings than parameters.</exception>
    public double ColumnEffectStandardError(string column) =>
        ErrorOf(Weights(-1, Find(Columns, column, nameof(column)), 0));

    /// <summary>The fitted reading of a pair, whether it was read or not.</summary>
    /// <param name="row">The row.</param>
    /// <param name="column">The column.</param>
    /// <returns>The sum of the mean and both effects.</returns>
    /// <exception cref="ArgumentException">There is no such row or column.</exception>
    public double At(string row, string column) =>
        Of(Weights(Find(Rows, row, nameof(row)), Find(Columns, column, nameof(column)), 1));

    /// <summary>The test of whether rows differ by more than the error, after allowing for columns.</summary>
    /// <returns>The test.</returns>
    /// <exception cref="NoSolutionException">There are no more readings than parameters.</exception>
    public FTest RowTest() => Test(columnsOnly, Rows.Length - 1);

    /// <summary>The test of whether columns differ by more than the error, after allowing for rows.</summary>
    /// <returns>The test.</returns>
    /// <exception cref="NoSolutionException">There are no more readings than parameters.</exception>
    public FTest ColumnTest() => Test(rowsOnly, Columns.Length - 1);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Rows.Length} by {Columns.Length}, mean {Mean}");

    private FTest Test(double without, int degrees)
    {
        double deviation = ErrorStandardDeviation();
        return new(Math.Max(0, without - error), degrees, deviation * deviation * DegreesOfFreedom, DegreesOfFreedom);
    }

    private double[] Contrast(int row, int column) => Weights(row, column, 1);

    /// <summary>
    /// The coefficients of the parameters: mean, rows but the last, columns but the last; the last effect is minus the
    /// sum of the others.
    /// </summary>
    private double[] Weights(int row, int column, double mean)
    {
        var weights = new double[Rows.Length + Columns.Length - 1];
        weights[0] = mean;
        Effect(weights.AsSpan(1, Rows.Length - 1), row);
        Effect(weights.AsSpan(Rows.Length), column);
        return weights;
    }

    private static void Effect(Span<double> weights, int index)
    {
        if (index == weights.Length)
        {
            weights.Fill(-1);
        }
        else if (index >= 0)
        {
            weights[index] = 1;
        }
    }

    private double Of(double[] weights) => weights.Zip(solution, (w, s) => w * s).Sum();

    private double ErrorOf(double[] weights)
    {
        Vector<double> w = Vector<double>.Build.Dense(weights);
        return ErrorStandardDeviation() * Math.Sqrt(w * (covariance * w));
    }

    private static int Find(ImmutableArray<string> names, string name, string paramName) =>
        names.IndexOf(name) is >= 0 and var index ? index : throw Guard.NoName(name, names, paramName);

    /// <summary>The sum of squares about the mean of each row, or of each column.</summary>
    private static double About(ImmutableArray<string> of, double[] values) =>
        of.Zip(values)
            .GroupBy(p => p.First, p => p.Second)
            .Sum(g => Averages.Mean([.. g]) is var mean ? g.Sum(v => (v - mean) * (v - mean)) : 0);
}

using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A table over two axes with bilinear interpolation.</summary>
/// <remarks>
/// <para>
/// Between four neighbors the value is linear along either axis, so it stays in their range, and a product of the two
/// axes is reproduced exactly. Source: [Definition] product of two linear interpolations.
/// </para>
/// <para>The numbers have no units of their own: the owner of the grid states those of its axes.</para>
/// </remarks>
/// <seealso href="../guide/tables.html">Tables</seealso>
public sealed partial class Grid
{
    private readonly double[] first;
    private readonly double[] second;
    private readonly double[,] values;

    /// <summary>Builds the table.</summary>
    /// <param name="name">The name of the table, which refusals print; not blank.</param>
    /// <param name="first">The first axis; two places or more.</param>
    /// <param name="second">The second axis; likewise.</param>
    /// <param name="values">The values: a row for each place on the first axis, a column for each on the second.</param>
    /// <param name="outside">The behavior beyond the edges.</param>
    /// <exception cref="ArgumentException">A name is blank, or the numbers do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="outside"/> is not a defined value.</exception>
    public Grid(string name, Axis first, Axis second, double[,] values, OutsideRange outside)
        : this(name, first, second, values, outside, 2) { }

    private Grid(string name, Axis first, Axis second, double[,] values, OutsideRange outside, int leastSecond)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ArgumentNullException.ThrowIfNull(values);
        Name = Guard.Name(name);
        Outside = TableChecks.Known(outside);
        (First, Second) = (first, second);
        this.first = [.. first.Knots];
        this.second = [.. second.Knots];
        this.values = (double[,])values.Clone();
        Guard.AtLeast(2, this.first.Length, $"{name}: {first.Name}", nameof(first));
        Guard.AtLeast(leastSecond, this.second.Length, $"{name}: {second.Name}", nameof(second));
        CheckValues(name, this.first.Length, this.second.Length, this.values);
    }

    /// <summary>The name of the table.</summary>
    public string Name { get; }

    /// <summary>The first axis.</summary>
    public Axis First { get; }

    /// <summary>The second axis; one place on it when the table does not depend on it.</summary>
    public Axis Second { get; }

    /// <summary>The behavior beyond the edges.</summary>
    public OutsideRange Outside { get; }

    /// <summary>A table whose data were taken at one place on the second axis and are used for all of it.</summary>
    /// <param name="name">The name of the table; not blank.</param>
    /// <param name="first">The first axis; two places or more.</param>
    /// <param name="second">The second axis: the one place at which the data were taken.</param>
    /// <param name="values">The values; finite, as many as <paramref name="first"/>.</param>
    /// <param name="outside">The behavior beyond the ends of the first axis.</param>
    /// <returns>The table; the second axis has no influence and no range.</returns>
    /// <exception cref="ArgumentException">A name is blank, or the numbers do not have the stated shape.</exception>
    public static Grid FromFirstAxis(
        string name,
        Axis first,
        Axis second,
        IEnumerable<double> values,
        OutsideRange outside
    )
    {
        Guard.Name(name);
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ArgumentNullException.ThrowIfNull(values);
        if (second.Knots.Length != 1)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"{name:part}: must have {1:exactly} place on the second axis; it has {second.Knots.Length:value}.",
                nameof(second)
            );
        }

        double[] column = [.. values];
        TableChecks.Same(first.Knots.Length, column.Length, name, nameof(values));
        var table = new double[column.Length, 1];
        for (int i = 0; i < column.Length; i++)
        {
            table[i, 0] = column[i];
        }

        return new Grid(name, first, second, table, outside, 1);
    }

    /// <summary>The value at a point of the table.</summary>
    /// <param name="row">The index on the first axis.</param>
    /// <param name="column">The index on the second axis.</param>
    /// <returns>The value that was given.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An index is outside the table.</exception>
    public double ValueAt(int row, int column) =>
        values[Guard.InRange(row, 0, first.Length - 1), Guard.InRange(column, 0, second.Length - 1)];

    /// <summary>Evaluates the table.</summary>
    /// <param name="first">Where on the first axis.</param>
    /// <param name="second">Where on the second axis.</param>
    /// <returns>The value there.</returns>
    /// <exception cref="OutsideTableException">A place lies beyond the edges and the table refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A place is not finite, or so far out that the value is not.</exception>
    public double At(double first, double second)
    {
        (int row, double alongFirst) = Find(this.first, first, First.Name, nameof(first));
        (int column, double alongSecond) = Find(this.second, second, Second.Name, nameof(second));
        double here = Along(row, column, alongSecond);
        double value = Between(here, Along(row + 1, column, alongSecond), alongFirst);
        return TableChecks.Number(value, first, Name, nameof(first));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {First.Knots.Length} by {Second.Knots.Length} points");

    /// <summary>Whether a place lies within the edges.</summary>
    internal bool Reaches(double first, double second) => IsWithin(this.first, first) && IsWithin(this.second, second);

    /// <summary>Evaluates the table, held at the edges where it would refuse.</summary>
    internal double HeldAt(double first, double second) =>
        Outside == OutsideRange.Refuse
            ? At(Math.Clamp(first, this.first[0], this.first[^1]), Math.Clamp(second, this.second[0], this.second[^1]))
            : At(first, second);

    private static bool IsWithin(double[] axis, double value) =>
        axis.Length == 1 || (value >= axis[0] && value <= axis[^1]);

    private static void CheckValues(string name, int rows, int columns, double[,] values)
    {
        if (values.GetLength(0) != rows || values.GetLength(1) != columns)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"{name:part}: must have {rows:rows} x {columns:columns} values; it has {values.GetLength(0):givenRows} x {values.GetLength(1):givenColumns}.",
                nameof(values)
            );
        }

        for (int i = 0; i < rows; i++)
        {
            for (int j = 0; j < columns; j++)
            {
                if (!(Math.Abs(values[i, j]) <= Guard.Largest))
                {
                    throw new RefusedArgumentException(
                        RefusalCode.NotFinite,
                        $"{name:part}: the values must be {Guard.Allowed(values[i, j]):rule}; at row {i:row}, column {j:column} it was {values[i, j]:value}.",
                        nameof(values)
                    );
                }
            }
        }
    }

    private static double Between(double from, double to, double fraction) => ((1 - fraction) * from) + (fraction * to);

    private double Along(int row, int column, double fraction) =>
        second.Length == 1 ? values[row, 0] : Between(values[row, column], values[row, column + 1], fraction);

    /// <summary>
    /// The cell on one axis, and the position in it as a fraction; beyond the edges the fraction is outside 0 to 1.
    /// </summary>
    private (int Cell, double Fraction) Find(double[] axis, double value, string axisName, string paramName)
    {
        if (axis.Length == 1)
        {
            Guard.Finite(value, paramName);
            return (0, 0);
        }

        double at = TableChecks.Place(axis, value, Outside, Name, axisName, paramName);
        int found = Array.BinarySearch(axis, at);
        int cell = Math.Clamp(found >= 0 ? found : ~found - 1, 0, axis.Length - 2);
        return (cell, (at - axis[cell]) / (axis[cell + 1] - axis[cell]));
    }
}

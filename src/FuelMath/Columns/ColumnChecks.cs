using System.Globalization;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Checks that run before a column is computed, so that a refusal leaves the results as they were.</summary>
internal static class ColumnChecks
{
    /// <summary>Equal lengths, and no overlap but that of the whole column.</summary>
    internal static void Shape(ReadOnlySpan<double> column, string name, Span<double> results, string resultsName)
    {
        if (column.Length != results.Length)
        {
            throw new ArgumentException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Must have as many rows as {resultsName}, {results.Length}; it has {column.Length}."
                ),
                name
            );
        }

        if (results.Overlaps(column, out int offset) && offset != 0)
        {
            throw new ArgumentException(
                $"Must be the same memory as {resultsName} or lie apart from it; it overlaps in part.",
                name
            );
        }
    }

    /// <summary>Every number from <paramref name="minimum"/> to <paramref name="maximum"/>; NaN is in no range.</summary>
    internal static void InRange(
        ReadOnlySpan<double> column,
        double minimum,
        double maximum,
        string unit,
        [CallerArgumentExpression(nameof(column))] string name = ""
    )
    {
        int at = 0;
        var low = new Vector<double>(minimum);
        var high = new Vector<double>(maximum);
        for (; at <= column.Length - Vector<double>.Count; at += Vector<double>.Count)
        {
            var block = new Vector<double>(column[at..]);
            if (!Vector.GreaterThanOrEqualAll(block, low) || !Vector.LessThanOrEqualAll(block, high))
            {
                break;
            }
        }

        for (; at < column.Length; at++)
        {
            if (!(column[at] >= minimum && column[at] <= maximum))
            {
                string space = unit.Length == 0 ? "" : " ";
                throw new ArgumentOutOfRangeException(
                    name,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Must be from {minimum:g7}{space}{unit} to {maximum:g7}{space}{unit}; in row {at} it was {column[at]:g7}{space}{unit}."
                    )
                );
            }
        }
    }

    /// <summary>One number that is the same in all rows.</summary>
    internal static double InRange(
        double value,
        double minimum,
        double maximum,
        string unit,
        [CallerArgumentExpression(nameof(value))] string name = ""
    )
    {
        if (!(value >= minimum && value <= maximum))
        {
            string space = unit.Length == 0 ? "" : " ";
            throw new ArgumentOutOfRangeException(
                name,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Must be from {minimum:g7}{space}{unit} to {maximum:g7}{space}{unit}; it was {value:g7}{space}{unit}."
                )
            );
        }

        return value;
    }
}

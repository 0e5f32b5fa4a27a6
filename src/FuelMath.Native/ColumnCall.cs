using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Native;

/// <summary>Runs a formula down columns that lie in the caller's memory.</summary>
internal static unsafe class ColumnCall
{
    /// <summary>Rows of one piece: a span counts with 32 bits.</summary>
    private const int Piece = 1 << 30;

    /// <summary>The most that addresses can hold.</summary>
    private const long MostRows = 1L << 44;

    [ThreadStatic]
    private static NativeColumn[]? memories;

    [ThreadStatic]
    private static FormulaColumns.Input[]? inputs;

    internal static CallStatus Run(
        FormulaInfo formula,
        double** columns,
        double* numbers,
        long rows,
        double* results,
        long* badRows,
        long* firstBadRow
    )
    {
        int count = formula.Arguments.Length;
        if (rows is < 0 or > MostRows || (results is null && rows > 0))
        {
            return Refuse("results", $"must have room for 0 to {MostRows} rows; rows was {rows}");
        }

        for (int i = 0; i < count; i++)
        {
            double* column = columns is null ? null : columns[i];
            if (column is null && numbers is null)
            {
                return Refuse("numbers", $"must not be null: {formula.Arguments[i]} has no column");
            }

            if (column is not null && column != results && column < results + rows && results < column + rows)
            {
                return Refuse("results", $"must be the column of {formula.Arguments[i]} or lie apart from it");
            }
        }

        (long bad, long first) = (0, -1);
        for (long from = 0; from < rows; from += Piece)
        {
            int length = (int)Math.Min(Piece, rows - from);
            ReadOnlySpan<FormulaColumns.Input> taken = Take(count, columns, numbers, from, length);
            ColumnReport report = FormulaColumns.Run(formula, taken, new Span<double>(results + from, length));
            bad += report.BadRows;
            first = first < 0 && report.FirstBadRow is { } row ? from + row : first;
        }

        if (badRows is not null)
        {
            *badRows = bad;
        }

        if (firstBadRow is not null)
        {
            *firstBadRow = first;
        }

        return CallStatus.Fine;
    }

    private static ReadOnlySpan<FormulaColumns.Input> Take(
        int count,
        double** columns,
        double* numbers,
        long from,
        int length
    )
    {
        if (inputs is null || inputs.Length < count)
        {
            inputs = new FormulaColumns.Input[count];
            memories = new NativeColumn[count];
            for (int i = 0; i < count; i++)
            {
                memories[i] = new NativeColumn();
            }
        }

        for (int i = 0; i < count; i++)
        {
            double* column = columns is null ? null : columns[i];
            inputs[i] = column is null
                ? FormulaColumns.Input.FromNumber(numbers[i])
                : FormulaColumns.Input.FromColumn(memories![i].Over(column + from, length));
        }

        return inputs.AsSpan(0, count);
    }

    private static CallStatus Refuse(string what, FormattableString why) =>
        LastMessage.Keep(CallStatus.Call, $"{what} {why.ToString(CultureInfo.InvariantCulture)}.");
}

using System.Collections.Immutable;

namespace FuelMath.Workbooks;

/// <summary>Ranges of cells: combining several, and reading the numbers of one.</summary>
internal static class CellRange
{
    internal static object?[,] Boxed(double[,] numbers)
    {
        var cells = new object?[numbers.GetLength(0), numbers.GetLength(1)];
        for (int i = 0; i < cells.GetLength(0); i++)
        {
            for (int j = 0; j < cells.GetLength(1); j++)
            {
                cells[i, j] = numbers[i, j];
            }
        }

        return cells;
    }

    /// <summary>One result for each cell of the ranges, or a single one without ranges.</summary>
    internal static object Together(
        object?[] cells,
        ImmutableArray<SheetFunctionArgument> arguments,
        SheetFunction.CellCalculation calculate
    )
    {
        object?[,]?[] ranges = [.. cells.Select((c, i) => arguments[i].IsWholeRange ? null : c as object?[,])];
        if (ranges.All(r => r is null))
        {
            return One(cells, arguments, calculate);
        }

        int rows = ranges.Max(r => r?.GetLength(0) ?? 1);
        int columns = ranges.Max(r => r?.GetLength(1) ?? 1);
        bool Fits(object?[,]? range) =>
            range is null
            || (
                (range.GetLength(0) == rows || range.GetLength(0) == 1)
                && (range.GetLength(1) == columns || range.GetLength(1) == 1)
            );
        if (!ranges.All(Fits))
        {
            return CellError.Value("Ranges must have the same rows and columns, or a single row or column.");
        }

        var results = new object[rows, columns];
        object?[] one = new object?[cells.Length];
        for (int i = 0; i < rows; i++)
        {
            for (int j = 0; j < columns; j++)
            {
                for (int k = 0; k < cells.Length; k++)
                {
                    one[k] = ranges[k] is { } range
                        ? range[range.GetLength(0) == 1 ? 0 : i, range.GetLength(1) == 1 ? 0 : j]
                        : cells[k];
                }

                results[i, j] = One(one, arguments, calculate);
            }
        }

        return results;
    }

    /// <summary>The numbers of a table in the unit of its argument, row by row.</summary>
    internal static double[,]? Numbers(object? cells, CellNumber number, IFormatProvider? writer, out CellError? error)
    {
        object?[,] range = cells switch
        {
            object?[,] many => many,
            double[,] numbers => Boxed(numbers),
            _ => new[,]
            {
                { cells },
            },
        };
        var result = new double[range.GetLength(0), range.GetLength(1)];
        error = null;
        for (int i = 0; i < result.GetLength(0); i++)
        {
            for (int j = 0; j < result.GetLength(1); j++)
            {
                object read = number.Read(range[i, j], writer);
                if (read is not double value)
                {
                    error = read as CellError ?? CellError.Value($"{number.Name}: the range holds an error.");
                    return null;
                }

                result[i, j] = value;
            }
        }

        return result;
    }

    private static object One(
        object?[] cells,
        ImmutableArray<SheetFunctionArgument> arguments,
        SheetFunction.CellCalculation calculate
    )
    {
        for (int i = 0; i < cells.Length; i++)
        {
            if (!arguments[i].IsWholeRange && CellNumber.IsForeign(cells[i]))
            {
                return cells[i]!;
            }
        }

        return calculate(cells);
    }
}

using System.Globalization;

namespace FuelMath.Formulas;

/// <summary>Checks before a column is computed, so that a refusal leaves the results unchanged.</summary>
internal static class ColumnChecks
{
    /// <summary>Checks equal lengths, and no overlap except of the whole column.</summary>
    internal static void Shape(ReadOnlySpan<double> column, string name, Span<double> results, string resultsName)
    {
        if (column.Length != results.Length)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must have as many rows as {resultsName:other}, {results.Length:exactly}; it has {column.Length:value}.",
                name
            );
        }

        if (results.Overlaps(column, out int offset) && offset != 0)
        {
            throw new RefusedArgumentException(
                RefusalCode.MemoryOverlaps,
                $"Must be the same memory as {resultsName:other} or lie apart from it; it overlaps in part.",
                name
            );
        }
    }
}

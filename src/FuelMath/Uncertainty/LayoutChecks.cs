using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath.Statistics;

/// <summary>The checks of the readings of a layout of rows and columns.</summary>
internal static class LayoutChecks
{
    internal static void Check(ImmutableArray<string> rows, ImmutableArray<string> columns, ReadOnlySpan<double> values)
    {
        SameCount(rows.Length, columns.Length, nameof(columns));
        SameCount(rows.Length, values.Length, nameof(values));
        Guard.AtLeast(2, rows.Distinct().Count(), "A layout (its rows)", nameof(rows));
        Guard.AtLeast(2, columns.Distinct().Count(), "A layout (its columns)", nameof(columns));
        Guard.AllFinite(values, "Readings");
        HangTogether(rows, columns);
    }

    /// <summary>Refuses rows and columns that no chain of readings connects, and names them.</summary>
    private static void HangTogether(ImmutableArray<string> rows, ImmutableArray<string> columns)
    {
        HashSet<string> joinedRows = [rows[0]];
        HashSet<string> joinedColumns = [];
        int before;
        do
        {
            before = joinedRows.Count + joinedColumns.Count;
            for (int i = 0; i < rows.Length; i++)
            {
                if (joinedRows.Contains(rows[i]) || joinedColumns.Contains(columns[i]))
                {
                    joinedRows.Add(rows[i]);
                    joinedColumns.Add(columns[i]);
                }
            }
        } while (joinedRows.Count + joinedColumns.Count > before);

        string[] apart = [.. rows.Where(r => !joinedRows.Contains(r)).Distinct()];
        if (apart.Length > 0)
        {
            string[] apartColumns = [.. columns.Where(c => !joinedColumns.Contains(c)).Distinct()];
            throw new RefusedArgumentException(
                RefusalCode.Unconnected,
                $"Rows and columns must hang together through shared readings, else their effects can't be told apart; {Names(apart):given} in {Names(apartColumns):columns} share nothing with {Names(joinedRows):other} in {Names(joinedColumns):otherColumns}.",
                nameof(columns)
            );
        }
    }

    private static string Names(IEnumerable<string> names) => string.Join(", ", names.Select(n => $"'{n}'"));

    private static void SameCount(int expected, int count, string paramName)
    {
        if (count != expected)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must be as many as rows, {expected:exactly}; {count:value} given.",
                paramName
            );
        }
    }
}

using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath.Workbooks;

/// <summary>A sheet that is filled row by row.</summary>
internal sealed class Sheet(string name, params ImmutableArray<double> widths)
{
    private readonly SortedDictionary<int, SortedDictionary<int, Cell>> rows = [];
    private readonly List<CellLimit> limits = [];

    internal string Name { get; } = name;

    internal ImmutableArray<double> Widths { get; } = widths;

    /// <summary>The next row, counted from one.</summary>
    internal int Row { get; private set; } = 1;

    internal IEnumerable<KeyValuePair<int, SortedDictionary<int, Cell>>> Rows => rows;

    internal IReadOnlyList<CellLimit> Limits => limits;

    /// <summary>The reference of a cell for a formula on any sheet of the workbook.</summary>
    internal string From(string reference) => $"'{Name}'!{reference}";

    /// <summary>The reference of a cell, for example <c>C5</c>.</summary>
    internal static string At(char column, int row) => string.Create(CultureInfo.InvariantCulture, $"{column}{row}");

    internal void Put(char column, int row, Cell cell)
    {
        if (!rows.TryGetValue(row, out SortedDictionary<int, Cell>? cells))
        {
            rows[row] = cells = [];
        }

        cells[column - 'A'] = cell;
        Row = Math.Max(Row, row + 1);
    }

    /// <summary>Fills the next row from its first column; an empty text leaves its cell empty.</summary>
    internal int Add(CellLook look, params ReadOnlySpan<string> texts)
    {
        int row = Row;
        for (int i = 0; i < texts.Length; i++)
        {
            if (texts[i].Length > 0)
            {
                Put((char)('A' + i), row, Cell.Of(texts[i], look));
            }
        }

        Row = row + 1;
        return row;
    }

    internal void Skip() => Row++;

    internal void Limit(string reference, double minimum, double maximum, string prompt) =>
        limits.Add(new(reference, minimum, maximum, prompt));
}

using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A table of a sheet, for print, CSV and JSON.</summary>
/// <remarks>
/// <para>
/// Print, CSV and JSON have the same numbers: each is rounded once, to the digits of its column. Reading a file back
/// gives the same names, units, words and numbers.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/SheetExamples.cs" region="Files" />
/// </example>
/// <seealso href="../guide/sheets.html">Sheets</seealso>
public sealed partial class SheetTable
{
    internal SheetTable(
        string name,
        string title,
        string note,
        IEnumerable<Column> columns,
        IEnumerable<ImmutableArray<Cell>> rows
    )
    {
        (Name, Title, Note) = (Guard.Name(name), Guard.Name(title), note);
        (Columns, Rows) = ([.. columns], [.. rows]);
        Guard.AtLeast(1, Columns.Length, "A table", nameof(columns));
        Guard.DifferentNames(Columns.Select(c => c.Name), nameof(columns));
        if (Rows.FirstOrDefault(r => r.Length != Columns.Length) is { IsDefault: false } odd)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must have {Columns.Length:exactly} cells in a row; one has {odd.Length:value}.",
                nameof(rows)
            );
        }
    }

    /// <summary>Its name in a file name: letters, digits and hyphens.</summary>
    public string Name { get; }

    /// <summary>The title.</summary>
    public string Title { get; }

    /// <summary>The scope of its numbers; empty where none is needed.</summary>
    public string Note { get; }

    /// <summary>The columns.</summary>
    public ImmutableArray<Column> Columns { get; }

    /// <summary>The rows, a cell for each column.</summary>
    public ImmutableArray<ImmutableArray<Cell>> Rows { get; }

    /// <summary>Writes the table as comma-separated text: a header with units in brackets, then the rows.</summary>
    /// <returns>The text, with lines that end in a line feed.</returns>
    public string ToCsv() => SheetFiles.Csv(this);

    /// <summary>Writes the table as JSON: name, title, note, columns with their units, and rows.</summary>
    /// <returns>The text.</returns>
    public string ToJson() => SheetFiles.Json(this);

    /// <summary>Prints the table in columns, in as many blocks as the width requires; no line is cut.</summary>
    /// <param name="width">The longest line, in characters; 60 or more.</param>
    /// <returns>The lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="width"/> is below 60.</exception>
    public ImmutableArray<string> ToLines(int width) =>
        [.. SheetText.Table(this, Guard.InRange(width, SheetText.Narrowest, 1000))];

    /// <summary>Reads what <see cref="ToCsv"/> wrote.</summary>
    /// <param name="name">The name of the table; not blank.</param>
    /// <param name="csv">The text.</param>
    /// <returns>The table; its title is its name.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="csv"/> is null.</exception>
    /// <exception cref="ArgumentException">The name is blank, or the text is no such table; the message says where.</exception>
    public static SheetTable FromCsv(string name, string csv)
    {
        ArgumentNullException.ThrowIfNull(csv);
        return SheetFiles.ReadCsv(Guard.Name(name), csv);
    }

    /// <summary>Reads what <see cref="ToJson"/> wrote.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="ArgumentException">The text is no such table; the message says where.</exception>
    public static SheetTable FromJson(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        return SheetFiles.ReadJson(json);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Title}: {Rows.Length} rows");

    /// <summary>Builds a table from rows of numbers and words.</summary>
    internal static SheetTable Of(
        string name,
        string title,
        string note,
        Column[] columns,
        IEnumerable<object?[]> rows
    ) =>
        new(
            name,
            title,
            note,
            columns,
            rows.Select(r =>
                r.Select(
                        (cell, i) =>
                            cell switch
                            {
                                string text => Cell.Of(text),
                                null => Cell.Empty,
                                int number => Cell.Of((double)number, columns[i]),
                                _ => Cell.Of((double)cell, columns[i]),
                            }
                    )
                    .ToImmutableArray()
            )
        );
}

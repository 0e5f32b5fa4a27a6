using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Formats tables and paragraphs as lines of limited length.</summary>
internal static class SheetText
{
    internal const int Narrowest = 60;

    private const int Gap = 2;

    internal static IEnumerable<string> Table(SheetTable table, int width)
    {
        foreach (string line in Wrap(table.Title, width, ""))
        {
            yield return line;
        }

        foreach (int[] block in Blocks(table, width))
        {
            foreach (string line in Block(table, block, width))
            {
                yield return line;
            }
        }

        foreach (string line in table.Note.Length == 0 ? [] : Wrap(table.Note, width, "  "))
        {
            yield return line;
        }
    }

    /// <summary>Breaks words into lines; a word longer than a line is broken too.</summary>
    internal static IEnumerable<string> Wrap(string text, int width, string indent)
    {
        string line = indent;
        bool empty = true;
        foreach (
            string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .SelectMany(w => Pieces(w, width - indent.Length))
        )
        {
            if (!empty && line.Length + 1 + word.Length > width)
            {
                yield return line;
                (line, empty) = (indent, true);
            }

            line += empty ? word : $" {word}";
            empty = false;
        }

        yield return line;
    }

    private static IEnumerable<string> Pieces(string word, int width) =>
        word.Length <= width ? [word] : word.Chunk(width).Select(c => new string(c));

    /// <summary>Columns that fit side by side; each further block repeats the first column.</summary>
    private static IEnumerable<int[]> Blocks(SheetTable table, int width)
    {
        int first = WidthOf(table, 0, width);
        var block = new List<int> { 0 };
        int used = first;
        for (int i = 1; i < table.Columns.Length; i++)
        {
            int wide = WidthOf(table, i, width) + Gap;
            if (block.Count > 1 && used + wide > width - Gap)
            {
                yield return [.. block];
                (block, used) = ([0], first);
            }

            block.Add(i);
            used += wide;
        }

        yield return [.. block];
    }

    private static IEnumerable<string> Block(SheetTable table, int[] columns, int width)
    {
        int[] widths = [.. columns.Select(i => WidthOf(table, i, width))];
        string?[] units = [.. columns.Select(i => table.Columns[i].Unit)];
        yield return Line([.. columns.Select(i => table.Columns[i].Name)], table, columns, widths);
        if (units.Any(u => u!.Length > 0))
        {
            yield return Line(units!, table, columns, widths);
        }

        yield return "  " + string.Join("  ", widths.Select(w => new string('-', w)));
        foreach (ImmutableArray<SheetTable.Cell> row in table.Rows)
        {
            string[][] cells =
            [
                .. columns.Select(
                    (c, i) =>
                        row[c].IsEmpty ? ["-"]
                        : table.Columns[c].IsNumber ? new[] { row[c].Text }
                        : [.. Wrap(row[c].Text, widths[i], "")]
                ),
            ];
            for (int line = 0; line < cells.Max(c => c.Length); line++)
            {
                yield return Line([.. cells.Select(c => line < c.Length ? c[line] : "")], table, columns, widths);
            }
        }
    }

    private static string Line(string[] cells, SheetTable table, int[] columns, int[] widths) =>
        (
            "  "
            + string.Join(
                "  ",
                cells.Select(
                    (c, i) => table.Columns[columns[i]].IsNumber ? c.PadLeft(widths[i]) : c.PadRight(widths[i])
                )
            )
        ).TrimEnd();

    /// <summary>The width of the longest cell; for words at most four tenths of a line.</summary>
    private static int WidthOf(SheetTable table, int column, int width)
    {
        SheetTable.Column one = table.Columns[column];
        int longest = table
            .Rows.Select(r => r[column].Text.Length)
            .Append(one.Name.Length)
            .Append(one.Unit.Length)
            .Append(1)
            .Max();
        return one.IsNumber ? longest : Math.Max(one.Name.Length, Math.Min(longest, width * 4 / 10));
    }
}

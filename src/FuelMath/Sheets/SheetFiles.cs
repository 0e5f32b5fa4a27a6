using System.Buffers;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace FuelMath;

/// <summary>Converts tables to files and back.</summary>
internal static class SheetFiles
{
    private const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    internal static string Csv(SheetTable table)
    {
        var text = new StringBuilder();
        text.AppendJoin(',', table.Columns.Select(c => Quoted(c.Head))).Append('\n');
        foreach (ImmutableArray<SheetTable.Cell> row in table.Rows)
        {
            text.AppendJoin(',', row.Select(c => Quoted(c.Text))).Append('\n');
        }

        return text.ToString();
    }

    internal static SheetTable ReadCsv(string name, string csv)
    {
        List<List<string>> lines = Split(csv);
        if (lines.Count == 0)
        {
            throw new RefusedArgumentException(
                RefusalCode.Missing,
                "Must have a line of heads; the text is empty.",
                nameof(csv)
            );
        }

        SheetTable.Column[] columns = [.. lines[0].Select(SheetTable.Column.FromHead)];
        var rows = new List<ImmutableArray<SheetTable.Cell>>();
        for (int line = 1; line < lines.Count; line++)
        {
            if (lines[line].Count != columns.Length)
            {
                throw new RefusedArgumentException(
                    RefusalCode.Count,
                    $"Row {line:row} must have {columns.Length:exactly} cells; it has {lines[line].Count:value}.",
                    nameof(csv)
                );
            }

            int row = line;
            rows.Add([.. lines[line].Select((cell, i) => Cell(cell, columns[i], row))]);
        }

        return new(name, name, "", columns, rows);
    }

    internal static string Json(SheetTable table)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var to = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            to.WriteStartObject();
            to.WriteString("name", table.Name);
            to.WriteString("title", table.Title);
            to.WriteString("note", table.Note);
            to.WriteStartArray("columns");
            foreach (SheetTable.Column column in table.Columns)
            {
                to.WriteStartObject();
                to.WriteString("name", column.Name);
                if (column.IsNumber)
                {
                    to.WriteString("unit", column.Unit);
                }

                to.WriteEndObject();
            }

            to.WriteEndArray();
            to.WriteStartArray("rows");
            foreach (ImmutableArray<SheetTable.Cell> row in table.Rows)
            {
                to.WriteStartArray();
                foreach (SheetTable.Cell cell in row)
                {
                    Write(to, cell);
                }

                to.WriteEndArray();
            }

            to.WriteEndArray();
            to.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    internal static SheetTable ReadJson(string json)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            JsonElement root = document.RootElement;
            SheetTable.Column[] columns =
            [
                .. root.GetProperty("columns")
                    .EnumerateArray()
                    .Select(c => new SheetTable.Column(
                        c.GetProperty("name").GetString()!,
                        c.TryGetProperty("unit", out JsonElement unit) ? unit.GetString() : null,
                        0
                    )),
            ];
            return new(
                root.GetProperty("name").GetString()!,
                root.GetProperty("title").GetString()!,
                root.GetProperty("note").GetString()!,
                columns,
                [.. root.GetProperty("rows").EnumerateArray().Select((row, i) => Row(row, columns, i + 1))]
            );
        }
        catch (Exception problem) when (problem is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            throw new RefusedArgumentException(
                RefusalCode.NotJson,
                $"Must be a table as JSON with name, title, note, columns and rows. {problem.Message:explanation}",
                nameof(json),
                inner: problem
            );
        }
    }

    private static ImmutableArray<SheetTable.Cell> Row(
        JsonElement row,
        SheetTable.Column[] columns,
        int number,
        string paramName = "json"
    ) =>
        [
            .. row.EnumerateArray()
                .Select(
                    (cell, i) =>
                        cell.ValueKind switch
                        {
                            JsonValueKind.Null => SheetTable.Cell.Empty,
                            JsonValueKind.Number when i < columns.Length && columns[i].IsNumber => SheetTable.Cell.Read(
                                cell.GetDecimal()
                            ),
                            JsonValueKind.String when i < columns.Length && !columns[i].IsNumber => SheetTable.Cell.Of(
                                cell.GetString()!
                            ),
                            _ => throw new RefusedArgumentException(
                                RefusalCode.WrongKind,
                                $"Row {number:row}, cell {i + 1:cell}: must be what its column holds; it was {cell.ToString():given}.",
                                paramName
                            ),
                        }
                ),
        ];

    private static void Write(Utf8JsonWriter to, SheetTable.Cell cell)
    {
        if (cell.Number is { } number)
        {
            to.WriteNumberValue(number);
        }
        else if (cell.IsEmpty)
        {
            to.WriteNullValue();
        }
        else
        {
            to.WriteStringValue(cell.Text);
        }
    }

    private static SheetTable.Cell Cell(string text, SheetTable.Column column, int row, string paramName = "csv") =>
        !column.IsNumber || text.Length == 0 ? SheetTable.Cell.Of(text)
        : decimal.TryParse(text, Plain, CultureInfo.InvariantCulture, out decimal number) ? SheetTable.Cell.Read(number)
        : throw new RefusedArgumentException(
            RefusalCode.NotAsWanted,
            $"Row {row:row}, column '{column.Name:column}': must be a number with a point for decimals; it was '{text:given}'.",
            paramName
        );

    private static string Quoted(string text) =>
        text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    private static List<List<string>> Split(string csv)
    {
        var lines = new List<List<string>>();
        var line = new List<string>();
        var cell = new StringBuilder();
        bool quoted = false;
        for (int i = 0; i < csv.Length; i++)
        {
            char c = csv[i];
            if (quoted && c == '"' && i + 1 < csv.Length && csv[i + 1] == '"')
            {
                cell.Append(csv[i++]);
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (!quoted && (c is ',' or '\n'))
            {
                line.Add(cell.ToString());
                cell.Clear();
                if (c == '\n')
                {
                    lines.Add(line);
                    line = [];
                }
            }
            else if (quoted || c != '\r')
            {
                cell.Append(c);
            }
        }

        if (line.Count > 0 || cell.Length > 0)
        {
            line.Add(cell.ToString());
            lines.Add(line);
        }

        return quoted
            ? throw new RefusedArgumentException(
                RefusalCode.QuoteOpen,
                "A quotation mark is opened and not closed.",
                nameof(csv)
            )
            : lines;
    }
}

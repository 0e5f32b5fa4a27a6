using System.Text;

namespace FuelMath.Samples.Assessment;

/// <summary>A plain-text table whose columns are as wide as their longest entry.</summary>
internal sealed class Table(params string[] head)
{
    private readonly List<string[]> rows = [];

    internal void Add(params string[] cells) => rows.Add(cells);

    internal void Print(TextWriter to)
    {
        int[] widths = [.. head.Select((h, i) => rows.Select(r => r[i].Length).Append(h.Length).Max())];
        to.WriteLine(Line(head, widths));
        to.WriteLine("  " + string.Join("  ", widths.Select(w => new string('-', w))));
        foreach (string[] row in rows)
        {
            to.WriteLine(Line(row, widths));
        }
    }

    internal string ToHtml()
    {
        var html = new StringBuilder("<table><thead><tr>");
        html.AppendJoin("", head.Select(h => $"<th>{Html.Escape(h)}</th>")).Append("</tr></thead><tbody>");
        foreach (string[] row in rows)
        {
            html.Append("<tr>").AppendJoin("", row.Select(c => $"<td>{Html.Escape(c)}</td>")).Append("</tr>");
        }

        return html.Append("</tbody></table>").ToString();
    }

    // The first column is a name; the others are numbers and short words.
    private static string Line(string[] cells, int[] widths) =>
        "  "
        + string.Join("  ", cells.Select((c, i) => i == 0 ? c.PadRight(widths[i]) : c.PadLeft(widths[i]))).TrimEnd();
}

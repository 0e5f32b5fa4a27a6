namespace FuelMath.Samples.Assessment;

/// <summary>One self-contained page: verdict, findings, sheet, points, pictures, appendix, cautions; to read and to print.</summary>
internal sealed class HtmlPage(Assessed assessed)
{
    private readonly SystemAssessment assessment = assessed.Sheet.Assessment;
    private readonly TuningSheet sheet = assessed.Sheet;
    private readonly AssessmentTables tables = assessed.Tables;

    internal string ToText()
    {
        FuelSystem system = assessment.System;
        using var page = new StringWriter { NewLine = "\n" };
        page.WriteLine("<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\">");
        page.WriteLine("<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">");
        page.WriteLine($"<title>{Html.Escape(system.Name)}</title><style>{PageStyle.Text}</style></head><body>");
        page.WriteLine($"<h1>{Html.Escape(system.Name)}</h1>");
        Verdicts(page);
        Findings(page);
        Sheet(page);
        page.WriteLine("<h2>Operating points</h2>");
        Write(page, sheet.Common.Where(IsOfPoints));
        Pictures.Write(page, assessed);
        Appendix(page);
        page.WriteLine("<h2>Cautions</h2><ul class=\"cautions\">");
        foreach (string caution in SampleCautions.All(system))
        {
            page.WriteLine($"<li>{Html.Escape(caution)}</li>");
        }

        page.WriteLine("</ul></body></html>");
        return page.ToString();
    }

    private void Verdicts(TextWriter page)
    {
        page.WriteLine(
            $"<p class=\"verdict {assessment.Verdict.Kind}\">{Html.Escape(Say.Verdict(assessment.Verdict.Kind).ToUpperInvariant())}</p>"
        );
        page.WriteLine(
            "<div class=\"wide\"><table class=\"verdicts\"><thead><tr><th>point</th><th>verdict</th><th>because</th><th>not known, and why</th></tr></thead><tbody>"
        );
        foreach (SystemAssessment.PointAssessment point in assessment.Points)
        {
            Row(page, point.Point.Name, point.Verdict, Say.Injectors(point.Deciding.Basis));
        }

        foreach (SystemAssessment.StageSet set in assessment.Sets)
        {
            Row(page, $"injectors, {set.Stage}", set.Verdict, "");
        }

        page.WriteLine("</tbody></table></div>");
    }

    private static void Row(TextWriter page, string name, Verdict verdict, string basis)
    {
        string because = verdict.Reasons.FirstOrDefault() is { } reason ? $"{basis}{reason.What}: {reason.Value}" : "";
        string open = string.Join("; ", verdict.NotJudged.Select(f => f.What).Distinct());
        page.WriteLine(
            $"<tr class=\"{verdict.Kind}\"><td>{Html.Escape(name)}</td><td><b>{Html.Escape(Say.Verdict(verdict.Kind))}</b></td><td>{Html.Escape(because)}</td><td>{Html.Escape(open)}</td></tr>"
        );
    }

    private void Findings(TextWriter page)
    {
        page.WriteLine("<h2>Dangers and warnings</h2>");
        SystemAssessment.GroupedFinding[] act = [.. assessment.Findings.Where(f => f.Severity >= Severity.Warning)];
        foreach (SystemAssessment.GroupedFinding one in act)
        {
            Finding(page, one);
        }

        if (act.Length == 0)
        {
            page.WriteLine("<p>None among what could be judged.</p>");
        }
    }

    private static void Finding(TextWriter page, SystemAssessment.GroupedFinding one)
    {
        page.WriteLine(
            $"<div class=\"finding {one.Severity}\"><b>{one.Severity}: {Html.Escape(one.What)}.</b> {Html.Escape(one.Action)}<ul>"
        );
        foreach (var same in one.Occurrences.GroupBy(o => (o.Finding.Value, o.Finding.Limit)))
        {
            string places = string.Join("; ", same.Select(o => o.Place).Distinct());
            page.WriteLine($"<li>{Html.Escape($"{places}: {same.Key.Value} (limit {same.Key.Limit})")}</li>");
        }

        page.WriteLine($"<li class=\"source\">{Html.Escape($"limit by {one.LimitSource}")}</li></ul></div>");
    }

    private void Sheet(TextWriter page)
    {
        page.WriteLine("<section class=\"sheet\"><h2>Sheet for tuning</h2><div class=\"head\">");
        foreach (string line in sheet.Head(1000))
        {
            page.WriteLine($"<p>{Html.Escape(line)}</p>");
        }

        page.WriteLine("</div>");
        foreach (TuningSheet.StageSheet stage in sheet.Stages)
        {
            // What every stage says stands in the head already.
            string told = stage.Instruction == sheet.Instruction ? "As above." : stage.Instruction;
            page.WriteLine($"<h3>{Html.Escape($"Stage: {stage.Stage}")}</h3><p><b>{Html.Escape(told)}</b></p>");
            Write(page, stage.Tables);
        }

        page.WriteLine("<h3>Common to all</h3>");
        Write(page, sheet.Common.Where(t => !IsOfPoints(t) && !IsEvidence(t)));
        page.WriteLine($"<p>{Html.Escape(sheet.ToLines(1000)[^1])}</p></section>");
    }

    /// <summary>What is asked point by point stands behind the sheet, under a heading of its own.</summary>
    private static bool IsOfPoints(SheetTable table) => table.Name is "points" or "banks";

    private bool IsEvidence(SheetTable table) => tables.Evidence.Any(t => t.Name == table.Name);

    private static void Write(TextWriter page, IEnumerable<SheetTable> all)
    {
        page.WriteLine("<div class=\"tables\">");
        foreach (SheetTable table in all)
        {
            page.WriteLine(HtmlTable(table));
        }

        page.WriteLine("</div>");
    }

    private static string HtmlTable(SheetTable table)
    {
        string head = string.Concat(
            table.Columns.Select(c =>
                $"<th class=\"{Kind(c)}\">{Html.Escape(c.Name)}{(c.Unit is "" or "-" or "as named" ? "" : $"<br><i>{Html.Escape(c.Unit)}</i>")}</th>"
            )
        );
        string rows = string.Concat(
            table.Rows.Select(r =>
                $"<tr>{string.Concat(r.Select((c, i) => $"<td class=\"{Kind(table.Columns[i])}\">{(c.IsEmpty ? "–" : Html.Escape(Shown(c)))}</td>"))}</tr>"
            )
        );
        string note = table.Note.Length == 0 ? "" : $"<p class=\"note\">{Html.Escape(table.Note)}</p>";
        return $"<div class=\"wide\" id=\"table-{table.Name}\"><table><caption>{Html.Escape(table.Title)}</caption><thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table>{note}</div>";
    }

    private static string Kind(SheetTable.Column column) => column.IsNumber ? "number" : "text";

    /// <summary>A true minus on the page; the files hold a hyphen, which programs read.</summary>
    private static string Shown(SheetTable.Cell cell) =>
        cell.Number is null ? cell.Text : cell.Text.Replace('-', '\u2212');

    private void Appendix(TextWriter page)
    {
        FuelSystem system = assessment.System;
        page.WriteLine("<section class=\"appendix\"><h2>Appendix</h2>");
        page.WriteLine(
            $"<p>{Html.Escape($"Data: {system.Source}. Fuel: {system.Fuel.Name}, stoichiometric air-fuel ratio {system.Fuel.StoichiometricRatio} by mass. Every table stands in the folder 'tables' too, as CSV and JSON, and findings with all notes.")}</p>"
        );
        Write(page, tables.Evidence);
        page.WriteLine("<div class=\"lines\">");
        foreach (string line in assessed.Pulsed?.Lines() ?? [])
        {
            page.WriteLine($"<p class=\"line\">{Html.Escape(line)}</p>");
        }

        page.WriteLine("</div>");

        string[] notes =
        [
            .. assessment
                .Findings.Where(f => f.Severity < Severity.Warning)
                .Select(f =>
                    $"{f.What} ({string.Join("; ", f.Occurrences.GroupBy(o => o.Finding.Value).Select(g => $"{string.Join(", ", g.Select(o => o.Place).Distinct())}: {g.Key}"))}). {f.Action}"
                ),
        ];
        if (notes.Length > 0)
        {
            page.WriteLine("<h3>Notes</h3><ul>");
            foreach (string note in notes)
            {
                page.WriteLine($"<li>{Html.Escape(note)}</li>");
            }

            page.WriteLine("</ul>");
        }

        page.WriteLine("</section>");
    }
}

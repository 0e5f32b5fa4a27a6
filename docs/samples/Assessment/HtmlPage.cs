namespace FuelMath.Samples.Assessment;

/// <summary>Writes one self-contained page: verdict, findings, sheet, points, pictures, appendix, cautions; to read and to print.</summary>
internal static class HtmlPage
{
    internal static void Write(
        string path,
        SystemAssessment assessment,
        IReadOnlyList<SolvedPoint> points,
        MeasuredSet? measured,
        PulsedReport? pulsed,
        TuningSheet sheet
    )
    {
        FuelSystem system = assessment.System;
        using var page = new StreamWriter(path);
        page.WriteLine("<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\">");
        page.WriteLine("<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">");
        page.WriteLine($"<title>{Html.Escape(system.Name)}</title><style>{PageStyle.Text}</style></head><body>");
        page.WriteLine($"<h1>{Html.Escape(system.Name)}</h1>");
        Verdicts(page, assessment);
        Findings(page, assessment);
        Sheet(page, sheet);
        page.WriteLine("<h2>Operating points</h2>");
        foreach (SheetTable table in sheet.Common.Where(IsOfPoints))
        {
            page.WriteLine(HtmlTable(table));
        }

        Pictures.Write(page, assessment, measured);
        Appendix(page, system, points, measured, pulsed);
        page.WriteLine("<h2>Cautions</h2><ul>");
        foreach (string caution in SampleCautions.All(system))
        {
            page.WriteLine($"<li>{Html.Escape(caution)}</li>");
        }

        page.WriteLine("</ul></body></html>");
    }

    private static void Verdicts(StreamWriter page, SystemAssessment assessment)
    {
        page.WriteLine(
            $"<p class=\"verdict {assessment.Verdict.Kind}\">{Html.Escape(Say.Verdict(assessment.Verdict.Kind).ToUpperInvariant())}</p>"
        );
        page.WriteLine(
            "<div class=\"wide\"><table><thead><tr><th>point</th><th>verdict</th><th>because</th><th>not known, and why</th></tr></thead><tbody>"
        );
        foreach (SystemAssessment.PointAssessment point in assessment.Points)
        {
            Row(page, point.Point.Name, point.Verdict, Basis(point));
        }

        foreach (SystemAssessment.StageSet set in assessment.Sets)
        {
            Row(page, $"injectors, {set.Stage}", set.Verdict, "");
        }

        page.WriteLine("</tbody></table></div>");
    }

    private static void Row(StreamWriter page, string name, Verdict verdict, string basis)
    {
        string because = verdict.Reasons.FirstOrDefault() is { } reason ? $"{basis}{reason.What}: {reason.Value}" : "";
        string open = string.Join("; ", verdict.NotJudged.Select(f => f.What).Distinct());
        page.WriteLine(
            $"<tr class=\"{verdict.Kind}\"><td>{Html.Escape(name)}</td><td><b>{Html.Escape(Say.Verdict(verdict.Kind))}</b></td><td class=\"text\">{Html.Escape(because)}</td><td class=\"text\">{Html.Escape(open)}</td></tr>"
        );
    }

    private static string Basis(SystemAssessment.PointAssessment point) =>
        point.Deciding.Basis switch
        {
            SystemAssessment.StateBasis.AsMeasured => "as measured: ",
            SystemAssessment.StateBasis.AsMeasuredUncorrected => "if the sensor fails: ",
            _ => "",
        };

    private static void Findings(StreamWriter page, SystemAssessment assessment)
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

    private static void Finding(StreamWriter page, SystemAssessment.GroupedFinding one)
    {
        page.WriteLine(
            $"<div class=\"finding {one.Severity}\"><b>{one.Severity}: {Html.Escape(one.What)}.</b> {Html.Escape(one.Action)}"
        );
        page.WriteLine(
            string.Join(
                "",
                one.Occurrences.GroupBy(o => (o.Finding.Value, o.Finding.Limit))
                    .Select(g =>
                        $"<br><span class=\"where\">{Html.Escape(string.Join("; ", g.Select(o => o.Place).Distinct()))}: {Html.Escape(g.Key.Value)}, limit {Html.Escape(g.Key.Limit)}</span>"
                    )
            )
        );
        page.WriteLine($"<br><span class=\"where\">{Html.Escape(one.LimitSource.ToString())}</span></div>");
    }

    private static void Sheet(StreamWriter page, TuningSheet sheet)
    {
        page.WriteLine("<section class=\"sheet\"><h2>Sheet for tuning</h2><div class=\"head\">");
        foreach (string line in sheet.Head(1000))
        {
            page.WriteLine($"<p>{Html.Escape(line)}</p>");
        }

        page.WriteLine("</div>");
        foreach (TuningSheet.StageSheet stage in sheet.Stages)
        {
            page.WriteLine($"<h3>{Html.Escape(stage.Stage)}</h3><p><b>{Html.Escape(stage.Instruction)}</b></p>");
            foreach (SheetTable table in stage.Tables)
            {
                page.WriteLine(HtmlTable(table));
            }
        }

        page.WriteLine("<h3>Common to all</h3>");
        foreach (SheetTable table in sheet.Common.Where(t => !IsOfPoints(t)))
        {
            page.WriteLine(HtmlTable(table));
        }

        page.WriteLine("</section>");
    }

    /// <summary>What is asked point by point stands behind the sheet, under a heading of its own.</summary>
    private static bool IsOfPoints(SheetTable table) => table.Name is "points" or "banks" or "scatter";

    private static string HtmlTable(SheetTable table)
    {
        string head = string.Concat(
            table.Columns.Select(c =>
                $"<th class=\"{(c.IsNumber ? "number" : "text")}\">{Html.Escape(c.Name)}{(c.Unit is "" or "as named" ? "" : $"<br><i>{Html.Escape(c.Unit)}</i>")}</th>"
            )
        );
        string rows = string.Concat(
            table.Rows.Select(r =>
                $"<tr>{string.Concat(r.Select((c, i) => $"<td class=\"{(table.Columns[i].IsNumber ? "number" : "text")}\">{(c.IsEmpty ? "–" : Html.Escape(c.Text))}</td>"))}</tr>"
            )
        );
        string note = table.Note.Length == 0 ? "" : $"<p class=\"note\">{Html.Escape(table.Note)}</p>";
        return $"<div class=\"wide\"><table><caption>{Html.Escape(table.Title)}</caption><thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table>{note}</div>";
    }

    private static void Appendix(
        StreamWriter page,
        FuelSystem system,
        IReadOnlyList<SolvedPoint> points,
        MeasuredSet? measured,
        PulsedReport? pulsed
    )
    {
        using var text = new StringWriter { NewLine = "\n" };
        new AssessmentReport(system, points, measured, text).PrintNumbers();
        pulsed?.Print(text);
        page.WriteLine($"<h2>Appendix</h2><pre>{Html.Escape(text.ToString())}</pre>");
        page.WriteLine("<div class=\"pair\">");
        foreach ((string chart, string words) in pulsed?.Charts ?? [])
        {
            page.WriteLine(Pictures.Figure(chart, words));
        }

        page.WriteLine("</div>");
    }
}

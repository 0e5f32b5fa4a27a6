using FuelMath.Assessments;
using FuelMath.Systems;

namespace FuelMath.Samples.Assessment;

/// <summary>Writes one self-contained page: the charts, the findings, the sheet to hand over and the cautions.</summary>
internal static class HtmlPage
{
    private const string Style = """
        body{font:15px/1.45 system-ui,sans-serif;max-width:980px;margin:2rem auto;padding:0 1rem;color:#1b1f23}
        h1{font-size:1.5rem}h2{font-size:1.15rem;margin-top:2rem;border-bottom:1px solid #d0d7de}
        table{border-collapse:collapse;font-size:.86rem;margin:.6rem 0}
        th,td{border:1px solid #d0d7de;padding:.25rem .5rem;text-align:right}
        th:first-child,td:first-child{text-align:left}th{background:#f3f5f7}
        .Danger{border-left:5px solid #b42318}.Warning{border-left:5px solid #b7791f}.Note{border-left:5px solid #4a6785}
        .finding{padding:.3rem .7rem;margin:.4rem 0;background:#fafbfc}
        pre{background:#f6f8fa;padding:.8rem;overflow-x:auto;font-size:.8rem}
        svg{max-width:100%;height:auto}
        """;

    internal static void Write(
        string path,
        FuelSystem system,
        SystemAssessment assessment,
        IReadOnlyList<SolvedPoint> points,
        MeasuredSet? measured,
        PulsedReport? pulsed,
        string sheet
    )
    {
        using var page = new StreamWriter(path);
        page.WriteLine("<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\">");
        page.WriteLine($"<title>{Html.Escape(system.Name)}</title><style>{Style}</style></head><body>");
        page.WriteLine(
            $"<h1>{Html.Escape(system.Name)}</h1><p>Data: {Html.Escape(system.Source.ToString())}. Fuel: {Html.Escape(system.Fuel.Name)}.</p>"
        );
        page.WriteLine($"<h2>Verdict</h2><p><b>{Html.Escape(assessment.ToString())}</b></p><ul>");
        foreach (string line in assessment.Points.Select(p => p.ToString()))
        {
            page.WriteLine($"<li>{Html.Escape(line)}</li>");
        }

        foreach (StageSet set in assessment.Sets)
        {
            page.WriteLine($"<li>{Html.Escape($"injectors, {set.Stage}: {set.Verdict}")}</li>");
        }

        page.WriteLine("</ul>");
        SystemState[] states = [.. points.Select(p => p.State).OfType<SystemState>()];
        SystemState? busiest = states
            .Where(s => !s.Pumps.IsEmpty)
            .MaxBy(s => s.Injectors.Sum(i => i.MeanFlow.LitersPerHour));
        if (busiest is not null)
        {
            page.WriteLine("<h2>Where the pump meets the path</h2>" + Charts.PumpAndSystem(system, busiest));
        }

        page.WriteLine("<h2>Pressure along the path</h2>" + Charts.PressureAlongPath(system, states));
        page.WriteLine(
            "<p>Nodes stand in the order of the description: where the path splits, as into two rails, neighbors here lie side by side there.</p>"
        );
        if (busiest is not null)
        {
            page.WriteLine("<h2>Duty cycle over speed</h2>" + Charts.DutyOverSpeed(system, busiest.Point));
        }

        page.WriteLine("<h2>Findings</h2>");
        foreach (SolvedPoint refused in points.Where(p => p.State is null))
        {
            page.WriteLine(
                $"<p class=\"finding Danger\"><b>No state: {Html.Escape(refused.Point.Name)}</b><br>{Html.Escape(refused.Refusal!.Message)}</p>"
            );
        }

        WriteGroups(page, FindingGroup.Of(points));
        if (measured is not null)
        {
            page.WriteLine("<h2>Injectors on the bench</h2>" + BenchCharts.Spread(measured));
            foreach (string chart in pulsed?.Charts ?? [])
            {
                page.WriteLine(chart);
            }

            page.WriteLine(
                "<p>Bench fluids are flammable, and drivers spark: ventilate, no flames, extinguisher at hand.</p>"
            );
            page.WriteLine("<h2>With the injectors as measured, if the controller keeps assuming the rating</h2>");
            page.WriteLine("<p>Findings above hold here too; below stands what the measured injectors add.</p>");
            page.WriteLine("<h3>Lambda of each cylinder</h3>" + MixtureChart.Uncorrected(measured));
            page.WriteLine(MixtureChart.UnderOneSensor(measured));
            page.WriteLine(
                "<p>A predicted lambda is no clearance to load an engine. Never run an engine leaner than intended to test a set.</p>"
            );
            WriteGroups(page, FindingGroup.Added(measured, points));
        }

        page.WriteLine($"<h2>Sheet to hand over</h2><pre>{Html.Escape(sheet)}</pre><h2>Cautions</h2><ul>");
        foreach (string caution in SampleCautions.All(system))
        {
            page.WriteLine($"<li>{Html.Escape(caution)}</li>");
        }

        page.WriteLine("</ul></body></html>");
    }

    private static void WriteGroups(StreamWriter page, IReadOnlyList<FindingGroup> groups)
    {
        foreach (FindingGroup group in groups)
        {
            page.WriteLine(
                $"<p class=\"finding {group.Severity}\"><b>{group.Severity}: {Html.Escape(group.What)}</b><br>"
                    + string.Join("<br>", group.Values.Select(Html.Escape))
                    + $"<br>{Html.Escape(group.Action)} {Html.Escape(group.Source)}</p>"
            );
        }

        if (groups.Count == 0)
        {
            page.WriteLine("<p>No finding.</p>");
        }
    }
}

namespace FuelMath.Samples.Assessment;

/// <summary>The pictures of a page, each with its text alternative; none is drawn without data.</summary>
internal static class Pictures
{
    internal static void Write(TextWriter page, Assessed assessed)
    {
        SystemAssessment assessment = assessed.Sheet.Assessment;
        page.WriteLine("<h2>Pictures</h2>");
        FuelSystem system = assessment.System;
        SystemState[] states =
        [
            .. assessment
                .Points.Select(p => p.Of(SystemAssessment.StateBasis.AsDescribed)?.State)
                .OfType<SystemState>(),
        ];
        if (states.Length == 0)
        {
            page.WriteLine("<p>No point was solved, so there is nothing to draw. What is missing:</p><ul>");
            foreach (SystemAssessment.PointAssessment point in assessment.Points)
            {
                string why = point.Verdict.Reasons.FirstOrDefault() is { } reason
                    ? $"{reason.What}: {reason.Value}"
                    : "nothing is known";
                page.WriteLine($"<li>{Html.Escape($"{point.Point.Name}: {why}")}</li>");
            }

            page.WriteLine("</ul>");
            return;
        }

        page.WriteLine("<div class=\"pictures\">");
        foreach (string figure in PumpCharts.Of(system, states).Concat(SurgeTankChart.Of(states)))
        {
            page.WriteLine(figure);
        }

        SystemState busiest = states.MaxBy(s => s.Injectors.Sum(i => i.MeanFlow.LitersPerHour))!;
        page.WriteLine(MixtureChart.Of(assessment));
        page.WriteLine(DutyChart.Of(system, busiest.Point));
        if (assessed.Measured is { } measured)
        {
            page.WriteLine(BenchCharts.Spread(measured));
        }

        foreach ((string title, string chart, string words) in assessed.Pulsed?.Figures ?? [])
        {
            page.WriteLine(Figure(title, chart, words));
        }

        page.WriteLine(PathPicture.Of(system, busiest));
        page.WriteLine("</div>");
    }

    /// <summary>A chart with its title and a line below it, and all its words for those who can't see it.</summary>
    internal static string Figure(string title, string svg, string words, string? below = null) =>
        $"<figure class=\"plot\" role=\"img\" aria-label=\"{Html.Escape($"{title}. {words}")}\"><b>{Html.Escape(title)}</b>{svg}<figcaption>{Html.Escape(below ?? words)}</figcaption></figure>";
}

namespace FuelMath.Samples.Assessment;

/// <summary>The pictures of a page, each with its text alternative; none is drawn without data.</summary>
internal static class Pictures
{
    internal static void Write(StreamWriter page, SystemAssessment assessment, MeasuredSet? measured)
    {
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

        foreach (string figure in PumpCharts.Of(system, states))
        {
            page.WriteLine(figure);
        }

        foreach (string figure in SurgeTankChart.Of(states))
        {
            page.WriteLine(figure);
        }

        SystemState busiest = states.MaxBy(s => s.Injectors.Sum(i => i.MeanFlow.LitersPerHour))!;
        page.WriteLine(PathPicture.Of(system, busiest));
        page.WriteLine(MixtureChart.Of(assessment));
        page.WriteLine(DutyChart.Of(system, busiest.Point));
        if (measured is not null)
        {
            page.WriteLine(BenchCharts.Spread(measured));
        }
    }

    /// <summary>A chart on its own light ground, with its words for those who can't see it.</summary>
    internal static string Figure(string svg, string alternative) =>
        $"<figure class=\"plot\" role=\"img\" aria-label=\"{Html.Escape(alternative)}\">{svg}<figcaption>{Html.Escape(alternative)}</figcaption></figure>";
}

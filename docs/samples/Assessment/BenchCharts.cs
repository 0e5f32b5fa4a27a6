using FuelMath.Bench;
using ScottPlot;
using UnitsNet;

namespace FuelMath.Samples.Assessment;

/// <summary>What the bench found, as SVG text.</summary>
internal static class BenchCharts
{
    private const int Steps = 60;

    /// <summary>Each injector's departure from its rating with its interval, and the limits.</summary>
    internal static string Spread(MeasuredSet set) =>
        Pictures.Figure(
            "Injectors against their rating",
            Charts.Finish(SpreadPlot(set)),
            $"With 95 % intervals; limits ±{Limit(set)} %. "
                + string.Join(
                    ", ",
                    set.Reports.Values.SelectMany(r => r.Members)
                        .Select(m => $"{m.Name} {Say.Number(m.FromRating.Percent, "+0.0;-0.0;0.0")} %")
                )
                + "."
        );

    internal static Plot SpreadPlot(MeasuredSet set)
    {
        Plot plot = Charts.New("", "off the rating, %");
        double place = 0;
        var names = new List<string>();
        foreach ((string stage, SetReport report) in set.Reports)
        {
            double[] places = [.. report.Members.Select((_, i) => place + i)];
            double[] values = [.. report.Members.Select(m => m.FromRating.Percent)];
            double rated = report.Rating.StaticVolumeFlow.LitersPerHour;
            int series = names.Count == 0 ? 0 : 1;
            var points = plot.Add.ScatterPoints(places, values);
            (points.LegendText, points.MarkerSize, points.Color) = (stage, 9, Charts.Palette[series]);
            points.MarkerShape = series == 0 ? MarkerShape.FilledCircle : MarkerShape.FilledSquare;
            var bars = plot.Add.ErrorBar(
                places,
                values,
                report.Members.Select(m => 100 * (m.FlowHalfWidth?.LitersPerHour ?? 0) / rated).ToArray()
            );
            bars.Color = points.Color;
            foreach ((int i, SetReport.Member member) in report.Members.Index().Where(m => !m.Item.IsFlowAccepted))
            {
                var label = plot.Add.Text(
                    $"{Say.Number(member.FromRating.Percent, "+0.0;-0.0")} %",
                    places[i],
                    values[i]
                );
                (label.LabelFontSize, label.LabelFontColor, label.OffsetX) = (16, Charts.Ink, 9);
            }

            names.AddRange(report.Members.Select(m => m.Name));
            place += report.Members.Length;
        }

        double limit = set.Reports.Values.First().Limits.FromRating.Percent;
        plot.Add.HorizontalLine(0, 1.5f, Charts.Ink, LinePattern.Solid).LegendText = "rating";
        plot.Add.HorizontalLine(limit, 2, Charts.Limit, LinePattern.Dotted).LegendText = $"limits ±{Limit(set)} %";
        plot.Add.HorizontalLine(-limit, 2, Charts.Limit, LinePattern.Dotted);
        plot.Axes.Bottom.SetTicks([.. Enumerable.Range(0, names.Count).Select(i => (double)i)], [.. names]);
        plot.Axes.SetLimitsX(-0.5, names.Count - 0.5);
        return plot;
    }

    private static string Limit(MeasuredSet set) =>
        Say.Number(set.Reports.Values.First().Limits.FromRating.Percent, "0.#");

    /// <summary>Departure of each reading from the line, in percent of it, with the confidence band of the line.</summary>
    internal static Plot Departure(PulseCharacterization found)
    {
        Plot plot = Charts.New("pulse width, ms", "off the line, %");
        double from = found.Readings[0].PulseWidth.Milliseconds;
        double to = found.Readings[^1].PulseWidth.Milliseconds;
        double[] widths = [.. Enumerable.Range(0, Steps + 1).Select(i => from + ((to - from) * i / Steps))];
        double[] half = [.. widths.Select(w => Share(found, w, found.BandHalfWidthAt(Duration.FromMilliseconds(w))))];
        var band = plot.Add.FillY(widths, [.. half.Select(h => -h)], half);
        (band.FillColor, band.LineColor) = (Charts.Blue.WithAlpha(.25), Charts.Blue);
        band.LegendText = $"band of the line, {Say.Number(found.Confidence.Percent, "0")} %";
        Add(plot, found, found.LinearReadings, "readings in the linear range", (Charts.Ink, MarkerShape.FilledCircle));
        Add(
            plot,
            found,
            [.. found.Readings.Where(r => r.PulseWidth.Milliseconds < found.LinearFrom.Milliseconds)],
            "readings below it",
            (Charts.Ochre, MarkerShape.FilledTriangleUp)
        );
        double tolerance = found.LinearityTolerance.Percent;
        plot.Add.HorizontalLine(tolerance, 1.5f, Charts.Limit, LinePattern.Dashed).LegendText =
            $"tolerance ±{Say.Number(tolerance, "0.#")} %";
        plot.Add.HorizontalLine(-tolerance, 1.5f, Charts.Limit, LinePattern.Dashed);
        return plot;
    }

    /// <summary>Mass over pulse width with the line, and where it meets no mass: the dead time.</summary>
    internal static Plot Line(PulseCharacterization found)
    {
        Plot plot = Charts.New("pulse width, ms", "mass of a pulse, mg");
        double dead = found.DeadTime.Milliseconds;
        double to = found.Readings[^1].PulseWidth.Milliseconds;
        var line = plot.Add.Scatter(
            new[] { dead, to },
            new[] { 0, found.LineAt(Duration.FromMilliseconds(to)).Milligrams }
        );
        (line.LegendText, line.LineWidth, line.MarkerSize) = ($"line, dead time {Say.Number(dead, "0.000")} ms", 2, 0);
        line.Color = Charts.Blue;
        var points = plot.Add.ScatterPoints(
            found.Readings.Select(r => r.PulseWidth.Milliseconds).ToArray(),
            found.Readings.Select(r => r.MassPerPulse.Milligrams).ToArray()
        );
        (points.LegendText, points.MarkerSize, points.Color) = ("readings", 8, Charts.Ink);
        points.MarkerShape = MarkerShape.OpenCircle;
        plot.Axes.SetLimitsX(0, to * 1.03);
        return plot;
    }

    private static void Add(
        Plot plot,
        PulseCharacterization found,
        IReadOnlyList<DynamicFlowReading> readings,
        string text,
        (Color Color, MarkerShape Shape) marks
    )
    {
        var points = plot.Add.ScatterPoints(
            readings.Select(r => r.PulseWidth.Milliseconds).ToArray(),
            readings
                .Select(r => Share(found, r.PulseWidth.Milliseconds, r.MassPerPulse - found.LineAt(r.PulseWidth)))
                .ToArray()
        );
        (points.LegendText, points.MarkerSize, points.Color) = (text, 8, marks.Color);
        points.MarkerShape = marks.Shape;
    }

    private static double Share(PulseCharacterization found, double milliseconds, Mass part) =>
        100 * part.Milligrams / found.LineAt(Duration.FromMilliseconds(milliseconds)).Milligrams;
}

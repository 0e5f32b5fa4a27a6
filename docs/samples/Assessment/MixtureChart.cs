using ScottPlot;

namespace FuelMath.Samples.Assessment;

/// <summary>Lambda of each chamber over the one asked for, with the limit: as nobody corrects it, and as a sensor leaves it.</summary>
internal static class MixtureChart
{
    private static readonly MarkerShape[] Shapes =
    [
        MarkerShape.FilledCircle,
        MarkerShape.OpenSquare,
        MarkerShape.FilledTriangleUp,
        MarkerShape.OpenDiamond,
        MarkerShape.Cross,
        MarkerShape.OpenTriangleDown,
        MarkerShape.FilledSquare,
        MarkerShape.Eks,
    ];

    internal static string Of(SystemAssessment assessment)
    {
        bool measured = assessment.Measured is not null;
        string injectors = measured ? "as measured" : "as described";
        SystemState[] held = [.. assessment.Points.Select(p => State(p, measured, false)).OfType<SystemState>()];
        SystemState[] open = [.. assessment.Points.Select(p => State(p, measured, true)).OfType<SystemState>()];
        string corrected = Draw(assessment, held, $"Lambda by chamber, {injectors}, with the sensor");
        string uncorrected = open.Any(s => !held.Contains(s))
            ? Draw(assessment, open, $"Lambda by chamber, {injectors}, nobody corrects")
            : "";
        return uncorrected + corrected;
    }

    /// <summary>The chamber, and its bank where each bank has a sensor.</summary>
    private static string Tick(FuelSystem system, int chamber) =>
        system.Banks.Any(b => b > 1)
            ? $"{Say.Number(chamber, "0")} (bank {Say.Number(system.Banks[chamber - 1], "0")})"
            : Say.Number(chamber, "0");

    /// <summary>Beside each other, so that marks of equal height stay apart.</summary>
    private static double Shift(int place, int count) => count == 1 ? 0 : 0.6 * ((place / (count - 1.0)) - 0.5);

    private static (int Chamber, double Over) Leanest(SystemState state) =>
        state
            .Chambers.Where(c => c.Lambda is not null)
            .Select(c => (c.Chamber, c.Lambda!.Value.ToRatio() / state.TargetLambda!.Value.ToRatio()))
            .MaxBy(c => c.Item2);

    private static SystemState? State(SystemAssessment.PointAssessment point, bool measured, bool uncorrected)
    {
        (SystemAssessment.StateBasis held, SystemAssessment.StateBasis open) = measured
            ? (SystemAssessment.StateBasis.AsMeasured, SystemAssessment.StateBasis.AsMeasuredUncorrected)
            : (SystemAssessment.StateBasis.AsDescribed, SystemAssessment.StateBasis.AsDescribedUncorrected);
        return (uncorrected ? point.Of(open) ?? point.Of(held) : point.Of(held))?.State;
    }

    private static string Draw(SystemAssessment assessment, SystemState[] all, string title)
    {
        SystemState[] states =
        [
            .. all.Where(s => s.TargetLambda is not null && s.Chambers.Any(c => c.Lambda is not null)),
        ];
        if (states.Length == 0)
        {
            return $"<p>{Html.Escape($"{title}: no point asks for a lambda and has one.")}</p>";
        }

        Plot plot = Charts.New("chamber", "lambda / asked");
        var words = new List<string>();
        for (int s = 0; s < states.Length; s++)
        {
            double asked = states[s].TargetLambda!.Value.ToRatio();
            double shift = Shift(s, states.Length);
            (int Chamber, double Over)[] marks =
            [
                .. states[s]
                    .Chambers.Where(c => c.Lambda is not null)
                    .Select(c => (c.Chamber, c.Lambda!.Value.ToRatio() / asked)),
            ];
            var points = plot.Add.ScatterPoints(
                marks.Select(m => m.Chamber + shift).ToArray(),
                marks.Select(m => m.Over).ToArray()
            );
            (points.LegendText, points.MarkerSize, points.Color) = (
                states[s].Point.Name,
                9,
                Charts.Palette[s % Charts.Palette.Length]
            );
            (points.MarkerShape, points.MarkerLineWidth) = (Shapes[s % Shapes.Length], 2);
            (int Chamber, double Over) leanest = Leanest(states[s]);
            words.Add(
                $"{states[s].Point.Name}: leanest chamber {leanest.Chamber}, {Say.Number(100 * (leanest.Over - 1), "+0.0;-0.0;0.0")} %"
            );
        }

        (SystemState worst, int place) = states.Select((s, i) => (s, i)).MaxBy(s => Leanest(s.s).Over);
        (int chamber, double over) = Leanest(worst);
        var label = plot.Add.Text(
            $"{Say.Number(100 * (over - 1), "+0.0;-0.0;0.0")} %",
            chamber + Shift(place, states.Length),
            over
        );
        (label.LabelFontSize, label.LabelFontColor, label.OffsetX, label.OffsetY) = (16, Charts.Ink, 9, -9);
        double limit = assessment.System.Limits.MixtureDeviation.DecimalFractions;
        plot.Add.HorizontalLine(1, 1.5f, Charts.Ink, LinePattern.Solid).LegendText = "as asked for";
        plot.Add.HorizontalLine(1 + limit, 2, Charts.Limit, LinePattern.Dotted).LegendText =
            $"lean limit {Say.Number(100 * limit, "0.#")} %";
        int chambers = assessment.System.Engine.Chambers;
        plot.Axes.SetLimitsX(0.5, chambers + 0.5);
        plot.Axes.Bottom.SetTicks(
            [.. Enumerable.Range(1, chambers).Select(c => (double)c)],
            [.. Enumerable.Range(1, chambers).Select(c => Tick(assessment.System, c))]
        );
        return Pictures.Figure(
            title,
            Charts.Finish(plot),
            $"Above the line is leaner than asked for, the limit is {Say.Number(100 * limit, "0.#")} % lean. {string.Join("; ", words)}. A predicted lambda is no clearance to load an engine.",
            $"Above the line is leaner than asked for. The leanest: chamber {chamber} at {worst.Point.Name}. A predicted lambda is no clearance to load an engine."
        );
    }
}

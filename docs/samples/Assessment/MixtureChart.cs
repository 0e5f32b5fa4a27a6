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
        string injectors = measured ? "injectors as measured" : "injectors as described";
        SystemState[] held = [.. assessment.Points.Select(p => State(p, measured, false)).OfType<SystemState>()];
        SystemState[] open = [.. assessment.Points.Select(p => State(p, measured, true)).OfType<SystemState>()];
        string corrected = Draw(assessment, held, $"Lambda by chamber, {injectors}, corrected where a sensor holds");
        string uncorrected =
            measured && open.Any(s => !held.Contains(s))
                ? Draw(assessment, open, $"Lambda by chamber, {injectors}, nobody corrects")
                : "";
        return uncorrected + corrected;
    }

    /// <summary>The chamber, and its bank where each bank has a sensor.</summary>
    private static string Tick(FuelSystem system, int chamber) =>
        system.Banks.Any(b => b > 1)
            ? $"{Say.Number(chamber, "0")} (bank {Say.Number(system.Banks[chamber - 1], "0")})"
            : Say.Number(chamber, "0");

    private static SystemState? State(SystemAssessment.PointAssessment point, bool measured, bool uncorrected) =>
        !measured ? point.Of(SystemAssessment.StateBasis.AsDescribed)?.State
        : uncorrected && point.Of(SystemAssessment.StateBasis.AsMeasuredUncorrected) is { } open ? open.State
        : point.Of(SystemAssessment.StateBasis.AsMeasured)?.State;

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

        Plot plot = Charts.New(title, "chamber", "lambda over the one asked for");
        var words = new List<string>();
        for (int s = 0; s < states.Length; s++)
        {
            double asked = states[s].TargetLambda!.Value.ToRatio();
            // Beside each other, so that marks of equal height stay apart.
            double shift = states.Length == 1 ? 0 : 0.6 * ((s / (states.Length - 1.0)) - 0.5);
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
            (int Chamber, double Over) leanest = marks.MaxBy(m => m.Over);
            words.Add(
                $"{states[s].Point.Name}: leanest chamber {leanest.Chamber}, {Say.Number(100 * (leanest.Over - 1), "+0.0;-0.0;0.0")} %"
            );
        }

        double limit = assessment.System.Limits.MixtureDeviation.DecimalFractions;
        plot.Add.HorizontalLine(1, 1.5f, Colors.Black, LinePattern.Solid).LegendText = "as asked for";
        plot.Add.HorizontalLine(1 + limit, 2, Charts.Vermilion, LinePattern.Dotted).LegendText =
            $"lean limit {Say.Number(100 * limit, "0.#")} %";
        int chambers = assessment.System.Engine.Chambers;
        plot.Axes.SetLimitsX(0.5, chambers + 0.5);
        plot.Axes.Bottom.SetTicks(
            [.. Enumerable.Range(1, chambers).Select(c => (double)c)],
            [.. Enumerable.Range(1, chambers).Select(c => Tick(assessment.System, c))]
        );
        return Pictures.Figure(
            Charts.Finish(plot),
            $"{title}; above the line is leaner than asked for, the limit is {Say.Number(100 * limit, "0.#")} % lean. {string.Join("; ", words)}. A predicted lambda is no clearance to load an engine."
        );
    }
}

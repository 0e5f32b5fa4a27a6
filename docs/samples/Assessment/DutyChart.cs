using ScottPlot;
using UnitsNet;

namespace FuelMath.Samples.Assessment;

/// <summary>Duty cycle of each stage over engine speed at the manifold pressure of one point, with the limit.</summary>
internal static class DutyChart
{
    internal static string Of(FuelSystem system, OperatingPoint point)
    {
        double top = point.Speed.RevolutionsPerMinute;
        RotationalSpeed[] speeds =
        [
            .. Enumerable
                .Range(0, 41)
                .Select(i => RotationalSpeed.FromRevolutionsPerMinute(top * (0.25 + (0.75 * i / 40)))),
        ];
        SystemState[] states =
        [
            .. new Sweep(system, point, speeds, [point.Air.Manifold], CancellationToken.None)
                .Points.Select(p => p.State)
                .OfType<SystemState>(),
        ];
        if (states.Length < 2)
        {
            return $"<p>{Html.Escape($"Duty over speed: fewer than two speeds at the manifold pressure of {point.Name} could be solved.")}</p>";
        }

        Plot plot = Charts.New("speed, rpm", "duty cycle, %");
        for (int s = 0; s < system.Stages.Length; s++)
        {
            double[] duty = [.. states.Select(one => one.Stages[s].IsShut ? 0 : one.Stages[s].DutyCycle.Percent)];
            double[] at = [.. states.Select(one => one.Point.Speed.RevolutionsPerMinute)];
            var line = plot.Add.Scatter(at, duty);
            (line.LegendText, line.LineWidth, line.MarkerSize) = (system.Stages[s].Name, 2.5f, 0);
            (line.Color, line.LinePattern) = (
                Charts.Palette[s % Charts.Palette.Length],
                Charts.Patterns[s % Charts.Patterns.Length]
            );
            var label = plot.Add.Text($"{Say.Number(duty[^1], "0.0")} %", at[^1], duty[^1]);
            (label.LabelAlignment, label.LabelFontColor, label.LabelFontSize) = (Alignment.LowerRight, Charts.Ink, 16);
        }

        var limit = plot.Add.HorizontalLine(system.Limits.DutyCycle.Percent, 2, Charts.Limit, LinePattern.Dotted);
        limit.LegendText = $"limit {Say.Percent(system.Limits.DutyCycle)} %";
        plot.Axes.SetLimitsY(0, Math.Max(105, 5 + states.Max(s => s.Stages.Max(d => d.DutyCycle.Percent))));
        SystemState last = states[^1];
        return Pictures.Figure(
            $"Duty cycle over speed, manifold {Say.Kilopascals(point.Air.Manifold)} kPa absolute",
            Charts.Finish(plot),
            $"Duty cycle over speed at the manifold pressure of {point.Name}; at {Say.Number(last.Point.Speed.RevolutionsPerMinute, "0")} rpm: "
                + string.Join(
                    ", ",
                    last.Stages.Select(s => $"{s.Name} {(s.IsShut ? "shut" : Say.Percent(s.DutyCycle) + " %")}")
                )
                + $"; limit {Say.Percent(system.Limits.DutyCycle)} %."
        );
    }
}

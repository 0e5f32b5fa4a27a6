using FuelMath.Quantities;
using FuelMath.Systems;
using ScottPlot;

namespace FuelMath.Samples.Assessment;

/// <summary>Lambda of each cylinder over the one asked for, with the injectors as measured; as SVG text.</summary>
internal static class MixtureChart
{
    /// <summary>Nobody corrects: lambda of each cylinder, a row of marks for each operating point.</summary>
    internal static string Uncorrected(MeasuredSet set) =>
        Draw(
            set,
            "Nobody corrects",
            "lambda over the one asked for",
            state => state.TargetLambda is { } target ? target.ToRatio() : double.NaN
        );

    /// <summary>One sensor holds the mean: what is left between the cylinders.</summary>
    internal static string UnderOneSensor(MeasuredSet set) =>
        Draw(
            set,
            "One sensor holds the mean at the one asked for",
            "lambda over what the sensor sees",
            state => state.Lambda is { } seen ? seen.ToRatio() : double.NaN
        );

    private static string Draw(MeasuredSet set, string title, string vertical, Func<SystemState, double> over)
    {
        Plot plot = Charts.New(title, "cylinder", vertical);
        SystemState[] states = [.. set.OpenLoop.Select(o => o.State).OfType<SystemState>()];
        int chambers = states.Length == 0 ? 0 : states[0].Chambers.Length;
        for (int s = 0; s < states.Length; s++)
        {
            // Beside each other, so that marks of equal height stay apart.
            double shift = states.Length == 1 ? 0 : 0.5 * ((s / (states.Length - 1.0)) - 0.5);
            (double X, double Y)[] marks =
            [
                .. states[s]
                    .Chambers.Where(c => c.Lambda is not null)
                    .Select(c => (c.Chamber + shift, Of(c.Lambda) / over(states[s]))),
            ];
            var points = plot.Add.ScatterPoints(marks.Select(m => m.X).ToArray(), marks.Select(m => m.Y).ToArray());
            (points.LegendText, points.MarkerSize) = (states[s].Point.Name, 9);
        }

        plot.Add.HorizontalLine(1, 1.5f, Colors.Black, LinePattern.Dashed).LegendText = "as asked for";
        if (states.Length > 0)
        {
            double lean = 1 + set.LeanLimit;
            plot.Add.HorizontalLine(lean, 1.5f, Colors.Red, LinePattern.Dashed).LegendText =
                $"limit {Say.Number(100 * set.LeanLimit, "0.#")} % lean";
        }

        plot.Axes.SetLimitsX(0.5, chambers + 0.5);
        plot.Axes.Bottom.SetTicks(
            [.. Enumerable.Range(1, chambers).Select(c => (double)c)],
            [.. Enumerable.Range(1, chambers).Select(c => Say.Number(c, "0"))]
        );
        return Charts.Finish(plot);
    }

    private static double Of(Lambda? lambda) => lambda!.Value.ToRatio();
}

using FuelMath.Pumps;
using FuelMath.Quantities;
using FuelMath.Systems;
using ScottPlot;
using UnitsNet;

namespace FuelMath.Samples.Assessment;

/// <summary>Three pictures of a system, as SVG text.</summary>
internal static class Charts
{
    private const int Width = 860;
    private const int Height = 430;

    /// <summary>What the pump offers and what the path asks for, and where they meet.</summary>
    /// <remarks>
    /// The system curve is traced by solving the same draws at other supply voltages: each solution is one point of it.
    /// </remarks>
    internal static string PumpAndSystem(FuelSystem system, SystemState state)
    {
        PumpMatch match = state.Pumps[0];
        Pump pump = (Pump)system.Plan.Lines.First(l => l.Name == match.Line).Part;
        Plot plot = New($"Pump and path at {state.Point.Name}", "flow, L/h", "pressure rise of the pump, bar");
        foreach (PumpCurve curve in pump.Curves)
        {
            AddCurve(plot, curve, $"pump at {Say.Number(curve.Voltage.Volts, "0.0")} V (data)", 1, LinePattern.Dotted);
        }

        AddCurve(
            plot,
            pump.CurveAt(match.Voltage),
            $"pump at {Say.Volts(match.Voltage)} V (this point)",
            2.5f,
            LinePattern.Solid
        );

        var path = new List<(double Flow, double Rise)>();
        double lowest = pump.Curves.Min(c => c.Voltage.Volts);
        double highest = pump.Curves.Max(c => c.Voltage.Volts);
        for (int i = 0; i <= 24; i++)
        {
            ElectricPotential supply = ElectricPotential.FromVolts(lowest + ((highest + 0.8 - lowest) * i / 24));
            if (SolvedPoint.Of(system, WithSupply(state.Point, supply)).State is { } other)
            {
                path.Add((other.Pumps[0].Flow.LitersPerHour, other.Pumps[0].PressureRise.Bars));
            }
        }

        path.Sort();
        var line = plot.Add.Scatter(path.Select(p => p.Flow).ToArray(), path.Select(p => p.Rise).ToArray());
        (line.LegendText, line.LineWidth, line.MarkerSize) = ("path with these injectors", 2.5f, 0);
        var here = plot.Add.Marker(match.Flow.LitersPerHour, match.PressureRise.Bars, MarkerShape.FilledCircle, 13);
        here.LegendText = $"meets at {Say.LitersPerHour(match.Flow)} L/h, {Say.Bar(match.PressureRise)} bar";
        return Finish(plot);
    }

    /// <summary>Gauge pressure from node to node, one line for each operating point.</summary>
    internal static string PressureAlongPath(FuelSystem system, IEnumerable<SystemState> states)
    {
        Plot plot = New("Pressure along the path", "", "pressure, bar gauge");
        string[] names = [.. system.Plan.Nodes.Select(n => n.Name)];
        double[] places = [.. Enumerable.Range(0, names.Length).Select(i => (double)i)];
        foreach (SystemState state in states)
        {
            var line = plot.Add.Scatter(places, names.Select(n => state.PressureAt(n).AboveAmbient.Bars).ToArray());
            (line.LegendText, line.LineWidth, line.MarkerSize) = (state.Point.Name, 2, 6);
        }

        plot.Axes.Bottom.SetTicks(places, names);
        plot.Axes.Bottom.TickLabelStyle.Rotation = 35;
        plot.Axes.Bottom.TickLabelStyle.Alignment = Alignment.MiddleLeft;
        plot.Axes.Bottom.MinimumSize = 95;
        plot.Axes.Right.MinimumSize = 60;
        return Finish(plot);
    }

    /// <summary>Duty cycle of each stage over engine speed at the manifold pressure of one point.</summary>
    internal static string DutyOverSpeed(FuelSystem system, OperatingPoint point)
    {
        Plot plot = New(
            $"Duty cycle at {Say.Kilopascals(point.Manifold)} kPa absolute in the manifold",
            "speed, rpm",
            "duty cycle, %"
        );
        double top = point.Speed.RevolutionsPerMinute;
        RotationalSpeed[] speeds =
        [
            .. Enumerable
                .Range(0, 41)
                .Select(i => RotationalSpeed.FromRevolutionsPerMinute(top * (0.25 + (0.75 * i / 40)))),
        ];
        var sweep = new Sweep(system, point, speeds, [point.Manifold], CancellationToken.None);
        for (int s = 0; s < system.Stages.Length; s++)
        {
            var at = sweep.Points.Where(p => p.State is not null).ToList();
            var line = plot.Add.Scatter(
                at.Select(p => p.Speed.RevolutionsPerMinute).ToArray(),
                at.Select(p => p.State!.Stages[s].DutyCycle.Percent).ToArray()
            );
            (line.LegendText, line.LineWidth, line.MarkerSize) = (system.Stages[s].Name, 2.5f, 0);
        }

        var limit = plot.Add.HorizontalLine(system.Limits.DutyCycle.Percent, 1.5f, Colors.Red, LinePattern.Dashed);
        limit.LegendText = $"limit {Say.Percent(system.Limits.DutyCycle)} %";
        plot.Axes.SetLimitsY(0, 105);
        return Finish(plot);
    }

    private static void AddCurve(Plot plot, PumpCurve curve, string text, float width, LinePattern pattern)
    {
        double low = curve.Points[0].PressureRise.Pascals;
        double high = curve.Points[^1].PressureRise.Pascals;
        Pressure[] rises =
        [
            .. Enumerable.Range(0, 61).Select(i => Pressure.FromPascals(low + ((high - low) * i / 60))),
        ];
        var line = plot.Add.Scatter(
            rises.Select(r => curve.FlowAt(r).LitersPerHour).ToArray(),
            rises.Select(r => r.Bars).ToArray()
        );
        (line.LegendText, line.LineWidth, line.MarkerSize, line.LinePattern) = (text, width, 0, pattern);
    }

    private static OperatingPoint WithSupply(OperatingPoint point, ElectricPotential supply) =>
        new(point.Name, point.Speed, point.Manifold, point.Ambient, point.Charge, point.Fuel, supply, point.Command);

    internal static Plot New(string title, string horizontal, string vertical)
    {
        var plot = new Plot();
        plot.Title(title);
        plot.XLabel(horizontal);
        plot.YLabel(vertical);
        return plot;
    }

    internal static string Finish(Plot plot)
    {
        plot.ShowLegend(Edge.Right);
        return plot.GetSvgXml(Width, Height);
    }
}

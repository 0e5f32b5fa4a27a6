using ScottPlot;
using UnitsNet;

namespace FuelMath.Samples.Assessment;

/// <summary>
/// Each pump that does work, at the point where the pumps have least to spare: what it gives and what is drawn. A lift pump is
/// held against what its surge tank loses.
/// </summary>
internal static class PumpCharts
{
    internal static IEnumerable<string> Of(FuelSystem system, IReadOnlyList<SystemState> states)
    {
        SystemState worst = states.OrderBy(Spare).ThenByDescending(Drawn).First();
        foreach (SystemState.PumpResult match in worst.Pumps.Where(p => !p.IsStalled && p.Flow.LitersPerHour > 0))
        {
            yield return Of(system, worst, match);
        }

        foreach (SystemState.PumpResult still in worst.Pumps.Where(p => p.IsStalled || p.Flow.LitersPerHour <= 0))
        {
            yield return $"<p>{Html.Escape($"Pump in '{still.Line}' does no work at {worst.Point.Name}.")}</p>";
        }
    }

    private static double Drawn(SystemState state) => state.Injectors.Sum(i => i.MeanFlow.LitersPerHour);

    private static double Spare(SystemState state) =>
        Drawn(state) > 0 && state.PumpReserve is { } reserve ? reserve.LitersPerHour / Drawn(state) : double.MaxValue;

    private static string Of(FuelSystem system, SystemState state, SystemState.PumpResult match)
    {
        if (system.Network.Lines.First(l => l.Name == match.Line).Part is not Pump pump)
        {
            return $"<p>{Html.Escape($"Pump in '{match.Line}' has no curve of its own to draw: {Say.LitersPerHour(match.Flow)} L/h at {Say.Bar(match.PressureRise)} bar at {state.Point.Name}.")}</p>";
        }

        PumpCurve curve = pump.CurveAt(match.Voltage);
        SurgeTankBalance? tank = state.SurgeTanks.FirstOrDefault(t => t.LiftPumps.Contains(match.Line));
        double drawn = tank is null ? Drawn(state) : (tank.DrawnFlow - tank.ReturnFlow).LitersPerHour;
        double? spare = tank is null ? state.PumpReserve?.LitersPerHour : tank.OverflowFlow.LitersPerHour;
        (string draws, string left) = tank is null
            ? ("engine draws", $"to spare {Say.Number(spare ?? 0, "0")} L/h")
            : ($"'{tank.Node}' loses", $"overflows {Say.Number(spare ?? 0, "0")} L/h");
        Plot plot = Charts.New("flow, L/h", "pressure rise, bar");
        double low = curve.LeastPressureRise.Pascals;
        double high = curve.GreatestPressureRise.Pascals;
        Pressure[] rises =
        [
            .. Enumerable.Range(0, 61).Select(i => Pressure.FromPascals(low + ((high - low) * i / 60))),
        ];
        var line = plot.Add.Scatter(
            rises.Select(r => curve.FlowAt(r).LitersPerHour).ToArray(),
            rises.Select(r => r.Bars).ToArray()
        );
        (line.LegendText, line.LineWidth, line.MarkerSize, line.Color) = (
            $"pump at {Say.Volts(match.Voltage)} V",
            2.5f,
            0,
            Charts.Blue
        );
        double top = curve.GreatestPressureRise.Bars;
        if (spare is > 0)
        {
            var band = plot.Add.Rectangle(drawn, drawn + spare.Value, 0, top);
            (band.FillStyle.Color, band.LineStyle.Width) = (Charts.Ochre.WithAlpha(.3), 0);
            band.LegendText = left;
        }

        var need = plot.Add.VerticalLine(drawn, 2, Charts.Limit, LinePattern.Dashed);
        need.LegendText = $"{draws} {Say.Number(drawn, "0.0")} L/h";
        var here = plot.Add.Marker(
            match.Flow.LitersPerHour,
            match.PressureRise.Bars,
            MarkerShape.FilledDiamond,
            13,
            Charts.Ink
        );
        here.LegendText = $"works at {Say.LitersPerHour(match.Flow)} L/h, {Say.Bar(match.PressureRise)} bar";
        plot.Axes.SetLimits(0, 1.05 * Math.Max(curve.GreatestFlow.LitersPerHour, drawn + (spare ?? 0)), 0, 1.05 * top);
        return Pictures.Figure(
            $"{pump.Name} ({match.Line}) at {state.Point.Name}",
            Charts.Finish(plot),
            $"Pump '{pump.Name}' at {state.Point.Name}, the point with least to spare: it gives {Say.LitersPerHour(match.Flow)} L/h at {Say.Bar(match.PressureRise)} bar and {Say.Volts(match.Voltage)} V; {(tank is null ? InWords(system, state) : InWords(tank))}."
        );
    }

    private static string InWords(FuelSystem system, SystemState state)
    {
        double drawn = Drawn(state);
        string left = state.PumpReserve?.LitersPerHour is { } value
            ? $"{(state.Pumps.Length > 1 ? "all pumps that feed it have together " : "")}{Say.Number(value, "0.0")} L/h ({Say.Number(100 * value / Math.Max(drawn, 1e-9), "0")} %) to spare at the pressure that must hold; {Say.Percent(system.Limits.PumpReserve)} % are asked for"
            : "what it could still give is not known: nothing says which pressure must hold";
        return $"the engine draws {Say.Number(drawn, "0.0")} L/h; {left}";
    }

    private static string InWords(SurgeTankBalance tank) =>
        $"from '{tank.Node}' {Say.LitersPerHour(tank.DrawnFlow)} L/h are drawn and {Say.LitersPerHour(tank.ReturnFlow)} L/h come back; "
        + (
            tank.DrainsWithLift
                ? $"it drains, and is empty after {Say.Number(tank.LastsWithLift().Seconds, "0")} s"
                : $"{Say.LitersPerHour(tank.OverflowFlow)} L/h overflow"
        );
}

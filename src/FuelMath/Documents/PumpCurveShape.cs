using UnitsNet;

namespace FuelMath;

/// <summary>Flow and current of a pump at one voltage.</summary>
internal static class PumpCurveShape
{
    private static readonly ObjectShape<PumpCurve.Point> Point = new(o =>
    {
        o.Is("pump-point", "Flow and current against a pressure rise.");
        var rise = o.Required("pressureRise", QuantityShapes.PressureDifference.NotNegative, p => p.PressureRise)
            .Says("Outlet less inlet pressure.");
        var flow = o.Required("flow", QuantityShapes.VolumeFlow.NotNegative, p => p.Flow).Says("Volume flow.");
        var current = o.Required("current", QuantityShapes.Current.NotNegative, p => p.Current).Says("Mean current.");
        return f => new(f.Of(rise), f.Of(flow), f.Of(current));
    });

    internal static ObjectShape<PumpCurve> Shape { get; } =
        new(o =>
        {
            o.Is("pump-curve", "Flow and current of a pump at one voltage.");
            var voltage = o.Required("voltage", QuantityShapes.Voltage.Positive, c => c.Voltage)
                .Says("Voltage at the pump's terminals.");
            var points = o.Required("points", Point.Knots(), c => c.Points)
                .Says("Two or more points, pressure rise rising and flow falling.");
            o.With("estimate", TextShape.Note, c => c.EstimateBasis, (c, v) => c.AsEstimate(v), "basis")
                .Says("What it rests on where it was not measured; left out for a measured one.");
            var source = o.Source(c => c.Source);
            return f => new(f.Of(voltage), f.Of(points), f.Of(source));
        });
}

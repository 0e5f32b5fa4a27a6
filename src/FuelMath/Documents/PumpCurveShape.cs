using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>What a pump delivers and draws at one voltage.</summary>
internal static class PumpCurveShape
{
    private static readonly ValueProperty<PumpPoint, Pressure> Rise = new(
        "pressureRise",
        "Outlet less inlet pressure.",
        QuantityShapes.PressureDifference,
        p => p.PressureRise
    );

    private static readonly ValueProperty<PumpPoint, VolumeFlow> Flow = new(
        "flow",
        "Volume flow.",
        QuantityShapes.VolumeFlow,
        p => p.Flow
    );

    private static readonly ValueProperty<PumpPoint, ElectricCurrent> Current = new(
        "current",
        "Mean current.",
        QuantityShapes.Current,
        p => p.Current
    );

    private static readonly ObjectShape<PumpPoint> Point = new(
        "pump-point",
        "Flow and current against a pressure rise.",
        [Rise, Flow, Current],
        f => new(f.Of(Rise), f.Of(Flow), f.Of(Current))
    );

    private static readonly ValueProperty<PumpCurve, ElectricPotential> Voltage = new(
        "voltage",
        "Voltage at the pump's terminals.",
        QuantityShapes.Voltage,
        c => c.Voltage
    );

    private static readonly ValueProperty<PumpCurve, ImmutableArray<PumpPoint>> Points = new(
        "points",
        "Two or more points, pressure rise rising and flow falling.",
        TableShapes.Knots(Point),
        c => c.Points
    );

    private static readonly ValueProperty<PumpCurve, string> Estimate = new(
        "estimate",
        "What it rests on where it was not measured; left out for a measured one.",
        TextShape.Note,
        c => c.EstimateBasis!,
        c => c.EstimateBasis is not null,
        null!
    )
    {
        Parameter = "basis",
    };

    private static readonly ValueProperty<PumpCurve, DataSource> Source = SourceShape.Of<PumpCurve>(c => c.Source);

    internal static ObjectShape<PumpCurve> Shape { get; } =
        new(
            "pump-curve",
            "What a pump delivers and draws at one voltage.",
            [Voltage, Points, Estimate, Source],
            f =>
            {
                PumpCurve curve = new(f.Of(Voltage), f.Of(Points), f.Of(Source));
                return f.Has(Estimate) ? curve.AsEstimate(f.Of(Estimate)) : curve;
            }
        );
}

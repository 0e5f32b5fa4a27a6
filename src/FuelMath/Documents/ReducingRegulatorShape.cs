using UnitsNet;

namespace FuelMath;

/// <summary>A reducing regulator by two readings and its dimensions.</summary>
internal static class ReducingRegulatorShape
{
    private static readonly ObjectShape<ReducingRegulator.BenchReading> Reading = new(o =>
    {
        o.Is("reducing-reading", "Pressure held at a flow from a supply.");
        var difference = o.Required(
                "differentialPressure",
                QuantityShapes.PressureDifference.Positive,
                r => r.DifferentialPressure
            )
            .Says("Downstream less reference pressure.");
        var flow = o.Required("flow", QuantityShapes.VolumeFlow.NotNegative, r => r.Flow)
            .Says("Volume flow through it.");
        var supply = o.Required("supply", QuantityShapes.GaugePressure, r => r.Supply).Says("Pressure ahead of it.");
        return f => new(f.Of(difference), f.Of(flow), f.Of(supply));
    });

    internal static ObjectShape<ReducingRegulator> Shape { get; } =
        new(o =>
        {
            o.Is("reducing-regulator", "A dead-head regulator: it throttles what it lets through.");
            var name = o.Named(r => r.Name);
            var setPoint = o.Required("setPoint", Reading, r => r.SetPoint).Says("The reading at which it was set.");
            var second = o.Required("secondReading", Reading, r => r.SecondReading, parameter: "second")
                .Says("Another reading at another flow, which gives the droop.");
            var mechanics = RegulatorPartShapes.Mechanics(o, r => r.Mechanics);
            var reference = o.Required("reference", RegulatorPartShapes.ReferenceWords, r => r.Reference)
                .Says("What acts on the spring side of the diaphragm.");
            o.With("estimate", TextShape.Note, r => r.EstimateBasis, (r, v) => r.AsEstimate(v), "basis")
                .Says("The basis of the estimate; only where something of it is one.");
            var source = o.Source(r => r.Source);
            return f => new(f.Of(name), f.Of(setPoint), f.Of(second), mechanics(f), f.Of(reference), f.Of(source));
        });
}

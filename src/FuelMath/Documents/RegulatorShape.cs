using UnitsNet;

namespace FuelMath;

/// <summary>A bypass regulator by two readings and its dimensions.</summary>
internal static class RegulatorShape
{
    private static readonly ObjectShape<BypassRegulator.BenchReading> Reading = new(o =>
    {
        o.Is("regulator-reading", "Pressure held at a bypassed flow.");
        var difference = o.Required(
                "differentialPressure",
                QuantityShapes.PressureDifference.Positive,
                r => r.DifferentialPressure
            )
            .Says("Upstream less reference pressure.");
        var bypassed = o.Required("bypassedFlow", QuantityShapes.VolumeFlow.NotNegative, r => r.BypassedFlow)
            .Says("Volume flow through the return.");
        return f => new(f.Of(difference), f.Of(bypassed));
    });

    internal static ObjectShape<BypassRegulator> Shape { get; } =
        new(o =>
        {
            o.Is("bypass-regulator", "A return-style regulator.");
            var name = o.Named(r => r.Name);
            var setPoint = o.Required("setPoint", Reading, r => r.SetPoint).Says("The reading at which it was set.");
            var second = o.Required("secondReading", Reading, r => r.SecondReading, parameter: "second")
                .Says("Another reading at another flow, which gives the slope.");
            var mechanics = RegulatorPartShapes.Mechanics(o, r => r.Mechanics);
            var reference = o.Required("reference", RegulatorPartShapes.ReferenceWords, r => r.Reference)
                .Says("What acts on the spring side of the diaphragm.");
            o.With(
                    "referenceRatio",
                    PureRatioShape.NotNegative,
                    r => r.ReferenceRatio.InSi() == 1 ? null : r.ReferenceRatio,
                    (r, v) => r.WithReferenceRatio(r.Name, v),
                    "ratio"
                )
                .Says("Area under the reference over that of the diaphragm; one when left out.");
            o.With("estimate", TextShape.Note, r => r.EstimateBasis, (r, v) => r.AsEstimate(v), "basis")
                .Says("The basis of the estimate; only where something of it is one.");
            var source = o.Source(r => r.Source);
            return f => new(f.Of(name), f.Of(setPoint), f.Of(second), mechanics(f), f.Of(reference), f.Of(source));
        });
}

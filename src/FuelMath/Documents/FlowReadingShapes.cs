using FuelMath.Bench;

namespace FuelMath;

/// <summary>Readings of flow: held open, and pulsed.</summary>
internal static class FlowReadingShapes
{
    private const int MostPulses = 100_000_000;

    internal static ObjectShape<StaticFlowReading> Static { get; } =
        new(o =>
        {
            o.Is("static-flow-reading", "What an injector held open gave in a time.");
            var staticCollected = o.Required("collected", CollectedShape.Shape, r => r.Collected)
                .Says("What was collected.");
            var time = o.Required("collectionTime", RawShapes.Duration.Positive, r => r.CollectionTime)
                .Says("In which time.");
            var staticConditions = o.Conditions(r => r.Conditions);
            return f => new(f.Of(staticCollected), f.Of(time), f.Of(staticConditions));
        });

    internal static ObjectShape<DynamicFlowReading> Pulsed { get; } =
        new(o =>
        {
            o.Is("dynamic-flow-reading", "What a counted number of equal pulses gave.");
            var width = o.Required("pulseWidth", RawShapes.Duration.Positive, r => r.PulseWidth)
                .Says("Commanded width.");
            var period = o.Required("period", RawShapes.Duration.Positive, r => r.Period)
                .Says("Time from one pulse to the next.");
            var pulses = o.Required("pulses", new CountShape(1, MostPulses), r => r.Pulses)
                .Says("How many pulses were counted.");
            var pulsedCollected = o.Required("collected", CollectedShape.Shape, r => r.Collected)
                .Says("What they delivered together.");
            var voltage = o.Required("atInjector", RawShapes.Voltage.Positive, r => r.AtInjector)
                .Says("Voltage at the injector.");
            var pulsedConditions = o.Conditions(r => r.Conditions);
            return f =>
                new(
                    f.Of(width),
                    f.Of(period),
                    f.Of(pulses),
                    f.Of(pulsedCollected),
                    f.Of(voltage),
                    f.Of(pulsedConditions)
                );
        });
}

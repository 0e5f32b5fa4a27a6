using FuelMath.Bench;
using UnitsNet;

namespace FuelMath;

/// <summary>Readings of flow: held open, and pulsed.</summary>
internal static class FlowReadingShapes
{
    private const int MostPulses = 100_000_000;

    private static readonly ValueProperty<StaticFlowReading, CollectedShape.Box> StaticCollected = new(
        "collected",
        "What was collected.",
        CollectedShape.Shape,
        r => new(r.Collected)
    );

    private static readonly ValueProperty<StaticFlowReading, Duration> Time = new(
        "collectionTime",
        "In which time.",
        RawShapes.Duration,
        r => r.CollectionTime
    );

    private static readonly ValueProperty<StaticFlowReading, BenchConditions> StaticConditions =
        BenchConditionsShape.Of<StaticFlowReading>(r => r.Conditions);

    private static readonly ValueProperty<DynamicFlowReading, Duration> Width = new(
        "pulseWidth",
        "Commanded width.",
        RawShapes.Duration,
        r => r.PulseWidth
    );

    private static readonly ValueProperty<DynamicFlowReading, Duration> Period = new(
        "period",
        "Time from one pulse to the next.",
        RawShapes.Duration,
        r => r.Period
    );

    private static readonly ValueProperty<DynamicFlowReading, int> Pulses = new(
        "pulses",
        "How many pulses were counted.",
        new CountShape(1, MostPulses),
        r => r.Pulses
    );

    private static readonly ValueProperty<DynamicFlowReading, CollectedShape.Box> PulsedCollected = new(
        "collected",
        "What they delivered together.",
        CollectedShape.Shape,
        r => new(r.Collected)
    );

    private static readonly ValueProperty<DynamicFlowReading, ElectricPotential> Voltage = new(
        "atInjector",
        "Voltage at the injector.",
        RawShapes.Voltage,
        r => r.AtInjector
    );

    private static readonly ValueProperty<DynamicFlowReading, BenchConditions> PulsedConditions =
        BenchConditionsShape.Of<DynamicFlowReading>(r => r.Conditions);

    internal static ObjectShape<StaticFlowReading> Static { get; } =
        new(
            "static-flow-reading",
            "What an injector held open gave in a time.",
            [StaticCollected, Time, StaticConditions],
            f => new(f.Of(StaticCollected).Fuel, f.Of(Time), f.Of(StaticConditions))
        );

    internal static ObjectShape<DynamicFlowReading> Pulsed { get; } =
        new(
            "dynamic-flow-reading",
            "What a counted number of equal pulses gave.",
            [Width, Period, Pulses, PulsedCollected, Voltage, PulsedConditions],
            f =>
                new(
                    f.Of(Width),
                    f.Of(Period),
                    f.Of(Pulses),
                    f.Of(PulsedCollected).Fuel,
                    f.Of(Voltage),
                    f.Of(PulsedConditions)
                )
        );
}

using FuelMath.Bench;
using UnitsNet;

namespace FuelMath;

/// <summary>Readings of dead time, leakage and coils.</summary>
internal static class OtherReadingShapes
{
    private const int MostDrops = 1_000_000;

    private static readonly ValueProperty<DeadTimeReading, ElectricPotential> Voltage = new(
        "atInjector",
        "Voltage at the injector.",
        RawShapes.Voltage,
        r => r.AtInjector
    );

    private static readonly ValueProperty<DeadTimeReading, Duration> Dead = new(
        "deadTime",
        "The dead time.",
        RawShapes.Duration,
        r => r.DeadTime
    );

    private static readonly ValueProperty<DeadTimeReading, Duration> DeadStep = new(
        "resolution",
        "The smallest step it is given in.",
        RawShapes.Duration,
        r => r.Resolution
    );

    private static readonly ValueProperty<DeadTimeReading, BenchConditions> DeadConditions =
        BenchConditionsShape.Of<DeadTimeReading>(r => r.Conditions);

    private static readonly ValueProperty<LeakageReading, int> Drops = new(
        "drops",
        "How many drops fell.",
        new CountShape(0, MostDrops),
        r => r.Drops!.Value
    );

    private static readonly ValueProperty<LeakageReading, Volume> Leaked = new(
        "collected",
        "What was collected.",
        RawShapes.Volume,
        r => r.Collected!.Value
    );

    private static readonly ValueProperty<LeakageReading, Volume> LeakStep = new(
        "resolution",
        "The smallest step that the glass can be read in.",
        RawShapes.Volume,
        r => r.Resolution!.Value
    );

    private static readonly ValueProperty<LeakageReading, Duration> Over = new(
        "over",
        "In which time.",
        RawShapes.Duration,
        r => r.Over
    );

    private static readonly ValueProperty<LeakageReading, BenchConditions> LeakConditions =
        BenchConditionsShape.Of<LeakageReading>(r => r.Conditions);

    private static readonly ValueProperty<CoilReading, ElectricResistance> Ohms = new(
        "resistance",
        "The resistance, less that of the leads.",
        RawShapes.Resistance,
        r => r.Coil.Measured
    )
    {
        Parameter = "measured",
    };

    private static readonly ValueProperty<CoilReading, Temperature> CoilTemperature = new(
        "temperature",
        "Temperature of the coil.",
        RawShapes.Temperature,
        r => r.Coil.MeasuredAt
    )
    {
        Parameter = "at",
    };

    private static readonly ValueProperty<CoilReading, ElectricResistance> OhmStep = new(
        "resolution",
        "The smallest step of the meter.",
        RawShapes.Resistance,
        r => r.Resolution
    );

    internal static ObjectShape<DeadTimeReading> DeadTime { get; } =
        new(
            "dead-time-reading",
            "A dead time at one voltage and pressure.",
            [Voltage, Dead, DeadStep, DeadConditions],
            f => new(f.Of(Voltage), f.Of(Dead), f.Of(DeadStep), f.Of(DeadConditions))
        );

    internal static Shape<LeakageReading> Leakage { get; } =
        new UnionShape<LeakageReading>(
            UnionCase<LeakageReading>.Of(
                new ObjectShape<LeakageReading>(
                    "counted-leakage",
                    "Drops that a shut injector let fall.",
                    [
                        new WordProperty<LeakageReading>("kind", "That drops were counted.", "drops"),
                        Drops,
                        Over,
                        LeakConditions,
                    ],
                    f => LeakageReading.FromDrops(f.Of(Drops), f.Of(Over), f.Of(LeakConditions))
                ),
                r => r.Drops.HasValue
            ),
            UnionCase<LeakageReading>.Of(
                new ObjectShape<LeakageReading>(
                    "collected-leakage",
                    "A volume that a shut injector let pass.",
                    [
                        new WordProperty<LeakageReading>("kind", "That a volume was collected.", "volume"),
                        Leaked,
                        LeakStep,
                        Over,
                        LeakConditions,
                    ],
                    f => LeakageReading.FromVolume(f.Of(Leaked), f.Of(LeakStep), f.Of(Over), f.Of(LeakConditions))
                ),
                r => !r.Drops.HasValue
            )
        );

    internal static ObjectShape<CoilReading> Coil { get; } =
        new(
            "coil-reading",
            "A resistance of a coil.",
            [Ohms, CoilTemperature, OhmStep],
            f => new(new(f.Of(Ohms), f.Of(CoilTemperature)), f.Of(OhmStep))
        );
}

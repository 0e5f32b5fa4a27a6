using FuelMath.Bench;
using UnitsNet;

namespace FuelMath;

/// <summary>Readings of dead time, leakage and coils.</summary>
internal static class OtherReadingShapes
{
    internal static ObjectShape<DeadTimeReading> DeadTime { get; } =
        new(o =>
        {
            o.Is("dead-time-reading", "A dead time at one voltage and pressure.");
            var voltage = o.Required("atInjector", RawShapes.Voltage.Positive, r => r.AtInjector)
                .Says("Voltage at the injector.");
            var deadTime = o.Required("deadTime", RawShapes.Duration, r => r.DeadTime).Says("The dead time.");
            var step = o.Required("resolution", RawShapes.Duration.Positive, r => r.Resolution)
                .Says("The smallest step it is given in.");
            var conditions = o.Conditions(r => r.Conditions);
            return f => new(f.Of(voltage), f.Of(deadTime), f.Of(step), f.Of(conditions));
        });

    internal static UnionShape<LeakageVerdict.Reading> Leakage { get; } =
        new(
            new(o =>
            {
                o.Is("counted-leakage", "Drops that a shut injector let fall.");
                o.Kind("drops", "That drops were counted.", r => r.Drops.HasValue);
                var drops = o.Required("drops", new CountShape(0, 1_000_000), r => r.Drops!.Value)
                    .Says("How many drops fell.");
                var over = Over(o);
                var conditions = o.Conditions(r => r.Conditions);
                return f => LeakageVerdict.Reading.FromDrops(f.Of(drops), f.Of(over), f.Of(conditions));
            }),
            new(o =>
            {
                o.Is("collected-leakage", "A volume that a shut injector let pass.");
                o.Kind("volume", "That a volume was collected.", r => !r.Drops.HasValue);
                var collected = o.Required("collected", RawShapes.Volume.NotNegative, r => r.Collected!.Value)
                    .Says("What was collected.");
                var step = o.Required("resolution", RawShapes.Volume.Positive, r => r.Resolution!.Value)
                    .Says("The smallest step that the glass can be read in.");
                var over = Over(o);
                var conditions = o.Conditions(r => r.Conditions);
                return f =>
                    LeakageVerdict.Reading.FromVolume(f.Of(collected), f.Of(step), f.Of(over), f.Of(conditions));
            })
        );

    internal static ObjectShape<CoilVerdict.Reading> Coil { get; } =
        new(o =>
        {
            o.Is("coil-reading", "A resistance of a coil.");
            var resistance = o.Required("resistance", RawShapes.Resistance.Positive, r => r.Coil.Measured, "measured")
                .Says("The resistance, less that of the leads.");
            var temperature = o.Required("temperature", RawShapes.Temperature, r => r.Coil.MeasuredAt, "at")
                .Says("Temperature of the coil.");
            var step = o.Required("resolution", RawShapes.Resistance.Positive, r => r.Resolution)
                .Says("The smallest step of the meter.");
            return f => new(new(f.Of(resistance), f.Of(temperature)), f.Of(step));
        });

    private static ValueProperty<LeakageVerdict.Reading, Duration> Over(ObjectBuilder<LeakageVerdict.Reading> o) =>
        o.Required("over", RawShapes.Duration.Positive, r => r.Over).Says("In which time.");
}

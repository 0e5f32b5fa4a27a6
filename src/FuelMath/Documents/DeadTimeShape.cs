using UnitsNet;

namespace FuelMath;

/// <summary>Dead time over voltage and, where it was measured, differential pressure.</summary>
internal static class DeadTimeShape
{
    internal static ObjectShape<DeadTimeTable> Shape { get; } =
        new(o =>
        {
            o.Is("dead-time", "Dead time of an injector.");
            var voltages = o.Required("voltages", QuantityShapes.Voltage.Positive.Knots(), t => t.Voltages)
                .Says("Voltages at the injector, rising.");
            var pressures = o.Required(
                    "differentialPressures",
                    QuantityShapes.PressureDifference.NotNegative.Knots(),
                    t => t.DifferentialPressures
                )
                .Says("Differential pressures, rising; one when the dead time was taken at one and is used at all.");
            var values = o.Required(
                    "values",
                    QuantityShapes.Duration.NotNegative.Rows(),
                    t => TableShapes.ToRows(t.Voltages.Length, t.DifferentialPressures.Length, t.ValueAt)
                )
                .Says("Dead times: a row for each voltage, in it one for each differential pressure.");
            var origins = o.Optional(
                    "origins",
                    ChoiceShape.Of(("read", false), ("estimated", true)).Rows(),
                    t =>
                        t.HoldsEstimates
                            ? TableShapes.ToRows(t.Voltages.Length, t.DifferentialPressures.Length, t.IsEstimated)
                            : [],
                    "estimated"
                )
                .Says("Whether each value was read or estimated from the others; left out when all were read.");
            var outside = o.Outside(t => t.Outside);
            var source = o.Source(t => t.Source);
            return f =>
            {
                Duration[,] times = TableShapes.ToTable(f.Of(values), values.Name);
                DeadTimeTable plain =
                    f.Of(pressures) is [var takenAt] && times.GetLength(1) == 1
                        ? DeadTimeTable.FromVoltage(
                            f.Of(voltages),
                            takenAt,
                            times.Cast<Duration>(),
                            f.Of(outside),
                            f.Of(source)
                        )
                        : new(f.Of(voltages), f.Of(pressures), times, f.Of(outside), f.Of(source));
                return f.Has(origins) ? plain.WithEstimates(TableShapes.ToTable(f.Of(origins), origins.Name)) : plain;
            };
        });
}

using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Dead time over voltage and, where it was measured, differential pressure.</summary>
internal static class DeadTimeShape
{
    private static readonly ValueProperty<DeadTimeTable, ImmutableArray<ElectricPotential>> Voltages = new(
        "voltages",
        "Voltages at the injector, rising.",
        TableShapes.Knots(QuantityShapes.Voltage),
        t => t.Voltages
    );

    private static readonly ValueProperty<DeadTimeTable, ImmutableArray<Pressure>> Pressures = new(
        "differentialPressures",
        "Differential pressures, rising; one when the dead time was taken at one and is used at all.",
        TableShapes.Knots(QuantityShapes.PressureDifference),
        t => t.DifferentialPressures
    );

    private static readonly ValueProperty<DeadTimeTable, ImmutableArray<ImmutableArray<Duration>>> Values = new(
        "values",
        "Dead times: a row for each voltage, in it one for each differential pressure.",
        TableShapes.Rows(QuantityShapes.Duration),
        t => TableShapes.ToRows(t.Voltages.Length, t.DifferentialPressures.Length, t.ValueAt)
    );

    private static readonly ValueProperty<DeadTimeTable, ImmutableArray<ImmutableArray<bool>>> Origins = new(
        "origins",
        "Whether each value was read or estimated from the others; left out when all were read.",
        TableShapes.Rows(new ChoiceShape<bool>(("read", false), ("estimated", true))),
        t => TableShapes.ToRows(t.Voltages.Length, t.DifferentialPressures.Length, t.IsEstimated),
        t => t.HoldsEstimates,
        []
    )
    {
        Parameter = "estimated",
    };

    private static readonly ValueProperty<DeadTimeTable, OutsideRange> Outside = TableShapes.Outside<DeadTimeTable>(t =>
        t.Outside
    );

    private static readonly ValueProperty<DeadTimeTable, DataSource> Source = SourceShape.Of<DeadTimeTable>(t =>
        t.Source
    );

    internal static ObjectShape<DeadTimeTable> Shape { get; } =
        new("dead-time", "Dead time of an injector.", [Voltages, Pressures, Values, Origins, Outside, Source], Make);

    private static DeadTimeTable Make(Fields<DeadTimeTable> f) =>
        f.Has(Origins) ? Plain(f).WithEstimates(TableShapes.ToTable(f.Of(Origins), Origins.Name)) : Plain(f);

    private static DeadTimeTable Plain(Fields<DeadTimeTable> f)
    {
        Duration[,] values = TableShapes.ToTable(f.Of(Values), Values.Name);
        return f.Of(Pressures) is [var takenAt] && values.GetLength(1) == 1
            ? DeadTimeTable.FromVoltage(f.Of(Voltages), takenAt, values.Cast<Duration>(), f.Of(Outside), f.Of(Source))
            : new(f.Of(Voltages), f.Of(Pressures), values, f.Of(Outside), f.Of(Source));
    }
}

using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Volumetric efficiency over speed and manifold pressure, over speed alone, or one value.</summary>
internal static class VolumetricEfficiencyShape
{
    private const string DependsOn = "What it depends on.";

    internal static UnionShape<VolumetricEfficiency> Shape { get; } =
        new(
            new(o =>
            {
                o.Is(
                    "volumetric-efficiency-table",
                    "Volumetric efficiency over speed and manifold pressure, at manifold density."
                );
                o.Kind("over speed and pressure", DependsOn, v => v.ManifoldPressures.Length > 1);
                var speeds = Speeds(o);
                var pressures = o.Required(
                        "manifoldPressures",
                        QuantityShapes.AbsolutePressure.Knots(),
                        v => v.ManifoldPressures
                    )
                    .Says("Absolute manifold pressures, rising.");
                var values = o.Required(
                        "values",
                        QuantityShapes.Ratio.Positive.Rows(),
                        v => TableShapes.ToRows(v.Speeds.Length, v.ManifoldPressures.Length, v.ValueAt)
                    )
                    .Says("A row for each speed, in it a value for each pressure.");
                var outside = o.Outside(v => v.Outside);
                var source = o.Source(v => v.Source);
                return f =>
                    new(
                        f.Of(speeds),
                        f.Of(pressures),
                        TableShapes.ToTable(f.Of(values), values.Name),
                        f.Of(outside),
                        f.Of(source)
                    );
            }),
            new(o =>
            {
                o.Is(
                    "volumetric-efficiency-over-speed",
                    "Volumetric efficiency over speed, taken at one manifold pressure and used at all."
                );
                o.Kind("over speed", DependsOn, v => v.ManifoldPressures.Length == 1);
                var speeds = Speeds(o);
                var takenAt = o.Required("takenAt", QuantityShapes.AbsolutePressure, v => v.ManifoldPressures[0])
                    .Says("The manifold pressure at which the values were taken.");
                var values = o.Required(
                        "values",
                        QuantityShapes.Ratio.Positive.Knots(),
                        v => [.. Enumerable.Range(0, v.Speeds.Length).Select(i => v.ValueAt(i, 0))]
                    )
                    .Says("A value for each speed.");
                var outside = o.Outside(v => v.Outside);
                var source = o.Source(v => v.Source);
                return f =>
                    VolumetricEfficiency.FromSpeeds(
                        f.Of(speeds),
                        f.Of(takenAt),
                        f.Of(values),
                        f.Of(outside),
                        f.Of(source)
                    );
            }),
            new(o =>
            {
                o.Is("constant-volumetric-efficiency", "One volumetric efficiency everywhere: a rough plan.");
                o.Kind("constant", DependsOn, v => v.ManifoldPressures.IsEmpty);
                var value = o.Required("value", QuantityShapes.Ratio.Positive, v => v.ValueAt(0, 0)).Says("The value.");
                var source = o.Source(v => v.Source);
                return f => VolumetricEfficiency.FromConstant(f.Of(value), f.Of(source));
            })
        );

    private static ValueProperty<VolumetricEfficiency, ImmutableArray<RotationalSpeed>> Speeds(
        ObjectBuilder<VolumetricEfficiency> o
    ) => o.Required("speeds", QuantityShapes.RotationalSpeed.Knots(), v => v.Speeds).Says("Engine speeds, rising.");
}

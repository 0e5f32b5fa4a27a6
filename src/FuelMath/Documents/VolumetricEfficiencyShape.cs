using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Volumetric efficiency over speed and manifold pressure, over speed alone, or one value.</summary>
internal static class VolumetricEfficiencyShape
{
    private static readonly ValueProperty<VolumetricEfficiency, ImmutableArray<RotationalSpeed>> Speeds = new(
        "speeds",
        "Engine speeds, rising.",
        TableShapes.Knots(QuantityShapes.RotationalSpeed),
        v => v.Speeds
    );

    private static readonly ValueProperty<VolumetricEfficiency, ImmutableArray<AbsolutePressure>> Pressures = new(
        "manifoldPressures",
        "Absolute manifold pressures, rising.",
        TableShapes.Knots(QuantityShapes.AbsolutePressure),
        v => v.ManifoldPressures
    );

    private static readonly ValueProperty<VolumetricEfficiency, ImmutableArray<ImmutableArray<Ratio>>> Rows = new(
        "values",
        "A row for each speed, in it a value for each pressure.",
        TableShapes.Rows(QuantityShapes.Ratio),
        v => TableShapes.ToRows(v.Speeds.Length, v.ManifoldPressures.Length, v.ValueAt)
    );

    private static readonly ValueProperty<VolumetricEfficiency, AbsolutePressure> TakenAt = new(
        "takenAt",
        "The manifold pressure at which the values were taken.",
        QuantityShapes.AbsolutePressure,
        v => v.ManifoldPressures[0]
    );

    private static readonly ValueProperty<VolumetricEfficiency, ImmutableArray<Ratio>> Values = new(
        "values",
        "A value for each speed.",
        TableShapes.Knots(QuantityShapes.Ratio),
        v => [.. Enumerable.Range(0, v.Speeds.Length).Select(i => v.ValueAt(i, 0))]
    );

    private static readonly ValueProperty<VolumetricEfficiency, Ratio> Value = new(
        "value",
        "The value.",
        QuantityShapes.Ratio,
        v => v.ValueAt(0, 0)
    );

    private static readonly ValueProperty<VolumetricEfficiency, OutsideRange> Outside =
        TableShapes.Outside<VolumetricEfficiency>(v => v.Outside);

    private static readonly ValueProperty<VolumetricEfficiency, DataSource> Source =
        SourceShape.Of<VolumetricEfficiency>(v => v.Source);

    internal static UnionShape<VolumetricEfficiency> Shape { get; } =
        new(
            UnionCase<VolumetricEfficiency>.Of(
                new ObjectShape<VolumetricEfficiency>(
                    "volumetric-efficiency-table",
                    "Volumetric efficiency over speed and manifold pressure, at manifold density.",
                    [Kind("over speed and pressure"), Speeds, Pressures, Rows, Outside, Source],
                    f =>
                        new(
                            f.Of(Speeds),
                            f.Of(Pressures),
                            TableShapes.ToTable(f.Of(Rows), Rows.Name),
                            f.Of(Outside),
                            f.Of(Source)
                        )
                ),
                v => v.ManifoldPressures.Length > 1
            ),
            UnionCase<VolumetricEfficiency>.Of(
                new ObjectShape<VolumetricEfficiency>(
                    "volumetric-efficiency-over-speed",
                    "Volumetric efficiency over speed, taken at one manifold pressure and used at all.",
                    [Kind("over speed"), Speeds, TakenAt, Values, Outside, Source],
                    f =>
                        VolumetricEfficiency.FromSpeeds(
                            f.Of(Speeds),
                            f.Of(TakenAt),
                            f.Of(Values),
                            f.Of(Outside),
                            f.Of(Source)
                        )
                ),
                v => v.ManifoldPressures.Length == 1
            ),
            UnionCase<VolumetricEfficiency>.Of(
                new ObjectShape<VolumetricEfficiency>(
                    "constant-volumetric-efficiency",
                    "One volumetric efficiency everywhere: a rough plan.",
                    [Kind("constant"), Value, Source],
                    f => VolumetricEfficiency.Constant(f.Of(Value), f.Of(Source))
                ),
                v => v.ManifoldPressures.IsEmpty
            )
        );

    private static WordProperty<VolumetricEfficiency> Kind(string word) => new("kind", "What it depends on.", word);
}

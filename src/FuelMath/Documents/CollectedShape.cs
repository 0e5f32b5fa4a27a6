using FuelMath.Bench;
using UnitsNet;

namespace FuelMath;

/// <summary>What a bench collected: a volume in a glass, or a mass on a scale, each with the step of the instrument.</summary>
internal static class CollectedShape
{
    private static readonly ValueProperty<Box, Volume> Volume = new(
        "amount",
        "The volume that was collected.",
        RawShapes.Volume,
        b => b.Fuel.Volume!.Value
    )
    {
        Parameter = "collected",
    };

    private static readonly ValueProperty<Box, Volume> VolumeStep = new(
        "resolution",
        "The smallest step that the glass can be read in.",
        RawShapes.Volume,
        b => b.Fuel.VolumeResolution!.Value
    );

    private static readonly ValueProperty<Box, Mass> Mass = new(
        "amount",
        "The mass that was collected.",
        RawShapes.Mass,
        b => b.Fuel.Mass!.Value
    )
    {
        Parameter = "collected",
    };

    private static readonly ValueProperty<Box, Mass> MassStep = new(
        "resolution",
        "The smallest step of the scale.",
        RawShapes.Mass,
        b => b.Fuel.MassResolution!.Value
    );

    internal static Shape<Box> Shape { get; } =
        new UnionShape<Box>(
            UnionCase<Box>.Of(
                new ObjectShape<Box>(
                    "collected-volume",
                    "A volume that was collected.",
                    [new WordProperty<Box>("kind", "That it is a volume.", "volume"), Volume, VolumeStep],
                    f => new(CollectedFuel.FromVolume(f.Of(Volume), f.Of(VolumeStep)))
                ),
                b => b.Fuel.IsByVolume
            ),
            UnionCase<Box>.Of(
                new ObjectShape<Box>(
                    "collected-mass",
                    "A mass that was collected.",
                    [new WordProperty<Box>("kind", "That it is a mass.", "mass"), Mass, MassStep],
                    f => new(CollectedFuel.FromMass(f.Of(Mass), f.Of(MassStep)))
                ),
                b => !b.Fuel.IsByVolume
            )
        );

    /// <summary>Holds the value, which is a struct, for a union of objects.</summary>
    internal sealed record Box(CollectedFuel Fuel);
}

using FuelMath.Bench;

namespace FuelMath;

/// <summary>
/// The fuel collected on a bench: a volume in a measuring glass or a mass on a scale, each with the resolution of the
/// instrument.
/// </summary>
internal static class CollectedShape
{
    internal static Shape<CollectedFuel> Shape { get; } =
        new UnionShape<CollectedFuel>(
            new(o =>
            {
                o.Is("collected-volume", "A volume that was collected.");
                o.Kind("volume", "That it is a volume.", b => b.IsByVolume);
                var volume = o.Required(
                        "amount",
                        RawShapes.Volume.Positive,
                        b => b.Volume!.Value,
                        parameter: "collected"
                    )
                    .Says("The volume that was collected.");
                var volumeStep = o.Required("resolution", RawShapes.Volume.Positive, b => b.VolumeResolution!.Value)
                    .Says("The smallest step that the glass can be read in.");
                return f => CollectedFuel.FromVolume(f.Of(volume), f.Of(volumeStep));
            }),
            new(o =>
            {
                o.Is("collected-mass", "A mass that was collected.");
                o.Kind("mass", "That it is a mass.", b => !b.IsByVolume);
                var mass = o.Required("amount", RawShapes.Mass.Positive, b => b.Mass!.Value, parameter: "collected")
                    .Says("The mass that was collected.");
                var massStep = o.Required("resolution", RawShapes.Mass.Positive, b => b.MassResolution!.Value)
                    .Says("The smallest step of the scale.");
                return f => CollectedFuel.FromMass(f.Of(mass), f.Of(massStep));
            })
        );
}

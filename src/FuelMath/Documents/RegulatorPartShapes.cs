using UnitsNet;

namespace FuelMath;

/// <summary>What both types of regulator are described with.</summary>
internal static class RegulatorPartShapes
{
    private static readonly ValueProperty<RegulatorRestriction, Pressure> Loss = new(
        "pressureLoss",
        "Upstream less return-line pressure.",
        QuantityShapes.PressureDifference,
        r => r.PressureLoss
    );

    private static readonly ValueProperty<RegulatorRestriction, VolumeFlow> Flow = new(
        "flow",
        "Volume flow at that loss.",
        QuantityShapes.VolumeFlow,
        r => r.Flow
    );

    private static readonly ValueProperty<RegulatorRestriction, Density> FluidDensity = new(
        "density",
        "Density of the fluid.",
        QuantityShapes.Density,
        r => r.Density
    );

    internal static ObjectShape<RegulatorRestriction> Restriction { get; } =
        new(
            "regulator-restriction",
            "What a regulator loses when open to its stop.",
            [Loss, Flow, FluidDensity],
            f => new(f.Of(Loss), f.Of(Flow), f.Of(FluidDensity))
        );

    internal static ChoiceShape<RegulatorReference> ReferenceWords { get; } =
        new(
            ("manifold", RegulatorReference.Manifold),
            ("ambient", RegulatorReference.Ambient),
            ("tank", RegulatorReference.Tank)
        );
}

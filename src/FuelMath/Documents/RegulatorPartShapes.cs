using UnitsNet;

namespace FuelMath;

/// <summary>Shapes common to both types of regulator.</summary>
internal static class RegulatorPartShapes
{
    internal static ObjectShape<RegulatorMechanics.Restriction> Restriction { get; } =
        new(o =>
        {
            o.Is("regulator-restriction", "What a regulator loses when open to its stop.");
            var loss = o.Required("pressureLoss", QuantityShapes.PressureDifference.Positive, r => r.PressureLoss)
                .Says("Upstream less return-line pressure.");
            var flow = o.Required("flow", QuantityShapes.VolumeFlow.Positive, r => r.Flow)
                .Says("Volume flow at that loss.");
            var fluidDensity = o.Required("density", QuantityShapes.Density.Positive, r => r.Density)
                .Says("Density of the fluid.");
            return f => new(f.Of(loss), f.Of(flow), f.Of(fluidDensity));
        });

    internal static ChoiceShape<RegulatorReference> ReferenceWords { get; } =
        new(
            ("manifold", RegulatorReference.Manifold),
            ("ambient", RegulatorReference.Ambient),
            ("tank", RegulatorReference.Tank)
        );
}

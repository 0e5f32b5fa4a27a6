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

    /// <summary>Adds diaphragm, seat and the loss when fully open.</summary>
    internal static Func<Fields<T>, RegulatorMechanics> Mechanics<T>(ObjectBuilder<T> o, Func<T, RegulatorMechanics> of)
    {
        var diaphragm = o.Required("diaphragm", QuantityShapes.Area.Positive, r => of(r).Diaphragm)
            .Says("Effective area of the diaphragm.");
        var seat = o.Required("seat", QuantityShapes.Area.Positive, r => of(r).Seat).Says("Area of the seat.");
        var fullyOpen = o.Required("fullyOpen", Restriction, r => of(r).FullyOpen)
            .Says("What it loses when open to its stop.");
        return f => new(f.Of(diaphragm), f.Of(seat), f.Of(fullyOpen));
    }
}

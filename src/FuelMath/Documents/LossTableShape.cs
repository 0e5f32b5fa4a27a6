using UnitsNet;

namespace FuelMath;

/// <summary>A part known by readings of its pressure loss only.</summary>
internal static class LossTableShape
{
    private static readonly ObjectShape<LossTable.Point> Reading = new(o =>
    {
        o.Is("measured-loss", "Pressure lost at a flow.");
        var flow = o.Required("flow", QuantityShapes.VolumeFlow.Positive, r => r.Flow).Says("Volume flow.");
        var loss = o.Required("pressureLoss", QuantityShapes.PressureDifference.Positive, r => r.PressureLoss)
            .Says("Pressure lost.");
        return f => new(f.Of(flow), f.Of(loss));
    });

    internal static ObjectShape<LossTable> Shape { get; } =
        new(o =>
        {
            o.Is("loss-table", "A part known by readings of its pressure loss only.");
            var name = o.Named(t => t.Name);
            var readings = o.Required("readings", Reading.List(1, 1000), t => t.Readings)
                .Says("One or more readings, flow and loss rising.");
            var density = o.Required("density", QuantityShapes.Density.Positive, t => t.Density)
                .Says("Density of the fluid that was measured with.");
            var viscosity = o.Required("viscosity", QuantityShapes.DynamicViscosity.Positive, t => t.Viscosity)
                .Says("Dynamic viscosity of that fluid.");
            var source = o.Source(t => t.Source);
            return f => new(f.Of(name), f.Of(readings), f.Of(density), f.Of(viscosity), f.Of(source));
        });
}

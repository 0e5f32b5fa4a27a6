using UnitsNet;

namespace FuelMath;

/// <summary>A node of a network.</summary>
internal static class NetworkNodeShape
{
    internal static UnionShape<NetworkNode> Shape { get; } =
        new(
            new(o =>
            {
                o.Is("fixed-pressure-node", "A node whose pressure is given.");
                o.Kind("fixed pressure", n => n.IsFixed);
                var name = o.Named(n => n.Name);
                var pressure = o.Required(
                        "pressure",
                        QuantityShapes.GaugePressure,
                        n => new GaugePressure(n.PressureSi)
                    )
                    .Says("Its pressure.");
                var elevation = Elevation(o);
                o.Place(n => n.Forward, n => n.Left, (n, forward, left) => n.AtPlace(forward, left));
                return f => NetworkNode.FixedPressure(f.Of(name), f.Of(pressure), f.Of(elevation));
            }),
            new(o =>
            {
                o.Is("junction-node", "A node whose pressure is sought.");
                o.Kind("junction", n => !n.IsFixed);
                var name = o.Named(n => n.Name);
                var elevation = Elevation(o);
                var draw = o.Optional("draw", QuantityShapes.VolumeFlow, n => n.DrawSi == 0 ? null : n.Draw)
                    .Says("Volume flow drawn; nothing when left out, negative feeds the network.");
                o.Place(n => n.Forward, n => n.Left, (n, forward, left) => n.AtPlace(forward, left));
                return f => NetworkNode.Junction(f.Of(name), f.Of(elevation), f.Of(draw) ?? SiUnits.VolumeFlow(0));
            })
        );

    private static ValueProperty<NetworkNode, Length> Elevation(ObjectBuilder<NetworkNode> o) =>
        o.Required("elevation", QuantityShapes.Length, n => n.Elevation)
            .Says("Height above any level that all nodes share.");
}

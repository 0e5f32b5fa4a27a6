using UnitsNet;

namespace FuelMath;

/// <summary>A node of a network.</summary>
internal static class NetworkNodeShape
{
    /// <summary>A tank that a lift pump fills, in a network and in a system.</summary>
    internal static readonly ObjectShape<Network.Node> SurgeTank = new(o =>
    {
        o.Is("surge-tank", "A tank that a lift pump fills from another one, and that overflows into it.");
        o.Kind("surge tank", n => n.UsableVolume is not null);
        var name = o.Named(n => n.Name);
        var pressure = Pressure(o);
        var elevation = Elevation(o);
        o.Place(n => n.Forward, n => n.Left, (n, forward, left) => n.AtPlace(forward, left));
        var volume = o.Required("usableVolume", QuantityShapes.Volume.Positive, n => n.UsableVolume!.Value)
            .Says("What can be drawn from it when full before its pump sucks air.");
        return f => Network.Node.SurgeTank(f.Of(name), f.Of(pressure), f.Of(elevation), f.Of(volume));
    });

    internal static UnionShape<Network.Node> Shape { get; } =
        new(
            new(o =>
            {
                o.Is("fixed-pressure-node", "A node whose pressure is given.");
                o.Kind("fixed pressure", n => n is { IsFixed: true, UsableVolume: null });
                var name = o.Named(n => n.Name);
                var pressure = Pressure(o);
                var elevation = Elevation(o);
                o.Place(n => n.Forward, n => n.Left, (n, forward, left) => n.AtPlace(forward, left));
                return f => Network.Node.FixedPressure(f.Of(name), f.Of(pressure), f.Of(elevation));
            }),
            SurgeTank,
            new(o =>
            {
                o.Is("junction-node", "A node whose pressure is sought.");
                o.Kind("junction", n => !n.IsFixed);
                var name = o.Named(n => n.Name);
                var elevation = Elevation(o);
                var draw = o.Optional("draw", QuantityShapes.VolumeFlow, n => n.DrawSi == 0 ? null : n.Draw)
                    .Says("Volume flow drawn; nothing when left out, negative feeds the network.");
                o.Place(n => n.Forward, n => n.Left, (n, forward, left) => n.AtPlace(forward, left));
                return f => Network.Node.Junction(f.Of(name), f.Of(elevation), f.Of(draw) ?? SiUnits.VolumeFlow(0));
            })
        );

    internal static ValueProperty<Network.Node, Length> Elevation(ObjectBuilder<Network.Node> o) =>
        o.Required("elevation", QuantityShapes.Length, n => n.Elevation)
            .Says("Height above a level that all nodes share; the fuel level for a tank.");

    internal static ValueProperty<Network.Node, GaugePressure> Pressure(ObjectBuilder<Network.Node> o) =>
        o.Required("pressure", QuantityShapes.GaugePressure, n => new GaugePressure(n.PressureSi))
            .Says("Gauge pressure, above the fuel in a tank; zero for a vented one.");
}

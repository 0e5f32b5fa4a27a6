namespace FuelMath;

/// <summary>The fuel path: its nodes and its lines.</summary>
internal static class PlanShape
{
    private const int Most = 1000;

    private static readonly UnionShape<Network.Node> Node = new(
        new(o =>
        {
            o.Is("tank", "Fuel at a known pressure.");
            o.Kind("tank", n => n is { IsFixed: true, UsableVolume: null });
            var name = o.Named(n => n.Name);
            var pressure = NetworkNodeShape.Pressure(o);
            var elevation = NetworkNodeShape.Elevation(o);
            o.Place(n => n.Forward, n => n.Left, (n, forward, left) => n.AtPlace(forward, left));
            return f => Network.Node.FixedPressure(f.Of(name), f.Of(pressure), f.Of(elevation));
        }),
        NetworkNodeShape.SurgeTank,
        new(o =>
        {
            o.Is("junction", "A place where parts meet.");
            o.Kind("junction", n => !n.IsFixed);
            var name = o.Named(n => n.Name);
            var elevation = NetworkNodeShape.Elevation(o);
            o.Place(n => n.Forward, n => n.Left, (n, forward, left) => n.AtPlace(forward, left));
            return f => Network.Node.Junction(f.Of(name), f.Of(elevation));
        })
    );

    internal static ObjectShape<Network> Shape { get; } =
        new(o =>
        {
            o.Is("fuel-path", "The fuel path: its nodes and the parts between them.");
            var nodes = o.Required("nodes", Node.List(1, Most), p => p.Nodes)
                .Says("Places where parts meet, at least one of them a tank.");
            var lines = o.Required("lines", LineShape.Shape.List(1, Most), p => p.Lines)
                .Says("Parts between the nodes.");
            return f => new(f.Of(nodes), f.Of(lines));
        });
}

using UnitsNet;

namespace FuelMath;

/// <summary>The fuel path: its nodes and its lines.</summary>
internal static class PlanShape
{
    private const int Most = 1000;

    private static readonly UnionShape<PlanNode> Node = new(
        new(o =>
        {
            o.Is("tank", "Fuel at a known pressure.");
            o.Kind("tank", n => n is { IsTank: true, UsableVolume: null });
            var (name, pressure, elevation) = Tank(o);
            o.Place(n => n.Forward, n => n.Left, (n, forward, left) => n.AtPlace(forward, left));
            return f => PlanNode.Tank(f.Of(name), f.Of(pressure), f.Of(elevation));
        }),
        new(o =>
        {
            o.Is("surge-tank", "A tank that a lift pump fills from another one, and that overflows into it.");
            o.Kind("surge tank", n => n.UsableVolume is not null);
            var (name, pressure, elevation) = Tank(o);
            o.Place(n => n.Forward, n => n.Left, (n, forward, left) => n.AtPlace(forward, left));
            var volume = o.Required("usableVolume", QuantityShapes.Volume, n => n.UsableVolume!.Value)
                .Says("What can be drawn from it when full before its pump sucks air.");
            return f => PlanNode.SurgeTank(f.Of(name), f.Of(pressure), f.Of(elevation), f.Of(volume));
        }),
        new(o =>
        {
            o.Is("junction", "A place where parts meet.");
            o.Kind("junction", n => !n.IsTank);
            var name = Name(o);
            var elevation = Elevation(o);
            o.Place(n => n.Forward, n => n.Left, (n, forward, left) => n.AtPlace(forward, left));
            return f => PlanNode.Junction(f.Of(name), f.Of(elevation));
        })
    );

    internal static ObjectShape<FuelPlan> Shape { get; } =
        new(o =>
        {
            o.Is("fuel-path", "The fuel path: its nodes and the parts between them.");
            var nodes = o.Required("nodes", Node.List(1, Most), p => p.Nodes)
                .Says("Places where parts meet, at least one of them a tank.");
            var lines = o.Required("lines", LineShape.Shape.List(1, Most), p => p.Lines)
                .Says("Parts between the nodes.");
            return f => new(f.Of(nodes), f.Of(lines));
        });

    private static (
        ValueProperty<PlanNode, string>,
        ValueProperty<PlanNode, GaugePressure>,
        ValueProperty<PlanNode, Length>
    ) Tank(ObjectBuilder<PlanNode> o) =>
        (
            Name(o),
            o.Required("pressure", QuantityShapes.GaugePressure, n => n.TankPressure)
                .Says("Gauge pressure above the fuel; zero for a vented tank."),
            Elevation(o)
        );

    private static ValueProperty<PlanNode, string> Name(ObjectBuilder<PlanNode> o) =>
        o.Required("name", TextShape.Name, n => n.Name).Says("The name by which lines and injectors refer to it.");

    private static ValueProperty<PlanNode, Length> Elevation(ObjectBuilder<PlanNode> o) =>
        o.Required("elevation", QuantityShapes.Length, n => n.Elevation)
            .Says("Height above a datum that all nodes share; the fuel level for a tank.");
}

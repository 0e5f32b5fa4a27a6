using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The fuel path: its nodes and its lines.</summary>
internal static class PlanShape
{
    private const int Most = 1000;

    private static readonly ValueProperty<PlanNode, string> Name = new(
        "name",
        "The name by which lines and injectors refer to it.",
        TextShape.Name,
        n => n.Name
    );

    private static readonly ValueProperty<PlanNode, GaugePressure> Pressure = new(
        "pressure",
        "Gauge pressure above the fuel; zero for a vented tank.",
        QuantityShapes.GaugePressure,
        n => n.TankPressure
    );

    private static readonly ValueProperty<PlanNode, Length> Elevation = new(
        "elevation",
        "Height above a datum that all nodes share; the fuel level for a tank.",
        QuantityShapes.Length,
        n => n.Elevation
    );

    private static readonly ValueProperty<PlanNode, Length> Forward = Place(
        "forward",
        "How far ahead of a place that all nodes share; it counts where the vehicle speeds up.",
        n => n.ForwardSi
    );

    private static readonly ValueProperty<PlanNode, Length> Left = Place(
        "left",
        "How far to the left of that place.",
        n => n.LeftSi
    );

    private static readonly ValueProperty<PlanNode, Volume> UsableVolume = new(
        "usableVolume",
        "What can be drawn from it when full before its pump sucks air.",
        QuantityShapes.Volume,
        n => n.UsableVolume!.Value
    );

    private static readonly UnionShape<PlanNode> Node = new(
        UnionCase<PlanNode>.Of(
            new ObjectShape<PlanNode>(
                "tank",
                "Fuel at a known pressure.",
                [Kind("tank"), Name, Pressure, Elevation, Forward, Left],
                f => PlanNode.Tank(f.Of(Name), f.Of(Pressure), f.Of(Elevation)).AtPlace(f.Of(Forward), f.Of(Left))
            ),
            n => n is { IsTank: true, UsableVolume: null }
        ),
        UnionCase<PlanNode>.Of(
            new ObjectShape<PlanNode>(
                "surge-tank",
                "A tank that a lift pump fills from another one, and that overflows into it.",
                [Kind("surge tank"), Name, Pressure, Elevation, Forward, Left, UsableVolume],
                f =>
                    PlanNode
                        .SurgeTank(f.Of(Name), f.Of(Pressure), f.Of(Elevation), f.Of(UsableVolume))
                        .AtPlace(f.Of(Forward), f.Of(Left))
            ),
            n => n.UsableVolume is not null
        ),
        UnionCase<PlanNode>.Of(
            new ObjectShape<PlanNode>(
                "junction",
                "A place where parts meet.",
                [Kind("junction"), Name, Elevation, Forward, Left],
                f => PlanNode.Junction(f.Of(Name), f.Of(Elevation)).AtPlace(f.Of(Forward), f.Of(Left))
            ),
            n => !n.IsTank
        )
    );

    private static readonly ValueProperty<FuelPlan, ImmutableArray<PlanNode>> Nodes = new(
        "nodes",
        "Places where parts meet, at least one of them a tank.",
        new ListShape<PlanNode>(Node, 1, Most),
        p => p.Nodes
    );

    private static readonly ValueProperty<FuelPlan, ImmutableArray<Line>> Lines = new(
        "lines",
        "Parts between the nodes.",
        new ListShape<Line>(LineShape.Shape, 1, Most),
        p => p.Lines
    );

    internal static ObjectShape<FuelPlan> Shape { get; } =
        new(
            "fuel-path",
            "The fuel path: its nodes and the parts between them.",
            [Nodes, Lines],
            f => new(f.Of(Nodes), f.Of(Lines))
        );

    private static ValueProperty<PlanNode, Length> Place(string name, string description, Func<PlanNode, double> get) =>
        new(name, description, QuantityShapes.Length, n => SiUnits.Length(get(n)), n => get(n) != 0, SiUnits.Length(0));

    private static WordProperty<PlanNode> Kind(string word) => new("kind", "What it is.", word);
}

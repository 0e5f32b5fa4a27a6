using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A network: its fluid, nodes and links.</summary>
internal static class NetworkShape
{
    /// <summary>What fits into a list. Even a tangle of so many links takes less than a tenth of a second to prepare.</summary>
    private const int Most = 4000;

    private static readonly ValueProperty<Network, Density> Density = new(
        "density",
        "Density of the fluid.",
        QuantityShapes.Density,
        n => n.Density
    );

    private static readonly ValueProperty<Network, DynamicViscosity> Dynamic = new(
        "viscosity",
        "Dynamic viscosity of the fluid.",
        QuantityShapes.DynamicViscosity,
        n => n.Viscosity,
        _ => true,
        default
    );

    private static readonly ValueProperty<Network, KinematicViscosity> Kinematic = new(
        "kinematicViscosity",
        "Kinematic viscosity of the fluid, in place of the dynamic one; it is written as that.",
        QuantityShapes.KinematicViscosity,
        _ => default,
        _ => false,
        default
    )
    {
        Parameter = "viscosity",
    };

    private static readonly ValueProperty<Network, VehicleAcceleration> Acceleration = new(
        "acceleration",
        "How the vehicle that carries it speeds up; rest when left out.",
        VehicleAccelerationShape.Shape,
        n => n.Acceleration,
        n => !n.Acceleration.IsRest,
        default
    );

    private static readonly ValueProperty<Network, ImmutableArray<NetworkNode>> Nodes = new(
        "nodes",
        "Its nodes, at least one of fixed pressure.",
        new ListShape<NetworkNode>(NetworkNodeShape.Shape, 1, Most),
        n => n.Nodes
    );

    private static readonly ValueProperty<Network, ImmutableArray<NetworkLink>> Links = new(
        "links",
        "The links between them.",
        new ListShape<NetworkLink>(NetworkLinkShape.Shape, 1, Most),
        n => n.Links
    );

    internal static ObjectShape<Network> Shape { get; } =
        new(
            "network",
            "A network of pipes, pumps, valves and openings, filled with one fluid.",
            [
                new WordProperty<Network>("document", "What the document is.", "network"),
                new WordProperty<Network>("version", "The version of its form.", "1"),
                Density,
                Dynamic,
                Kinematic,
                Acceleration,
                Nodes,
                Links,
            ],
            f => Make(f).Under(f.Of(Acceleration))
        )
        {
            ExactlyOne = [Dynamic.Name, Kinematic.Name],
        };

    private static Network Make(Fields<Network> f) =>
        f.Has(Dynamic)
            ? Network.FromDynamicViscosity(f.Of(Density), f.Of(Dynamic), f.Of(Nodes), f.Of(Links))
            : new(f.Of(Density), f.Of(Kinematic), f.Of(Nodes), f.Of(Links));
}

using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A network: its nodes and lines, and what it is solved at.</summary>
internal static class NetworkShape
{
    /// <summary>What fits into a list. Even a tangle of so many lines takes less than a tenth of a second to prepare.</summary>
    internal const int Most = 4000;

    private static readonly WordProperty<Network> Version = new("version", "The version of its form.", "2");

    private static readonly ValueProperty<Network, NetworkConditions> Conditions = new(
        "conditions",
        "What it is solved at; when left out, that is said with each solve.",
        ConditionsShape.Shape,
        n => n.Conditions!,
        n => n.Conditions is not null,
        null!
    );

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

    private static readonly ValueProperty<Network, ImmutableArray<Line>> Lines = new(
        "lines",
        "The lines between them, each with its part.",
        new ListShape<Line>(LineShape.Shape, 1, Most),
        n => n.Lines
    );

    internal static ObjectShape<Network> Shape { get; } =
        new(
            "network",
            "A network of lines with parts in them.",
            [
                new WordProperty<Network>("document", "What the document is.", "network"),
                Version,
                Conditions,
                Acceleration,
                Nodes,
                Lines,
            ],
            Make
        );

    /// <summary>Reads a network.</summary>
    /// <exception cref="DocumentException">It is none, or in the form of version 1; the message says what to change.</exception>
    internal static Network Read(JsonItem item) =>
        item.Member(Version.Name) is { Text: "1" } old
            ? throw old.Refuse(
                "Must be \"2\". Version 1 described links by kind; now \"conditions\" hold \"density\" and \"viscosity\", and \"links\" are \"lines\", each with its part under one word in place of \"kind\": \"pipe\" (\"check pipe\" with \"checkValve\": \"present\"), \"curvedPipe\", \"plainFitting\", \"plainFilter\", \"plainPump\" (its \"switch\" beside it), \"plainBypassRegulator\", \"plainReducingRegulator\", \"checkValve\" (\"relief valve\", too), \"nozzle\" (\"orifice\") or \"injectorDraw\" (\"capped orifice\"). A part that loses with the fluid names its \"density\", a filter its \"viscosity\" too: those of the network"
            )
            : Shape.Read(item);

    private static Network Make(Fields<Network> f)
    {
        Network network = new Network(f.Of(Nodes), f.Of(Lines)).Under(f.Of(Acceleration));
        return f.Has(Conditions) ? network.At(f.Of(Conditions)) : network;
    }
}

using UnitsNet;

namespace FuelMath;

/// <summary>A node of a network.</summary>
internal static class NetworkNodeShape
{
    private static readonly ValueProperty<NetworkNode, string> Name = new(
        "name",
        "Its name.",
        TextShape.Name,
        n => n.Name
    );

    private static readonly ValueProperty<NetworkNode, Length> Elevation = new(
        "elevation",
        "Height above any level that all nodes share.",
        QuantityShapes.Length,
        n => n.Elevation
    );

    private static readonly ValueProperty<NetworkNode, GaugePressure> Pressure = new(
        "pressure",
        "Its pressure.",
        QuantityShapes.GaugePressure,
        n => new GaugePressure(n.PressureSi)
    );

    private static readonly ValueProperty<NetworkNode, VolumeFlow> Draw = new(
        "draw",
        "Volume flow drawn; nothing when left out, negative feeds the network.",
        QuantityShapes.VolumeFlow,
        n => n.Draw,
        n => n.DrawSi != 0,
        SiUnits.VolumeFlow(0)
    );

    private static readonly ValueProperty<NetworkNode, Length> Forward = Place(
        "forward",
        "How far ahead of a place that all nodes share; it counts where the vehicle speeds up.",
        n => n.Forward
    );

    private static readonly ValueProperty<NetworkNode, Length> Left = Place(
        "left",
        "How far to the left of that place.",
        n => n.Left
    );

    internal static UnionShape<NetworkNode> Shape { get; } =
        new(
            UnionCase<NetworkNode>.Of(
                new ObjectShape<NetworkNode>(
                    "fixed-pressure-node",
                    "A node whose pressure is given.",
                    [Kind("fixed pressure"), Name, Pressure, Elevation, Forward, Left],
                    f =>
                        NetworkNode
                            .FixedPressure(f.Of(Name), f.Of(Pressure), f.Of(Elevation))
                            .AtPlace(f.Of(Forward), f.Of(Left))
                ),
                n => n.IsFixed
            ),
            UnionCase<NetworkNode>.Of(
                new ObjectShape<NetworkNode>(
                    "junction-node",
                    "A node whose pressure is sought.",
                    [Kind("junction"), Name, Elevation, Draw, Forward, Left],
                    f =>
                        NetworkNode.Junction(f.Of(Name), f.Of(Elevation), f.Of(Draw)).AtPlace(f.Of(Forward), f.Of(Left))
                ),
                n => !n.IsFixed
            )
        );

    private static ValueProperty<NetworkNode, Length> Place(
        string name,
        string description,
        Func<NetworkNode, Length> get
    ) => new(name, description, QuantityShapes.Length, get, n => get(n).InSi() != 0, SiUnits.Length(0));

    private static WordProperty<NetworkNode> Kind(string word) => new("kind", "What it is.", word);
}

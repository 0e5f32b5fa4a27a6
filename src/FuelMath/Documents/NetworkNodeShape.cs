using FuelMath.Internal;
using FuelMath.Networks;
using FuelMath.Quantities;
using FuelMath.Shapes;
using UnitsNet;

namespace FuelMath.Documents;

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

    internal static UnionShape<NetworkNode> Shape { get; } =
        new(
            UnionCase<NetworkNode>.Of(
                new ObjectShape<NetworkNode>(
                    "fixed-pressure-node",
                    "A node whose pressure is given.",
                    [Kind("fixed pressure"), Name, Pressure, Elevation],
                    f => NetworkNode.FixedPressure(f.Of(Name), f.Of(Pressure), f.Of(Elevation))
                ),
                n => n.IsFixed
            ),
            UnionCase<NetworkNode>.Of(
                new ObjectShape<NetworkNode>(
                    "junction-node",
                    "A node whose pressure is sought.",
                    [Kind("junction"), Name, Elevation, Draw],
                    f => NetworkNode.Junction(f.Of(Name), f.Of(Elevation), f.Of(Draw))
                ),
                n => !n.IsFixed
            )
        );

    private static WordProperty<NetworkNode> Kind(string word) => new("kind", "What it is.", word);
}

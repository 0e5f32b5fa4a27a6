using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A circuit: wires there and back, and the contacts between them.</summary>
internal static class CircuitShape
{
    internal const int MostWires = 100;

    private static readonly ValueProperty<Conductor, WireSize> Size = new(
        "size",
        "Size of the wire: a gauge such as \"12 AWG\" or \"1/0 AWG\", or an area such as \"2.5 mm2\".",
        WireSizeShape.Instance,
        c => c.Size
    );

    private static readonly ValueProperty<Conductor, int> Wires = new(
        "wires",
        "Equal wires side by side; one when left out.",
        new CountShape(1, MostWires),
        c => c.Wires,
        c => c.Wires != 1,
        1
    );

    private static readonly ValueProperty<Conductor, Length> Length = new(
        "length",
        "Its length, one way.",
        QuantityShapes.Length,
        c => c.Length
    );

    private static readonly ValueProperty<Conductor, Temperature> Temperature = new(
        "temperature",
        "Temperature of the copper.",
        QuantityShapes.Temperature,
        c => c.Temperature
    );

    internal static ObjectShape<Conductor> Wire { get; } =
        new(
            "conductor",
            "A length of copper wire.",
            [Size, Wires, Length, Temperature],
            f => Conductor.FromParallel(f.Of(Wires), f.Of(Size), f.Of(Length), f.Of(Temperature))
        );

    private static readonly ValueProperty<Circuit, string> Name = new("name", "Its name.", TextShape.Name, c => c.Name);

    private static readonly ValueProperty<Circuit, ImmutableArray<Conductor>> Supply = new(
        "supply",
        "From the source to the load, in series.",
        new ListShape<Conductor>(Wire, 0, MostWires),
        c => c.Supply
    );

    private static readonly ValueProperty<Circuit, ImmutableArray<Conductor>> Ground = new(
        "ground",
        "From the load back to the source, in series.",
        new ListShape<Conductor>(Wire, 0, MostWires),
        c => c.Ground
    );

    private static readonly ValueProperty<Circuit, ElectricResistance> Contacts = new(
        "contacts",
        "All terminals, switches, relays and fuses together.",
        QuantityShapes.SmallResistance,
        c => c.Contacts
    );

    internal static ObjectShape<Circuit> Shape { get; } =
        new(
            "circuit",
            "The way from a source to a load and back.",
            [Name, Supply, Ground, Contacts],
            f => new(f.Of(Name), f.Of(Supply), f.Of(Ground), f.Of(Contacts))
        );
}

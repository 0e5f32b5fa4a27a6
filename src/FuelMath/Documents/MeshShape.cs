using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Supply and ground as a mesh of named nodes.</summary>
internal static class MeshShape
{
    private const int Most = 300;

    private static readonly ValueProperty<WiringMesh, string> Name = new(
        "name",
        "Its name.",
        TextShape.Name,
        m => m.Name
    );

    private static readonly ValueProperty<WiringMesh, string> Reference = new(
        "reference",
        "The node whose potential counts as zero.",
        TextShape.Name,
        m => m.Reference
    );

    private static readonly ValueProperty<WiringMesh, ImmutableArray<WiringBranch>> Branches = new(
        "branches",
        "Wires and contacts between nodes.",
        new ListShape<WiringBranch>(Branch(), 0, Most),
        m => m.Branches
    );

    private static readonly ValueProperty<WiringMesh, ImmutableArray<WiringSource>> Sources = new(
        "sources",
        "Batteries, alternators and held voltages.",
        new ListShape<WiringSource>(Source(), 1, Most),
        m => m.Sources
    );

    private static readonly ValueProperty<WiringMesh, ImmutableArray<WiringLoad>> Loads = new(
        "loads",
        "What draws current.",
        new ListShape<WiringLoad>(Load(), 0, Most),
        m => m.Loads
    );

    internal static ObjectShape<WiringMesh> Shape { get; } =
        new(
            "wiring-mesh",
            "Supply and ground as a mesh.",
            [Name, Reference, Branches, Sources, Loads],
            f => new(f.Of(Name), f.Of(Reference), f.Of(Branches), f.Of(Sources), f.Of(Loads))
        );

    private static ObjectShape<WiringBranch> Branch()
    {
        ValueProperty<WiringBranch, string> name = new("name", "Its name.", TextShape.Name, b => b.Name);
        ValueProperty<WiringBranch, string> from = Node<WiringBranch>("from", "The node it starts from.", b => b.From);
        ValueProperty<WiringBranch, string> to = Node<WiringBranch>("to", "The node it leads to.", b => b.To);
        ValueProperty<WiringBranch, ImmutableArray<Conductor>> wires = new(
            "conductors",
            "Its conductors in series; none when left out.",
            new ListShape<Conductor>(CircuitShape.Wire, 0, CircuitShape.MostWires),
            b => b.Conductors,
            b => !b.Conductors.IsEmpty,
            []
        );
        ValueProperty<WiringBranch, ElectricResistance> contacts = new(
            "contacts",
            "Terminals, switches, relays, fuses and sheet metal together.",
            QuantityShapes.SmallResistance,
            b => b.Contacts
        );
        return new(
            "wiring-branch",
            "A way for current between two nodes.",
            [name, from, to, wires, contacts],
            f => new(f.Of(name), f.Of(from), f.Of(to), f.Of(wires), f.Of(contacts))
        );
    }

    private static UnionShape<WiringSource> Source()
    {
        ValueProperty<WiringSource, string> name = new("name", "Its name.", TextShape.Name, s => s.Name);
        ValueProperty<WiringSource, string> positive = Node<WiringSource>("positive", Plus, s => s.Positive);
        ValueProperty<WiringSource, string> negative = Node<WiringSource>("negative", Minus, s => s.Negative);
        ValueProperty<WiringSource, ElectricPotential> voltage = new(
            "voltage",
            "Open-circuit voltage of a battery, regulated voltage of an alternator, or the voltage that is held.",
            QuantityShapes.Voltage,
            s => s.Voltage
        );
        ValueProperty<WiringSource, ElectricResistance> inside = new(
            "internalResistance",
            "Its internal resistance.",
            QuantityShapes.SmallResistance,
            s => s.InternalResistance
        );
        ValueProperty<WiringSource, ElectricCurrent> limit = new(
            "currentLimit",
            "Its greatest current.",
            QuantityShapes.Current,
            s => s.CurrentLimit!.Value
        );
        return new(
            Case(
                WiringSourceKind.Held,
                "held",
                "A voltage that no current moves.",
                [],
                f => WiringSource.Held(f.Of(name), f.Of(positive), f.Of(negative), f.Of(voltage))
            ),
            Case(
                WiringSourceKind.Battery,
                "battery",
                "A voltage behind an internal resistance.",
                [inside],
                f => WiringSource.Battery(f.Of(name), f.Of(positive), f.Of(negative), f.Of(voltage), f.Of(inside))
            ),
            Case(
                WiringSourceKind.Alternator,
                "alternator",
                "A regulated voltage up to a greatest current.",
                [limit],
                f => WiringSource.Alternator(f.Of(name), f.Of(positive), f.Of(negative), f.Of(voltage), f.Of(limit))
            )
        );

        UnionCase<WiringSource> Case(
            WiringSourceKind kind,
            string word,
            string description,
            ImmutableArray<Property<WiringSource>> more,
            Func<Fields<WiringSource>, WiringSource> make
        ) =>
            UnionCase<WiringSource>.Of(
                new ObjectShape<WiringSource>(
                    $"{word}-source",
                    description,
                    [
                        new WordProperty<WiringSource>("kind", "What it is.", word),
                        name,
                        positive,
                        negative,
                        voltage,
                        .. more,
                    ],
                    make
                ),
                s => s.Kind == kind
            );
    }

    private static UnionShape<WiringLoad> Load()
    {
        ValueProperty<WiringLoad, string> name = new("name", "Its name.", TextShape.Name, l => l.Name);
        ValueProperty<WiringLoad, string> positive = Node<WiringLoad>("positive", Plus, l => l.Positive);
        ValueProperty<WiringLoad, string> negative = Node<WiringLoad>("negative", Minus, l => l.Negative);
        ValueProperty<WiringLoad, ElectricCurrent> current = new(
            "current",
            "Its current.",
            QuantityShapes.Current,
            l => l.Current!.Value
        );
        ValueProperty<WiringLoad, ElectricResistance> resistance = new(
            "resistance",
            "Its resistance.",
            QuantityShapes.Resistance,
            l => l.Resistance!.Value
        );
        ValueProperty<WiringLoad, Power> power = new("power", "Its power.", QuantityShapes.Power, l => l.Power!.Value);
        return new(
            Case(
                WiringLoadKind.ConstantCurrent,
                "constant current",
                "The same current at any voltage.",
                current,
                f => WiringLoad.ConstantCurrent(f.Of(name), f.Of(positive), f.Of(negative), f.Of(current))
            ),
            Case(
                WiringLoadKind.Resistance,
                "resistance",
                "Current in proportion to voltage.",
                resistance,
                f => WiringLoad.FromResistance(f.Of(name), f.Of(positive), f.Of(negative), f.Of(resistance))
            ),
            Case(
                WiringLoadKind.ConstantPower,
                "constant power",
                "The same power at any voltage.",
                power,
                f => WiringLoad.ConstantPower(f.Of(name), f.Of(positive), f.Of(negative), f.Of(power))
            )
        );

        UnionCase<WiringLoad> Case(
            WiringLoadKind kind,
            string word,
            string description,
            Property<WiringLoad> amount,
            Func<Fields<WiringLoad>, WiringLoad> make
        ) =>
            UnionCase<WiringLoad>.Of(
                new ObjectShape<WiringLoad>(
                    $"{word.Replace(' ', '-')}-load",
                    description,
                    [new WordProperty<WiringLoad>("kind", "What it is.", word), name, positive, negative, amount],
                    make
                ),
                l => l.Kind == kind
            );
    }

    private const string Plus = "The node at its positive terminal.";

    private const string Minus = "The node at its negative terminal.";

    private static ValueProperty<T, string> Node<T>(string name, string description, Func<T, string> get) =>
        new(name, description, TextShape.Name, get);
}

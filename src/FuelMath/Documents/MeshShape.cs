using UnitsNet;

namespace FuelMath;

/// <summary>Supply and ground as a mesh of named nodes.</summary>
internal static class MeshShape
{
    private const int Most = 300;

    private static readonly ObjectShape<WiringMesh.Branch> Branch = new(o =>
    {
        o.Is("wiring-branch", "A way for current between two nodes.");
        var name = o.Named(b => b.Name);
        var from = o.Required("from", TextShape.Name, b => b.From).Says("The node it starts from.");
        var to = o.Required("to", TextShape.Name, b => b.To).Says("The node it leads to.");
        var wires = o.Optional("conductors", CircuitShape.Wire.List(0, CircuitShape.MostWires), b => b.Conductors)
            .Says("Its conductors in series; none when left out.");
        var contacts = o.Required("contacts", QuantityShapes.SmallResistance.NotNegative, b => b.Contacts)
            .Says("Terminals, switches, relays, fuses and sheet metal together.");
        return f => new(f.Of(name), f.Of(from), f.Of(to), f.Of(wires), f.Of(contacts));
    });

    private static readonly UnionShape<WiringMesh.Source> Source = new(
        new(o =>
        {
            var source = BeginSource(o, WiringMesh.SourceKind.Held, "held", "A voltage that no current moves.");
            return f =>
            {
                var (name, positive, negative, voltage) = source(f);
                return WiringMesh.Source.Held(name, positive, negative, voltage);
            };
        }),
        new(o =>
        {
            var source = BeginSource(
                o,
                WiringMesh.SourceKind.Battery,
                "battery",
                "A voltage behind an internal resistance."
            );
            var inside = o.Required(
                    "internalResistance",
                    QuantityShapes.SmallResistance.Positive,
                    s => s.InternalResistance
                )
                .Says("Its internal resistance.");
            return f =>
            {
                var (name, positive, negative, voltage) = source(f);
                return WiringMesh.Source.Battery(name, positive, negative, voltage, f.Of(inside));
            };
        }),
        new(o =>
        {
            var source = BeginSource(
                o,
                WiringMesh.SourceKind.Alternator,
                "alternator",
                "A regulated voltage up to a greatest current."
            );
            var limit = o.Required("currentLimit", QuantityShapes.Current.Positive, s => s.CurrentLimit!.Value)
                .Says("Its greatest current.");
            return f =>
            {
                var (name, positive, negative, voltage) = source(f);
                return WiringMesh.Source.Alternator(name, positive, negative, voltage, f.Of(limit));
            };
        })
    );

    private static readonly UnionShape<WiringMesh.Load> Load = new(
        LoadOf(
            WiringMesh.LoadKind.ConstantCurrent,
            "constant current",
            "The same current at any voltage.",
            o =>
                o.Required("current", QuantityShapes.Current.NotNegative, l => ((WiringMesh.CurrentLoad)l).Current)
                    .Says("Its current."),
            (name, positive, negative, current) => new WiringMesh.CurrentLoad(name, positive, negative, current)
        ),
        LoadOf(
            WiringMesh.LoadKind.Resistance,
            "resistance",
            "Current in proportion to voltage.",
            o =>
                o.Required(
                        "resistance",
                        QuantityShapes.Resistance.Positive,
                        l => ((WiringMesh.ResistanceLoad)l).Resistance
                    )
                    .Says("Its resistance."),
            (name, positive, negative, resistance) =>
                new WiringMesh.ResistanceLoad(name, positive, negative, resistance)
        ),
        LoadOf(
            WiringMesh.LoadKind.ConstantPower,
            "constant power",
            "The same power at any voltage.",
            o =>
                o.Required("power", QuantityShapes.Power.NotNegative, l => ((WiringMesh.PowerLoad)l).Power)
                    .Says("Its power."),
            (name, positive, negative, power) => new WiringMesh.PowerLoad(name, positive, negative, power)
        )
    );

    internal static ObjectShape<WiringMesh> Shape { get; } =
        new(o =>
        {
            o.Is("wiring-mesh", "Supply and ground as a mesh.");
            var name = o.Named(m => m.Name);
            var reference = o.Required("reference", TextShape.Name, m => m.Reference)
                .Says("The node whose potential counts as zero.");
            var branches = o.Required("branches", Branch.List(0, Most), m => m.Branches)
                .Says("Wires and contacts between nodes.");
            var sources = o.Required("sources", Source.List(1, Most), m => m.Sources)
                .Says("Batteries, alternators and held voltages.");
            var loads = o.Required("loads", Load.List(0, Most), m => m.Loads).Says("What draws current.");
            return f => new(f.Of(name), f.Of(reference), f.Of(branches), f.Of(sources), f.Of(loads));
        });

    private static Func<Fields<WiringMesh.Source>, (string, string, string, ElectricPotential)> BeginSource(
        ObjectBuilder<WiringMesh.Source> o,
        WiringMesh.SourceKind kind,
        string word,
        string description
    )
    {
        o.Is($"{word}-source", description);
        o.Kind(word, s => s.Kind == kind);
        var name = o.Named(s => s.Name);
        var (positive, negative) = Terminals(o, s => s.Positive, s => s.Negative);
        var voltage = o.Required("voltage", QuantityShapes.Voltage.Positive, s => s.Voltage)
            .Says(
                "Open-circuit voltage of a battery, regulated voltage of an alternator, or the voltage that is held."
            );
        return f => (f.Of(name), f.Of(positive), f.Of(negative), f.Of(voltage));
    }

    private static ObjectShape<WiringMesh.Load> LoadOf<TAmount>(
        WiringMesh.LoadKind kind,
        string word,
        string description,
        Func<ObjectBuilder<WiringMesh.Load>, ValueProperty<WiringMesh.Load, TAmount>> amountOf,
        Func<string, string, string, TAmount, WiringMesh.Load> make
    ) =>
        new(o =>
        {
            o.Is($"{word.Replace(' ', '-')}-load", description);
            o.Kind(word, l => l.Kind == kind);
            var name = o.Named(l => l.Name);
            var (positive, negative) = Terminals(o, l => l.Positive, l => l.Negative);
            var amount = amountOf(o);
            return f => make(f.Of(name), f.Of(positive), f.Of(negative), f.Of(amount));
        });

    private static (ValueProperty<T, string>, ValueProperty<T, string>) Terminals<T>(
        ObjectBuilder<T> o,
        Func<T, string> positive,
        Func<T, string> negative
    ) =>
        (
            o.Required("positive", TextShape.Name, positive).Says("The node at its positive terminal."),
            o.Required("negative", TextShape.Name, negative).Says("The node at its negative terminal.")
        );
}

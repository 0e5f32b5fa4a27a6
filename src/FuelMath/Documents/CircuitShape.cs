using UnitsNet;

namespace FuelMath;

/// <summary>A circuit: wires there and back, and the contacts between them.</summary>
internal static class CircuitShape
{
    internal const int MostWires = 100;

    internal static ObjectShape<Conductor> Wire { get; } =
        new(o =>
        {
            o.Is("conductor", "A length of copper wire.");
            var size = o.Required("size", WireSizeShape.Instance, c => c.Size)
                .Says("Size of the wire: a gauge such as \"12 AWG\" or \"1/0 AWG\", or an area such as \"2.5 mm2\".");
            var wires = o.Optional("wires", new CountShape(1, MostWires), c => c.Wires == 1 ? null : c.Wires)
                .Says("Equal wires in parallel; one when left out.");
            var length = o.Required("length", QuantityShapes.Length.Positive, c => c.Length)
                .Says("Its length, one way.");
            var temperature = o.Required("temperature", QuantityShapes.Temperature, c => c.Temperature)
                .Says("Temperature of the copper.");
            return f => Conductor.FromParallel(f.Of(wires) ?? 1, f.Of(size), f.Of(length), f.Of(temperature));
        });

    internal static ObjectShape<Circuit> Shape { get; } =
        new(o =>
        {
            o.Is("circuit", "The way from a source to a load and back.");
            var name = o.Named(c => c.Name);
            var supply = o.Required("supply", Wire.List(0, MostWires), c => c.Supply)
                .Says("From the source to the load, in series.");
            var ground = o.Required("ground", Wire.List(0, MostWires), c => c.Ground)
                .Says("From the load back to the source, in series.");
            var contacts = o.Required("contacts", QuantityShapes.SmallResistance.NotNegative, c => c.Contacts)
                .Says("All terminals, switches, relays and fuses together.");
            return f => new(f.Of(name), f.Of(supply), f.Of(ground), f.Of(contacts));
        });
}

using System.Collections.Immutable;
using System.Text;
using UnitsNet;

namespace FuelMath.Tests.Shapes;

/// <summary>A small document with one of everything, to test the machinery apart from the parts.</summary>
internal sealed class ToyDocument
{
    internal static ObjectShape<ToyDocument> Shape { get; } =
        new(o =>
        {
            o.Is("toy", "A toy.");
            var name = o.Required("name", TextShape.Name, t => t.Name).Says("What it is called.");
            var length = o.Required("length", new QuantityShape<Length>(QuantityKinds.Length, "mm"), t => t.Length)
                .Says("How long it is.");
            var count = o.Required("count", new CountShape(1, 16), t => t.Count).Says("How many there are.");
            var factor = o.Required("lossCoefficient", NumberShape.Instance, t => t.Factor).Says("A pure number.");
            var lined = o.Optional(
                    "lined",
                    ChoiceShape.Of(("yes", true), ("no", false)),
                    t => t.Lined ? true : (bool?)null
                )
                .Says("Whether it is lined; not when left out.");
            var parts = o.Optional("parts", new Deferred().List(1, 3), t => t.Parts)
                .Says("What it is made of; nothing when left out.");
            return f => new(f.Of(name), f.Of(length), f.Of(count), f.Of(factor), f.Of(lined) ?? false, f.Of(parts));
        });

    internal ToyDocument(
        string name,
        Length length,
        int count,
        double factor,
        bool lined,
        ImmutableArray<ToyDocument> parts
    )
    {
        if (length <= Length.Zero)
        {
            throw new ArgumentOutOfRangeException(nameof(length), "Must be greater than zero; it was not.");
        }

        Name = name;
        Length = length;
        Count = count;
        Factor = factor;
        Lined = lined;
        Parts = parts;
    }

    internal string Name { get; }

    internal Length Length { get; }

    internal int Count { get; }

    internal double Factor { get; }

    internal bool Lined { get; }

    internal ImmutableArray<ToyDocument> Parts { get; }

    internal static ToyDocument Read(string text) => Read(Encoding.UTF8.GetBytes(text));

    internal static ToyDocument Read(ReadOnlyMemory<byte> utf8) => Shape.Read(JsonTree.Read(utf8));

    internal static string Write(ToyDocument toy) => Shape.Write(toy).Render();

    /// <summary>A shape that holds itself: looked up when used, not when made.</summary>
    private sealed class Deferred : Shape<ToyDocument>
    {
        internal override string Wanted => "a toy";

        internal override ToyDocument Read(JsonItem item) => Shape.Read(item);

        internal override JsonText Write(ToyDocument value) => Shape.Write(value);

        internal override JsonText Schema(SchemaDefinitions definitions) => Shape.Schema(definitions);
    }
}

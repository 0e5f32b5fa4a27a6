using System.Collections.Immutable;
using System.Text;
using UnitsNet;

namespace FuelMath.Tests.Shapes;

/// <summary>A small document with one of everything, to test the machinery apart from the parts.</summary>
internal sealed class ToyDocument
{
    private static readonly ValueProperty<ToyDocument, string> NameProperty = new(
        "name",
        "What it is called.",
        TextShape.Name,
        t => t.Name
    );

    private static readonly ValueProperty<ToyDocument, Length> LengthProperty = new(
        "length",
        "How long it is.",
        new QuantityShape<Length>(QuantityKinds.Length, "mm"),
        t => t.Length
    );

    private static readonly ValueProperty<ToyDocument, int> CountProperty = new(
        "count",
        "How many there are.",
        new CountShape(1, 16),
        t => t.Count
    );

    private static readonly ValueProperty<ToyDocument, double> FactorProperty = new(
        "lossCoefficient",
        "A pure number.",
        NumberShape.Instance,
        t => t.Factor
    );

    private static readonly ValueProperty<ToyDocument, bool> ColorProperty = new(
        "lined",
        "Whether it is lined; not when left out.",
        new ChoiceShape<bool>(("yes", true), ("no", false)),
        t => t.Lined,
        t => t.Lined,
        false
    );

    private static readonly ValueProperty<ToyDocument, ImmutableArray<ToyDocument>> PartsProperty = new(
        "parts",
        "What it is made of; nothing when left out.",
        new ListShape<ToyDocument>(new Deferred(), 1, 3),
        t => t.Parts,
        t => t.Parts.Length > 0,
        []
    );

    internal static ObjectShape<ToyDocument> Shape { get; } =
        new(
            "toy",
            "A toy.",
            [NameProperty, LengthProperty, CountProperty, FactorProperty, ColorProperty, PartsProperty],
            f =>
                new(
                    f.Of(NameProperty),
                    f.Of(LengthProperty),
                    f.Of(CountProperty),
                    f.Of(FactorProperty),
                    f.Of(ColorProperty),
                    f.Of(PartsProperty)
                )
        );

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

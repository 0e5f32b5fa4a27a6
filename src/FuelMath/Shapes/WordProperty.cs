namespace FuelMath;

/// <summary>A property with a fixed word that states the kind of object.</summary>
internal sealed class WordProperty<TOwner> : Property<TOwner>
{
    private readonly ChoiceShape<string> shape;

    internal WordProperty(string name, string description, string word)
        : base(name, description, true)
    {
        Word = word;
        shape = new((word, word));
    }

    internal string Word { get; }

    internal override string Wanted => shape.Wanted;

    internal override bool IsIn(TOwner owner) => true;

    internal override void Check(JsonItem item) => shape.Read(item);

    internal override JsonText Write(TOwner owner) => shape.Write(Word);

    internal override JsonText Schema(SchemaDefinitions definitions) => shape.Schema(definitions);
}

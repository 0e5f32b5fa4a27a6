namespace FuelMath;

/// <summary>The name of a value in a list at the root, or one of a few known words.</summary>
internal sealed class ReferenceShape<T> : Shape<T>
    where T : class
{
    private readonly string what;
    private readonly NamedListShape<T> list;
    private readonly Func<T, string> nameOf;
    private readonly ChoiceShape<T> words;

    internal ReferenceShape(string what, NamedListShape<T> list, Func<T, string> nameOf, ChoiceShape<T> words)
    {
        this.what = what;
        this.list = list;
        this.nameOf = nameOf;
        this.words = words;
    }

    internal override string Wanted => $"the name of {what}";

    internal override T Read(JsonItem item)
    {
        string name = Expect(item, JsonItemKind.Text).Text;
        return words.Find(name)
            ?? list.Find(item.Root, name)
            ?? throw item.Refuse(
                RefusalCode.NotOneOf,
                $"Must be the name of {what:subject}, one of {words.Words.Concat(list.Names(item.Root)).Select(JsonItem.Quote):allowed}."
            );
    }

    internal override JsonText Write(T value) => words.Has(value) ? words.Write(value) : JsonText.Of(nameOf(value));

    internal override JsonText Schema(SchemaDefinitions definitions) => TextShape.Name.Schema(definitions);
}

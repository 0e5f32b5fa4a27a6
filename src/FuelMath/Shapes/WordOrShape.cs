namespace FuelMath;

/// <summary>A word for a known value, or the value in full.</summary>
internal sealed class WordOrShape<T> : Shape<T>
    where T : class
{
    private readonly ChoiceShape<T> words;
    private readonly Shape<T> full;

    internal WordOrShape(ChoiceShape<T> words, Shape<T> full)
    {
        this.words = words;
        this.full = full;
    }

    internal override string Wanted => $"{words.Wanted}, or {full.Wanted}";

    internal override T Read(JsonItem item) =>
        item.Kind == JsonItemKind.Text ? words.Find(item.Text) ?? throw item.RefuseKind(Wanted) : full.Read(item);

    internal override JsonText Write(T value) => words.Has(value) ? words.Write(value) : full.Write(value);

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object(("oneOf", JsonText.List([words.Schema(definitions), full.Schema(definitions)])));
}

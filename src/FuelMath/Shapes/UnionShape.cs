using System.Collections.Immutable;

namespace FuelMath;

/// <summary>One of several kinds of object, told apart by a word in the property "kind".</summary>
internal sealed class UnionShape<T> : Shape<T>
    where T : notnull
{
    private const string Tag = ObjectShape<T>.Tag;

    private readonly ImmutableArray<ObjectShape<T>> cases;

    internal UnionShape(params ImmutableArray<ObjectShape<T>> cases) => this.cases = cases;

    internal override string Wanted => $"an object whose \"{Tag}\" is one of {Words}";

    private string Words => JsonItem.Quoted(cases.Select(c => c.Kind));

    internal override T Read(JsonItem item)
    {
        JsonItem tag =
            Expect(item, JsonItemKind.Object).Member(Tag)
            ?? throw item.Refuse(
                RefusalCode.PropertyMissing,
                $"Must have \"{Tag:missing}\", one of {cases.Select(c => JsonItem.Quote(c.Kind)):allowed}."
            );
        return tag.Kind == JsonItemKind.Text && cases.FirstOrDefault(c => c.Kind == tag.Text) is { } one
            ? one.Read(item)
            : throw tag.Refuse(
                RefusalCode.NotOneOf,
                $"Must be one of {cases.Select(c => JsonItem.Quote(c.Kind)):allowed}."
            );
    }

    internal override JsonText Write(T value) => cases.First(c => c.Holds(value)).Write(value);

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object(("oneOf", JsonText.List(cases.Select(c => c.Schema(definitions)))));
}

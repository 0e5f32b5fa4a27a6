using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A list at the root of a document whose values are referred to by name; each is created once.</summary>
internal sealed class NamedListShape<T> : Shape<ImmutableArray<T>>
    where T : class
{
    private readonly Shape<T> item;
    private readonly ListShape<T> list;

    internal NamedListShape(string name, Shape<T> item, int most)
    {
        Name = name;
        this.item = item;
        list = new(item, 0, most);
    }

    /// <summary>The name of the property that holds it.</summary>
    internal string Name { get; }

    internal override string Wanted => list.Wanted;

    internal override ImmutableArray<T> Read(JsonItem items)
    {
        _ = list.Read(items);
        HashSet<string> names = new(StringComparer.Ordinal);
        foreach (JsonItem one in items.Items)
        {
            if (!names.Add(NameOf(one)))
            {
                throw one.Member("name")!
                    .Refuse(RefusalCode.Duplicate, $"Must be a name that no other of $.{Name:list} has.");
            }
        }

        return [.. items.Items.Select(i => i.Once(item.Read))];
    }

    internal override JsonText Write(ImmutableArray<T> value) => list.Write(value);

    internal override JsonText Schema(SchemaDefinitions definitions) => list.Schema(definitions);

    /// <summary>Finds a value by its name and reads it; null when there is none.</summary>
    internal T? Find(JsonItem root, string name)
    {
        JsonItem? found = Items(root).FirstOrDefault(i => NameOf(i) == name);
        found?.Use();
        return found?.Once(item.Read);
    }

    internal IEnumerable<string> Names(JsonItem root) => Items(root).Select(NameOf);

    /// <summary>Refuses values that nothing refers to: they would be lost silently.</summary>
    internal void RefuseUnused(JsonItem root)
    {
        foreach (JsonItem one in Items(root))
        {
            if (!one.IsUsed)
            {
                throw one.Refuse(RefusalCode.NotUsed, "Must be used somewhere in the document.");
            }
        }
    }

    private static string NameOf(JsonItem item) =>
        item.Kind == JsonItemKind.Object && item.Member("name") is { Kind: JsonItemKind.Text } name ? name.Text : "";

    private IReadOnlyList<JsonItem> Items(JsonItem root) =>
        root.Kind == JsonItemKind.Object && root.Member(Name) is { Kind: JsonItemKind.List } found ? found.Items : [];
}

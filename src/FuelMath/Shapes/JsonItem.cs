namespace FuelMath;

/// <summary>One value of a document, with its place.</summary>
internal sealed class JsonItem
{
    private readonly JsonSource source;
    private readonly JsonItem? parent;
    private readonly string? name;
    private readonly int index;
    private readonly int nameOffset;
    private readonly int offset;
    private readonly List<JsonItem> items = [];
    private HashSet<string>? names;
    private object? made;

    internal JsonItem(JsonSource source, JsonItem? parent, string? name, int nameOffset, int offset, JsonItemKind kind)
    {
        this.source = source;
        this.parent = parent;
        this.name = name;
        this.nameOffset = nameOffset;
        this.offset = offset;
        index = parent?.items.Count ?? 0;
        Kind = kind;
    }

    internal JsonItemKind Kind { get; }

    /// <summary>The name of the property that holds it; empty in a list and at the root.</summary>
    internal string Name => name ?? "";

    /// <summary>The text, or the number as written.</summary>
    internal string Text { get; init; } = "";

    internal IReadOnlyList<JsonItem> Items => items;

    internal JsonItem? Parent => parent;

    internal JsonItem Root => parent?.Root ?? this;

    internal string Path =>
        parent is null ? "$"
        : name is null ? $"{parent.Path}[{index}]"
        : parent.PathOf(name);

    /// <summary>A description for a message, as a noun.</summary>
    internal string Shown =>
        Kind switch
        {
            JsonItemKind.Object => items.Count == 0
                ? "an empty object"
                : $"an object with {Quoted(items.Take(8).Select(i => i.Name))}",
            JsonItemKind.List => $"a list of {items.Count}",
            JsonItemKind.Text => Quote(Text),
            JsonItemKind.Number => $"the number {Text}",
            JsonItemKind.Truth => Text,
            _ => "null",
        };

    /// <summary>Whether another value refers to it.</summary>
    internal bool IsUsed { get; private set; }

    /// <summary>The name of the nearest object around it that has one; that of the document itself does not count.</summary>
    private string? PartName =>
        parent is null ? null
        : Kind == JsonItemKind.Object
        && Member("name") is { Kind: JsonItemKind.Text } named
        && named.Text.Trim().Length > 0
            ? Echo.Escape(named.Text)
        : parent.PartName;

    /// <summary>Longer names are cut in paths.</summary>
    private const int LongestPlainName = 60;

    internal string PathOf(string property) =>
        property.Length is > 0 and <= LongestPlainName
        && property.All(c => char.IsAsciiLetterOrDigit(c) || c is '_' or '$')
            ? $"{Path}.{property}"
            : $"{Path}[{Quote(property)}]";

    internal JsonItem? Member(string property) => items.Find(i => i.name == property);

    /// <summary>Adds a value; false when an object has its name already.</summary>
    internal bool TryAdd(JsonItem item)
    {
        if (item.name is not null && !(names ??= new(StringComparer.Ordinal)).Add(item.name))
        {
            return false;
        }

        items.Add(item);
        return true;
    }

    /// <summary>The object read from it, created once for all references.</summary>
    internal T Once<T>(Func<JsonItem, T> read)
        where T : class
    {
        made ??= read(this);
        return (T)made;
    }

    /// <summary>Notes that another value refers to it.</summary>
    internal void Use() => IsUsed = true;

    /// <summary>The exception for a value that is not what is allowed there.</summary>
    internal DocumentException Refuse(RefusalCode code, RefusalText allowed) =>
        source.Refuse(code, Path, offset, allowed, Shown, PartName);

    /// <summary>The exception for a value of another kind than a shape reads.</summary>
    internal DocumentException RefuseKind(string wanted) =>
        Refuse(RefusalCode.NotAsWanted, $"Must be {wanted:wanted}.");

    /// <summary>The exception for a value that another exception refuses.</summary>
    internal DocumentException Refuse(RefusalText allowed, Exception cause) =>
        source.Refuse(RefusalCode.DocumentInvalid, Path, offset, allowed, Shown, PartName, cause);

    /// <summary>The exception for a property that must not be present; its place is that of the name.</summary>
    internal DocumentException RefuseName(RefusalCode code, RefusalText allowed) =>
        source.Refuse(code, Path, nameOffset, allowed, Quote(Name), parent?.PartName);

    internal static string Quoted(IEnumerable<string> texts) => string.Join(", ", texts.Select(Quote));

    internal static string Quote(string text) => Echo.Quote(text);
}

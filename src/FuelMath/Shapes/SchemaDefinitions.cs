using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Collects the named objects of a schema while it is written.</summary>
internal sealed class SchemaDefinitions
{
    private readonly SortedDictionary<string, JsonText?> definitions = new(StringComparer.Ordinal);

    /// <summary>A reference to a named definition, which is created at its first mention.</summary>
    internal JsonText Refer(string name, Func<JsonText> make)
    {
        if (definitions.TryAdd(name, null))
        {
            definitions[name] = make();
        }

        return JsonText.Object(("$ref", JsonText.Of($"#/$defs/{name}")));
    }

    /// <summary>The whole schema of a document whose root is the named definition.</summary>
    internal static string Document<T>(Shape<T> root, string address, string title)
    {
        SchemaDefinitions definitions = new();
        JsonText reference = root.Schema(definitions);
        ImmutableArray<(string, JsonText)> made = [.. definitions.definitions.Select(d => (d.Key, d.Value!))];
        return JsonText
            .Object(
                ("$schema", JsonText.Of("https://json-schema.org/draft/2020-12/schema")),
                ("$id", JsonText.Of(address)),
                ("title", JsonText.Of(title)),
                ("allOf", JsonText.List([reference])),
                ("$defs", JsonText.Object(made))
            )
            .Render();
    }
}

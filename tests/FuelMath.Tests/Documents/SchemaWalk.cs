using System.Text.Json;
using Json.Schema;

namespace FuelMath.Tests.Documents;

/// <summary>A published schema, walked beside a document: which property of which definition each value is.</summary>
internal sealed class SchemaWalk
{
    private readonly JsonElement schema;
    private readonly JsonElement definitions;

    internal SchemaWalk(string text)
    {
        schema = JsonDocument.Parse(text).RootElement;
        definitions = schema.GetProperty("$defs");
    }

    /// <summary>Every property of every object of the schema, as <c>definition.property</c>.</summary>
    internal HashSet<string> Properties =>
        [
            .. definitions
                .EnumerateObject()
                .Where(d => d.Value.TryGetProperty("properties", out _))
                .SelectMany(d => d.Value.GetProperty("properties").EnumerateObject().Select(p => $"{d.Name}.{p.Name}")),
        ];

    /// <summary>Each value of a document that is a property: its place, its name in the schema, and what is said of it.</summary>
    internal IEnumerable<Place> Of(JsonElement document) => Walk(schema, document, "$");

    private IEnumerable<Place> Walk(JsonElement at, JsonElement value, string path)
    {
        if (value.ValueKind == JsonValueKind.Array)
        {
            int index = 0;
            foreach (JsonElement item in value.EnumerateArray())
            {
                foreach (Place found in Items(at).SelectMany(s => Walk(s, item, $"{path}[{index}]")))
                {
                    yield return found;
                }

                index++;
            }
        }
        else if (value.ValueKind == JsonValueKind.Object)
        {
            foreach ((string name, JsonElement definition) in Objects(at, value))
            {
                JsonElement properties = definition.GetProperty("properties");
                foreach (JsonProperty member in value.EnumerateObject())
                {
                    if (!properties.TryGetProperty(member.Name, out JsonElement property))
                    {
                        continue;
                    }

                    string description = property.TryGetProperty("description", out JsonElement d)
                        ? d.GetString()!
                        : "";
                    string place = $"{path}.{member.Name}";
                    yield return new(place, $"{name}.{member.Name}", description, member.Value);
                    foreach (Place found in Walk(property, member.Value, place))
                    {
                        yield return found;
                    }
                }
            }
        }
    }

    /// <summary>The object definitions that a value is: of a union, the one whose fixed words are the value's.</summary>
    private IEnumerable<(string Name, JsonElement Definition)> Objects(
        JsonElement at,
        JsonElement value,
        string name = ""
    )
    {
        if (at.TryGetProperty("$ref", out JsonElement reference))
        {
            string key = reference.GetString()!["#/$defs/".Length..];
            return Objects(definitions.GetProperty(key), value, key);
        }

        if (at.TryGetProperty("properties", out JsonElement properties))
        {
            return Fits(properties, value) ? [(name, at)] : [];
        }

        return Branches(at).SelectMany(b => Objects(b, value, name));
    }

    private static bool Fits(JsonElement properties, JsonElement value) =>
        !properties.TryGetProperty("kind", out JsonElement kind)
        || !value.TryGetProperty("kind", out JsonElement word)
        || kind.GetRawText().Contains($"\"{word.GetString()}\"", StringComparison.Ordinal);

    private IEnumerable<JsonElement> Items(JsonElement at)
    {
        if (at.TryGetProperty("$ref", out JsonElement reference))
        {
            return Items(definitions.GetProperty(reference.GetString()!["#/$defs/".Length..]));
        }

        return at.TryGetProperty("items", out JsonElement items) ? [items] : Branches(at).SelectMany(Items);
    }

    private static IEnumerable<JsonElement> Branches(JsonElement at) =>
        new[] { "allOf", "oneOf", "anyOf" }.SelectMany(k =>
            at.TryGetProperty(k, out JsonElement list) ? list.EnumerateArray().ToArray() : []
        );

    /// <summary>A property's value in a document.</summary>
    internal sealed record Place(string Path, string Name, string Description, JsonElement Value);
}

using System.Text.Json.Nodes;

namespace FuelMath.Tests.Documents;

/// <summary>One value of a whole document exchanged for a wrong one.</summary>
/// <param name="Document">The document.</param>
/// <param name="Name">Definition and property of the schema, as <c>hose.bore</c>.</param>
/// <param name="Path">The way to the value, as <c>plan/lines/0/hose/bore</c>.</param>
/// <param name="Kind">What is wrong with it.</param>
/// <param name="Value">The wrong value.</param>
internal sealed record WrongValue(WholeDocument Document, string Name, string Path, string Kind, JsonNode Value)
{
    internal const string Negative = "negative";
    internal const string Zero = "zero";
    internal const string WrongWord = "wrong word";
    internal const string WrongKind = "wrong kind";

    /// <summary>How a text of the document has it.</summary>
    internal string Written => Value is JsonValue v && v.TryGetValue(out string? text) ? text : Value.ToJsonString();

    /// <summary>Every property of every document once, in lists the first and the last value, exchanged in each manner.</summary>
    internal static IEnumerable<WrongValue> All()
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (WholeDocument document in WholeDocument.All)
        {
            using var parsed = System.Text.Json.JsonDocument.Parse(document.Text);
            JsonNode root = JsonNode.Parse(document.Text)!;
            SchemaWalk walk = new(TestFiles.Schema(document.SchemaName));
            foreach (SchemaWalk.Place place in walk.Of(parsed.RootElement))
            {
                if (!seen.Add(place.Name))
                {
                    continue;
                }

                string path = place
                    .Path[2..]
                    .Replace('.', '/')
                    .Replace('[', '/')
                    .Replace("]", "", StringComparison.Ordinal);
                foreach (string leaf in Leaves(root, path))
                {
                    foreach ((string kind, JsonNode value) in Wrong(At(root, leaf)))
                    {
                        yield return new(document, place.Name, leaf, kind, value);
                    }
                }
            }
        }
    }

    /// <summary>The value at one place, exchanged in one manner.</summary>
    internal static WrongValue At(WholeDocument document, string path, string kind) =>
        new(
            document,
            path,
            path,
            kind,
            Wrong(At(JsonNode.Parse(document.Text)!, path)).First(w => w.Kind == kind).Value
        );

    /// <summary>The document with this value in it.</summary>
    internal JsonNode Changed()
    {
        JsonNode root = JsonNode.Parse(Document.Text)!;
        int end = Path.LastIndexOf('/');
        JsonNode parent = end < 0 ? root : At(root, Path[..end]);
        string last = Path[(end + 1)..];
        if (parent is JsonArray list)
        {
            list[int.Parse(last, System.Globalization.CultureInfo.InvariantCulture)] = Value.DeepClone();
        }
        else
        {
            parent[last] = Value.DeepClone();
        }

        return root;
    }

    private static IEnumerable<string> Leaves(JsonNode root, string path) =>
        At(root, path) is JsonArray { Count: > 0 } list
            ? new[] { 0, list.Count - 1 }.Distinct().SelectMany(i => Leaves(root, $"{path}/{i}"))
            : [path];

    private static IEnumerable<(string Kind, JsonNode Value)> Wrong(JsonNode value)
    {
        if (value is not JsonValue leaf)
        {
            yield return (WrongKind, JsonValue.Create(7));
        }
        else if (leaf.TryGetValue(out string? text))
        {
            yield return (WrongKind, JsonValue.Create(true));
            int space = text.IndexOf(' ', StringComparison.Ordinal);
            bool isQuantity =
                space > 0 && QuantityUnits.Contains(text[(space + 1)..]) && char.IsAsciiDigit(text[space - 1]);
            if (isQuantity)
            {
                yield return (Negative, JsonValue.Create($"-1{text[space..]}"));
                yield return (Zero, JsonValue.Create($"0{text[space..]}"));
                yield return (WrongWord, JsonValue.Create($"{text[..space]} parsec"));
            }
            else
            {
                yield return (WrongWord, JsonValue.Create("no such word"));
            }
        }
        else
        {
            yield return (Negative, JsonValue.Create(-1));
            yield return (Zero, JsonValue.Create(0));
            yield return (WrongKind, JsonValue.Create("1"));
        }
    }

    private static HashSet<string> QuantityUnits { get; } =
    [.. UnitTable.All.SelectMany(k => k.Units).SelectMany(u => u.Spellings)];

    private static JsonNode At(JsonNode root, string path) =>
        path.Split('/')
            .Aggregate(
                root,
                (node, step) =>
                    node is JsonArray list
                        ? list[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)]!
                        : node[step]!
            );
}

using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace FuelMath.Tests.Documents;

/// <summary>
/// The page that shows the whole documents line by line. What stands behind a line is the schema's own sentence, said where a
/// property comes first.
/// </summary>
internal sealed class WholeDocumentPage
{
    private const int Width = 100;

    private const string Head = """
        # Whole documents, explained

        Each kind of document, whole and with every property that it may hold. Where something excludes something else, as two circuits exclude a mesh, a second document holds the rest. The files themselves stand under `docs/data`, without the comments: JSON has none, and a file with comments is refused. All of it is invented.

        A comment stands where a property comes first. Object by object, with what is optional: [Every property](every-property.md).

        Made from the files and the published schemas by `WRITE_SCHEMAS=1 dotnet test tests/FuelMath.Tests --filter SchemaTests`; a test holds that every property stands in one of them, that each file is read, and that this page is theirs.

        """;

    private readonly HashSet<string> said = new(StringComparer.Ordinal);
    private readonly StringBuilder page = new();
    private Dictionary<string, SchemaWalk.Place> places = [];

    internal static string Text()
    {
        WholeDocumentPage made = new();
        made.page.Append(Head.ReplaceLineEndings("\n"));
        foreach (WholeDocument document in WholeDocument.All)
        {
            made.Add(document);
        }

        return made.page.ToString();
    }

    private void Add(WholeDocument document)
    {
        using var parsed = JsonDocument.Parse(document.Text);
        places = new SchemaWalk(PropertyPage.Schema(document.SchemaName))
            .Of(parsed.RootElement)
            .DistinctBy(p => p.Path)
            .ToDictionary(p => p.Path, StringComparer.Ordinal);
        page.Append(CultureInfo.InvariantCulture, $"\n## {document.Name}.json\n\n```json\n");
        Object(parsed.RootElement, "$", "");
        page.Append("\n```\n");
    }

    private void Value(JsonElement value, string path, string indent)
    {
        if (Inline(value) is var line && line.Length + indent.Length <= Width && !HoldsNews(value, path))
        {
            page.Append(line);
        }
        else if (value.ValueKind == JsonValueKind.Object)
        {
            Object(value, path, indent);
        }
        else if (value.ValueKind == JsonValueKind.Array)
        {
            List(value, path, indent);
        }
        else
        {
            page.Append(line);
        }
    }

    private void Object(JsonElement value, string path, string indent)
    {
        page.Append('{');
        JsonProperty[] members = [.. value.EnumerateObject()];
        for (int i = 0; i < members.Length; i++)
        {
            string place = $"{path}.{members[i].Name}";
            page.Append(CultureInfo.InvariantCulture, $"\n{indent}  \"{members[i].Name}\": ");
            string comment =
                places.TryGetValue(place, out SchemaWalk.Place? known) && said.Add(known.Name)
                    ? $" // {known.Description}"
                    : "";
            string comma = i < members.Length - 1 ? "," : "";
            bool opens =
                members[i].Value.ValueKind is JsonValueKind.Object or JsonValueKind.Array
                && (HoldsNews(members[i].Value, place) || Inline(members[i].Value).Length + indent.Length > Width - 20);
            if (opens && comment.Length > 0)
            {
                page.Length -= members[i].Name.Length + 4;
                page.Append(CultureInfo.InvariantCulture, $"{comment.TrimStart()}\n{indent}  \"{members[i].Name}\": ");
                comment = "";
            }

            Value(members[i].Value, place, indent + "  ");
            page.Append(comma).Append(comment);
        }

        page.Append(CultureInfo.InvariantCulture, $"\n{indent}}}");
    }

    private void List(JsonElement value, string path, string indent)
    {
        page.Append('[');
        int index = 0;
        int count = value.GetArrayLength();
        foreach (JsonElement item in value.EnumerateArray())
        {
            page.Append(CultureInfo.InvariantCulture, $"\n{indent}  ");
            Value(item, $"{path}[{index}]", indent + "  ");
            page.Append(++index < count ? "," : "");
        }

        page.Append(CultureInfo.InvariantCulture, $"\n{indent}]");
    }

    /// <summary>Whether something stands in a value that was not explained yet.</summary>
    private bool HoldsNews(JsonElement value, string path) =>
        value.ValueKind switch
        {
            JsonValueKind.Object => value
                .EnumerateObject()
                .Any(m =>
                    (places.TryGetValue($"{path}.{m.Name}", out SchemaWalk.Place? known) && !said.Contains(known.Name))
                    || HoldsNews(m.Value, $"{path}.{m.Name}")
                ),
            JsonValueKind.Array => value
                .EnumerateArray()
                .Select((v, i) => (v, i))
                .Any(x => HoldsNews(x.v, $"{path}[{x.i}]")),
            _ => false,
        };

    private static string Inline(JsonElement value) =>
        value.ValueKind switch
        {
            JsonValueKind.Object =>
                $"{{{string.Join(", ", value.EnumerateObject().Select(m => $"\"{m.Name}\": {Inline(m.Value)}"))}}}",
            JsonValueKind.Array => $"[{string.Join(", ", value.EnumerateArray().Select(Inline))}]",
            JsonValueKind.String => $"\"{JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(value.GetString()!)}\"",
            _ => value.GetRawText(),
        };
}

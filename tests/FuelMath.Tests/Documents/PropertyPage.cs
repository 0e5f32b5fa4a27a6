using System.Globalization;
using System.Text;
using System.Text.Json;

namespace FuelMath.Tests.Documents;

/// <summary>
/// The page that shows every property of every kind of document, with its comment. It is made from the published schemas;
/// values come from the whole documents under docs/data.
/// </summary>
internal static class PropertyPage
{
    internal static readonly (string Schema, string Title)[] Kinds =
    [
        ("fuel-system", "A fuel system"),
        ("operating-list", "Operating points"),
        ("bench-record", "A bench record"),
        ("line-plan", "A line plan"),
        ("network", "A network"),
        ("system-brief", "A brief of a system"),
    ];

    private const string Head = """
        # Every property of the documents

        Each kind of document, object by object, with every property that it may hold and what it means. Values are from [whole documents](whole-documents.md), in which every one of them stands; of an object or a list only the form is shown. A property without the remark *optional* is required. Of an object that shows several parts, such as a line, only one may be there: its text says which. Comments are for reading here; in a file they are refused.

        Made from the published schemas by `WRITE_SCHEMAS=1 dotnet test tests/FuelMath.Tests --filter SchemaTests`. What quantities look like: [Documents](documents.md#quantities-as-text). Sources of formulas stand on the pages of the parts.

        """;

    internal static string Text()
    {
        var page = new StringBuilder(Head.ReplaceLineEndings("\n"));
        HashSet<string> shown = new(StringComparer.Ordinal);
        foreach ((string schema, string title) in Kinds)
        {
            using var parsed = JsonDocument.Parse(Schema(schema));
            page.Append(CultureInfo.InvariantCulture, $"\n## {title}\n");
            var values = ExampleValues(schema);
            JsonElement definitions = parsed.RootElement.GetProperty("$defs");
            foreach (string name in Order(parsed.RootElement, definitions))
            {
                JsonElement definition = definitions.GetProperty(name);
                if (!definition.TryGetProperty("properties", out JsonElement properties) || !shown.Add(name))
                {
                    continue;
                }

                HashSet<string> required =
                [
                    .. definition.GetProperty("required").EnumerateArray().Select(r => r.GetString()!),
                ];
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"\n### {name}\n\n{definition.GetProperty("description").GetString()}\n\n```json\n{{\n"
                );
                foreach (JsonProperty property in properties.EnumerateObject())
                {
                    string optional = required.Contains(property.Name) ? "" : "optional; ";
                    string comment = property.Value.GetProperty("description").GetString()!;
                    string form = Form(property.Value, definitions);

                    // Where there is a choice, all of it is shown: one bundled word would hide the others. A text of any
                    // words is none: there a value tells more.
                    bool isChoice =
                        form.Contains(" | ", StringComparison.Ordinal)
                        && !form.Contains("\"...\"", StringComparison.Ordinal);
                    string value = isChoice ? form : values.GetValueOrDefault($"{name}.{property.Name}") ?? form;
                    page.Append(
                        CultureInfo.InvariantCulture,
                        $"  \"{property.Name}\": {value}, // {optional}{comment}\n"
                    );
                }

                page.Append("}\n```\n");
            }
        }

        return page.ToString();
    }

    /// <summary>The library's own schema, which the published file must be.</summary>
    internal static string Schema(string name) =>
        name switch
        {
            "fuel-system" => SystemDocument.Schema,
            "operating-list" => OperatingListDocument.Schema,
            "bench-record" => BenchDocument.Schema,
            "line-plan" => LinePlanDocument.Schema,
            "system-brief" => BriefDocument.Schema,
            _ => NetworkDocument.Schema,
        };

    /// <summary>Values that no bundled document holds, where the form alone would not be allowed there.</summary>
    private static Dictionary<string, string> Invented { get; } =
        new()
        {
            ["oil.at15Celsius"] = "\"870 kg/m3\"",
            ["oil.at100Celsius"] = "\"8 mm2/s\"",
            ["ethanol-fuel.ethanol"] = "\"70 %\"",
            ["limits.dutyCycle"] = "\"85 %\"",
            ["limits.pumpReserve"] = "\"15 %\"",
            ["limits.pressureDeviation"] = "\"3 %\"",
            ["limits.mixtureDeviation"] = "\"5 %\"",
            ["limits.voltageDrop"] = "\"0.7 V\"",
            ["limits.suctionVelocity"] = "\"1.2 m/s\"",
            ["limits.vaporMargin"] = "\"20 kPa\"",
            ["uncertain-dead-time.standardDeviation"] = "\"0.03 ms\"",
            ["uncertain-regulator-set-point.standardDeviation"] = "\"4 kPa\"",
            ["composition.carbon"] = "\"85 %\"",
            ["composition.hydrogen"] = "\"13 %\"",
            ["constant-volumetric-efficiency.value"] = "\"90 %\"",
            ["humidity.relative"] = "\"70 %\"",
        };

    private static Dictionary<string, string> ExampleValues(string schema)
    {
        IEnumerable<string> documents = WholeDocument.All.Where(d => d.SchemaName == schema).Select(d => d.Text);
        var walk = new SchemaWalk(Schema(schema));
        Dictionary<string, string> values = new(Invented, StringComparer.Ordinal);
        foreach (string text in documents)
        {
            using var document = JsonDocument.Parse(text);
            foreach (SchemaWalk.Place place in walk.Of(document.RootElement))
            {
                if (place.Value.ValueKind is not (JsonValueKind.Object or JsonValueKind.Array))
                {
                    values.TryAdd(place.Name, place.Value.GetRawText());
                }
            }
        }

        return values;
    }

    /// <summary>Definitions in the order in which a reader meets them: an object before what it holds.</summary>
    private static List<string> Order(JsonElement root, JsonElement definitions)
    {
        List<string> order = [];
        Queue<JsonElement> waiting = new([root.GetProperty("allOf")]);
        while (waiting.TryDequeue(out JsonElement at))
        {
            foreach (string name in References(at).Where(n => !order.Contains(n)))
            {
                order.Add(name);
                waiting.Enqueue(definitions.GetProperty(name));
            }
        }

        return order;
    }

    private static IEnumerable<string> References(JsonElement at) =>
        at.ValueKind switch
        {
            JsonValueKind.Object => at.EnumerateObject()
                .SelectMany(p =>
                    p.NameEquals("$ref") ? [p.Value.GetString()!["#/$defs/".Length..]] : References(p.Value)
                ),
            JsonValueKind.Array => at.EnumerateArray().SelectMany(References),
            _ => [],
        };

    /// <summary>What a value looks like, and which objects stand in it.</summary>
    private static string Form(JsonElement property, JsonElement definitions)
    {
        JsonElement at = property.GetProperty("allOf")[0];
        return Form(at, definitions, 0);
    }

    private static string Form(JsonElement at, JsonElement definitions, int depth)
    {
        if (at.TryGetProperty("$ref", out JsonElement reference))
        {
            string name = reference.GetString()!["#/$defs/".Length..];
            JsonElement definition = definitions.GetProperty(name);
            return definition.TryGetProperty("properties", out _) ? $"{{ {name} }}" : Quantity(name);
        }

        if (at.TryGetProperty("enum", out JsonElement words))
        {
            return string.Join(" | ", words.EnumerateArray().Select(w => w.GetRawText()));
        }

        foreach (string key in new[] { "oneOf", "anyOf", "allOf" })
        {
            if (at.TryGetProperty(key, out JsonElement branches))
            {
                return string.Join(" | ", branches.EnumerateArray().Select(b => Form(b, definitions, depth + 1)));
            }
        }

        return at.GetProperty("type").GetString()! switch
        {
            "array" => $"[ {Form(at.GetProperty("items"), definitions, depth + 1)}, ... ]",
            "integer" => at.GetProperty("minimum").GetRawText(),
            "number" => "1.0",
            "string" => "\"...\"",
            string other => other,
        };
    }

    /// <summary>A quantity as a person would write it, for properties that no bundled document holds.</summary>
    private static string Quantity(string kind) =>
        kind.Replace("-above-zero", "", StringComparison.Ordinal)
            .Replace("-from-zero", "", StringComparison.Ordinal) switch
        {
            "absolute-pressure" => "\"100 kPa absolute\"",
            "acceleration" => "\"5 m/s2\"",
            "area" => "\"600 mm2\"",
            "current" => "\"5 A\"",
            "density" => "\"745 kg/m3\"",
            "duration" => "\"0.8 ms\"",
            "dynamic-viscosity" => "\"0.5 mPa s\"",
            "gauge-pressure" => "\"0.5 bar gauge\"",
            "kinematic-viscosity" => "\"50 mm2/s\"",
            "length" => "\"8 mm\"",
            "mass" => "\"20 g\"",
            "mass-flow" => "\"3.2 g/s\"",
            "power" => "\"60 W\"",
            "pressure-difference" => "\"300 kPa\"",
            "ratio" => "\"2 %\"",
            "resistance" => "\"15 mohm\"",
            "rotational-speed" => "\"6000 rpm\"",
            "specific-energy" => "\"43 MJ/kg\"",
            "speed" => "\"4 m/s\"",
            "temperature" => "\"20 degC\"",
            "voltage" => "\"13.8 V\"",
            "volume" => "\"500 cm3\"",
            "volume-flow" => "\"100 L/h\"",
            _ => throw new InvalidOperationException($"No example of a quantity of kind '{kind}'."),
        };
}

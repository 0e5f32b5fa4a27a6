using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace FuelMath.Fuzz;

/// <summary>Damages a document: as bytes, or as a tree, where values, names and parts of other documents change places.</summary>
internal sealed class DocumentDamage(byte[][] corpus)
{
    private const int MostChanges = 4;
    private const int ManyTimes = 200;

    private readonly JsonNode[] donors = [.. corpus.Select(b => JsonNode.Parse(b)!)];

    private static readonly string[] Texts =
    [
        "",
        " ",
        "-1 bar",
        "0 bar gauge",
        "1e308 L/h",
        "1e-320 mm",
        "NaN V",
        "Infinity",
        "1e29 W",
        "3 bar",
        "\u001b[31m",
        "a\nb",
        "-0 mm",
        "45 °C",
        "-300 °C",
        "true",
        "9999999999999999999999999999999999999999",
    ];

    internal byte[] Of(byte[] document, Random random)
    {
        if (random.Next(4) == 0)
        {
            return Bytes(document, random);
        }

        JsonNode tree = JsonNode.Parse(document)!;
        bool numbersOnly = random.Next(3) == 0;
        for (int i = random.Next(1, MostChanges + 1); i > 0; i--)
        {
            if (numbersOnly)
            {
                ChangeNumber(tree, random);
            }
            else
            {
                Change(tree, random);
            }
        }

        byte[] changed = Encoding.UTF8.GetBytes(tree.ToJsonString());
        return random.Next(10) == 0 ? Bytes(changed, random) : changed;
    }

    private byte[] Bytes(byte[] document, Random random)
    {
        List<byte> bytes = [.. document];
        for (int i = random.Next(1, MostChanges + 1); i > 0 && bytes.Count > 0; i--)
        {
            int at = random.Next(bytes.Count);
            switch (random.Next(6))
            {
                case 0:
                    bytes[at] = (byte)random.Next(256);
                    break;
                case 1:
                    bytes.RemoveRange(at, Math.Min(random.Next(1, 30), bytes.Count - at));
                    break;
                case 2:
                    bytes.Insert(at, (byte)random.Next(256));
                    break;
                case 3:
                    byte[] other = corpus[random.Next(corpus.Length)];
                    int from = random.Next(other.Length);
                    bytes.InsertRange(
                        at,
                        other.AsSpan(from, Math.Min(random.Next(1, 200), other.Length - from)).ToArray()
                    );
                    break;
                case 4:
                    bytes.RemoveRange(at, bytes.Count - at);
                    break;
                default:
                    bytes.InsertRange(at, Encoding.UTF8.GetBytes(new string('[', random.Next(1, ManyTimes))));
                    break;
            }
        }

        return [.. bytes];
    }

    private void Change(JsonNode tree, Random random)
    {
        JsonNode at = Somewhere(tree, random);
        if (at is JsonObject members && members.Count > 0)
        {
            string name = members.ElementAt(random.Next(members.Count)).Key;
            switch (random.Next(5))
            {
                case 0:
                    members.Remove(name);
                    break;
                case 1:
                    JsonNode? moved = members[name];
                    members.Remove(name);
                    members[name + "s"] = moved;
                    break;
                case 2:
                    if (Somewhere(donors[random.Next(donors.Length)], random) is JsonObject other && other.Count > 0)
                    {
                        (string added, JsonNode? value) = other.ElementAt(random.Next(other.Count));
                        members[added] = value?.DeepClone();
                    }

                    break;
                default:
                    members[name] = Value(members[name], random);
                    break;
            }
        }
        else if (at is JsonArray items)
        {
            int index = random.Next(items.Count + 1);
            switch (random.Next(4))
            {
                case 0 when items.Count > 0:
                    items.RemoveAt(random.Next(items.Count));
                    break;
                case 1 when items.Count > 0:
                    JsonNode? one = items[random.Next(items.Count)];
                    for (int i = random.Next(20) == 0 ? ManyTimes : 1; i > 0; i--)
                    {
                        items.Add(one?.DeepClone());
                    }

                    break;
                default:
                    items.Insert(index, Value(items.Count > 0 ? items[0] : null, random));
                    break;
            }
        }
    }

    /// <summary>A document with other numbers is often read, so that what comes after the reading is fed, too.</summary>
    private static void ChangeNumber(JsonNode tree, Random random)
    {
        JsonNode at = Somewhere(tree, random);
        if (at is JsonObject members && members.Count > 0)
        {
            string name = members.ElementAt(random.Next(members.Count)).Key;
            members[name] = Near(members[name], random);
        }
        else if (at is JsonArray items && items.Count > 0)
        {
            int index = random.Next(items.Count);
            items[index] = Near(items[index], random);
        }
    }

    private JsonNode? Value(JsonNode? old, Random random) =>
        random.Next(9) switch
        {
            0 => null,
            1 => Texts[random.Next(Texts.Length)],
            2 => random.Next(-3, 100),
            3 => random.Next(2) == 0,
            4 => new JsonArray(),
            5 => new JsonObject(),
            6 => Somewhere(donors[random.Next(donors.Length)], random).DeepClone(),
            _ => Near(old, random),
        };

    /// <summary>A text that begins with a number keeps its unit and gets another number; else as it was.</summary>
    private static JsonNode? Near(JsonNode? old, Random random)
    {
        if (old is not JsonValue value || !value.TryGetValue(out string? text))
        {
            return old?.DeepClone();
        }

        int space = text.IndexOf(' ', StringComparison.Ordinal);
        double factor = random.Next(12) switch
        {
            0 => 0,
            1 => -1,
            2 => 1e6,
            3 => 1e-6,
            _ => 0.5 + random.NextDouble(),
        };
        return
            space > 0
            && double.TryParse(
                text.AsSpan(0, space),
                NumberStyles.Float,
                CultureInfo.InvariantCulture,
                out double number
            )
            ? string.Create(CultureInfo.InvariantCulture, $"{number * factor}{text[space..]}")
            : old.DeepClone();
    }

    private static JsonNode Somewhere(JsonNode tree, Random random)
    {
        JsonNode at = tree;
        while (random.Next(4) > 0)
        {
            JsonNode[] inner = at switch
            {
                JsonObject members => [.. members.Select(m => m.Value).OfType<JsonNode>()],
                JsonArray items => [.. items.OfType<JsonNode>()],
                _ => [],
            };
            JsonNode[] open = [.. inner.Where(n => n is JsonObject or JsonArray)];
            if (open.Length == 0)
            {
                break;
            }

            at = open[random.Next(open.Length)];
        }

        return at;
    }
}

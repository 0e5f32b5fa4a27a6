using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace FuelMath.Tests.Documents;

/// <summary>The same document written otherwise: lists and properties in another order, quantities in other units.</summary>
internal static partial class Respelling
{
    /// <summary>Lists whose order says nothing: each of their members is named, or found by what it holds.</summary>
    private static readonly HashSet<string> Unordered =
    [
        "nodes",
        "lines",
        "injectors",
        "fuels",
        "seats",
        "feeds",
        "branches",
        "sources",
        "loads",
        "uncertain",
        "estimates",
        "cautions",
    ];

    /// <summary>The unit to write in place of another, and what to multiply by: from the definitions of the units.</summary>
    private static readonly Dictionary<string, (string Unit, double Factor)> Others = new()
    {
        ["kPa"] = ("psi", 1 / 6.894757293168361),
        ["L/h"] = ("US gal/h", 1 / 3.785411784),
        ["cm3/min"] = ("L/h", 0.06),
        ["g/s"] = ("kg/h", 3.6),
        ["mm"] = ("in", 1 / 25.4),
        ["m"] = ("ft", 1 / 0.3048),
        ["cm3"] = ("L", 1e-3),
        ["mm2"] = ("cm2", 1e-2),
        ["ms"] = ("us", 1e3),
        ["rpm"] = ("rad/s", Math.PI / 30),
        ["V"] = ("mV", 1e3),
        ["A"] = ("mA", 1e3),
        ["mohm"] = ("ohm", 1e-3),
        ["kg/m3"] = ("g/cm3", 1e-3),
        ["%"] = ("1", 1e-2),
    };

    /// <summary>Properties whose text is a name or a size, and no quantity.</summary>
    private static readonly HashSet<string> Texts = ["name", "size", "from", "to", "version", "locator", "ratio"];

    internal static JsonNode? Shuffled(JsonNode? node, Random random, string property = "") =>
        node switch
        {
            JsonObject o => new JsonObject(
                InOtherOrder(o.ToArray(), random)
                    .Select(p => KeyValuePair.Create(p.Key, Shuffled(p.Value, random, p.Key)))
            ),
            JsonArray a => new JsonArray([
                .. (Unordered.Contains(property) ? InOtherOrder([.. a], random) : [.. a]).Select(n =>
                    Shuffled(n, random)
                ),
            ]),
            _ => node?.DeepClone(),
        };

    internal static JsonNode? InOtherUnits(JsonNode? node, string property = "") =>
        node switch
        {
            JsonObject o => new JsonObject(o.Select(p => KeyValuePair.Create(p.Key, InOtherUnits(p.Value, p.Key)))),
            JsonArray a => new JsonArray([.. a.Select(n => InOtherUnits(n, property))]),
            JsonValue v when !Texts.Contains(property) && v.TryGetValue(out string? text) => JsonValue.Create(
                InOtherUnit(text)
            ),
            _ => node?.DeepClone(),
        };

    private static string InOtherUnit(string text)
    {
        Match match = Quantity().Match(text);
        if (!match.Success || !Others.TryGetValue(match.Groups[2].Value, out (string Unit, double Factor) other))
        {
            return text;
        }

        double number = double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) * other.Factor;
        return string.Create(CultureInfo.InvariantCulture, $"{number:R} {other.Unit}{match.Groups[3].Value}");
    }

    private static T[] InOtherOrder<T>(T[] items, Random random)
    {
        random.Shuffle(items);
        return items;
    }

    [GeneratedRegex("^(-?[0-9.]+) ([^ ]+)( gauge| absolute)?$")]
    private static partial Regex Quantity();
}

using System.Globalization;

namespace FuelMath;

/// <summary>The size of a wire in trade notation: "12 AWG", "2/0 AWG" or "2.5 mm2".</summary>
internal sealed class WireSizeShape : Shape<WireSize>
{
    private const string Suffix = " AWG";

    internal static WireSizeShape Instance { get; } = new();

    internal override string Wanted => "the size of a wire, for example \"12 AWG\", \"1/0 AWG\" or \"2.5 mm2\"";

    internal override WireSize Read(JsonItem item)
    {
        string text = Expect(item, JsonItemKind.Text).Text;
        try
        {
            return text.EndsWith(Suffix, StringComparison.Ordinal)
                ? WireSize.FromAwg(Gauge(text[..^Suffix.Length]) ?? throw item.RefuseKind(Wanted))
                : WireSize.FromArea(QuantityShapes.Area.Read(item));
        }
        catch (ArgumentOutOfRangeException)
        {
            throw item.Refuse(
                RefusalCode.NoGauge,
                "Must be a gauge from 4/0 AWG to 40 AWG, or an area greater than zero."
            );
        }
    }

    internal override JsonText Write(WireSize value) =>
        value.Gauge is null ? QuantityShapes.Area.Write(value.Area) : JsonText.Of(value.Name);

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object(
            (
                "anyOf",
                JsonText.List([
                    JsonText.Object(
                        ("type", JsonText.Of("string")),
                        ("pattern", JsonText.Of("^([1-4]/0|[1-9]|[1-3][0-9]|40) AWG$"))
                    ),
                    QuantityShapes.Area.Positive.Schema(definitions),
                ])
            )
        );

    /// <summary>1/0 is gauge 0, 2/0 is gauge -1, and so on.</summary>
    private static int? Gauge(string text)
    {
        bool zeros = text.EndsWith("/0", StringComparison.Ordinal);
        return
            int.TryParse(zeros ? text[..^2] : text, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            && number >= 1
            ? zeros
                ? 1 - number
                : number
            : null;
    }
}

using System.Globalization;

namespace FuelMath;

/// <summary>A ratio of premix as on the bottle: "50:1".</summary>
internal sealed class PremixRatioShape : Shape<PremixRatio>
{
    private const int MostParts = 1000;
    private const string One = ":1";

    internal static PremixRatioShape Instance { get; } = new();

    internal override string Wanted => "a whole number from 1 to 1000 and \":1\" as text, for example \"50:1\"";

    internal override PremixRatio Read(JsonItem item)
    {
        string text = Expect(item, JsonItemKind.Text).Text;
        return
            text.EndsWith(One, StringComparison.Ordinal)
            && int.TryParse(text[..^One.Length], NumberStyles.None, CultureInfo.InvariantCulture, out int parts)
            && parts is >= 1 and <= MostParts
            ? PremixRatio.FromParts(parts)
            : throw item.RefuseKind(Wanted);
    }

    internal override JsonText Write(PremixRatio value) => JsonText.Of(value.ToString());

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object(("type", JsonText.Of("string")), ("pattern", JsonText.Of("^0*([1-9][0-9]{0,2}|1000):1$")));
}

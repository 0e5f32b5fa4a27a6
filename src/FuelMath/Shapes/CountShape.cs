using System.Globalization;

namespace FuelMath;

/// <summary>A whole number in a range.</summary>
internal sealed class CountShape : Shape<int>
{
    private readonly int least;
    private readonly int most;

    internal CountShape(int least, int most)
    {
        this.least = least;
        this.most = most;
    }

    internal override string Wanted =>
        string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}");

    internal override int Read(JsonItem item)
    {
        string text = Expect(item, JsonItemKind.Number).Text;
        return
            int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value)
            && value >= least
            && value <= most
            ? value
            : throw item.RefuseKind(Wanted);
    }

    internal override JsonText Write(int value) => JsonText.Of(value);

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object(
            ("type", JsonText.Of("integer")),
            ("minimum", JsonText.Of(least)),
            ("maximum", JsonText.Of(most))
        );
}

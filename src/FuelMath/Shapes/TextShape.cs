namespace FuelMath.Shapes;

/// <summary>A text that is not blank.</summary>
internal sealed class TextShape : Shape<string>
{
    private const int Characters = 200;

    internal static TextShape Name { get; } = new("a name, a text of 1 to 200 characters");

    internal static TextShape Note { get; } = new("a text of 1 to 200 characters");

    private TextShape(string wanted) => Wanted = wanted;

    internal override string Wanted { get; }

    internal override string Read(JsonItem item)
    {
        string text = Expect(item, JsonItemKind.Text).Text;
        return text.Length <= Characters && !string.IsNullOrWhiteSpace(text)
            ? text
            : throw item.Refuse($"Must be {Wanted}, not blank.");
    }

    internal override JsonText Write(string value) => JsonText.Of(value);

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object(
            ("type", JsonText.Of("string")),
            ("maxLength", JsonText.Of(Characters)),
            ("pattern", JsonText.Of(@"\S"))
        );
}

using System.Globalization;

namespace FuelMath;

/// <summary>A text that is not blank and of limited length.</summary>
internal sealed class TextShape : Shape<string>
{
    private readonly int characters;

    private TextShape(string what, int characters)
    {
        this.characters = characters;
        Wanted = string.Create(CultureInfo.InvariantCulture, $"{what} of 1 to {characters} characters");
    }

    internal static TextShape Name { get; } = new("a name, a text", 200);

    internal static TextShape Note { get; } = new("a text", 1000);

    internal override string Wanted { get; }

    internal override string Read(JsonItem item)
    {
        string text = Expect(item, JsonItemKind.Text).Text;
        return Fits(text)
            ? text
            : throw item.Refuse(RefusalCode.Blank, $"Must be {Wanted:wanted}, not blank, without control characters.");
    }

    /// <summary>Refuses to write what could not be read again.</summary>
    internal override JsonText Write(string value) =>
        Fits(value) && Surrogates.BrokenAt(value) < 0
            ? JsonText.Of(value)
            : throw new RefusedArgumentException(
                RefusalCode.NotWritable,
                $"A document needs {Wanted:wanted}, not blank, without control characters, with complete surrogate pairs; it was {JsonItem.Quote(value):given}.",
                nameof(value)
            );

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object(
            ("type", JsonText.Of("string")),
            ("maxLength", JsonText.Of(characters)),
            ("pattern", JsonText.Of(@"\S"))
        );

    private bool Fits(string text) =>
        text.Length <= characters && !string.IsNullOrWhiteSpace(text) && Echo.ControlAt(text) < 0;
}

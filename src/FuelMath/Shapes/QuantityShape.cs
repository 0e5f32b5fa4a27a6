using System.Text.RegularExpressions;

namespace FuelMath;

/// <summary>A quantity as text with its unit, written in one chosen unit.</summary>
internal sealed class QuantityShape<T> : Shape<T>
    where T : struct
{
    private readonly QuantityKind<T> kind;
    private readonly string unit;

    internal QuantityShape(QuantityKind<T> kind, string unit)
    {
        this.kind = kind;
        this.unit = unit;
        Wanted = $"a {kind.Name} as text with its unit, for example \"1 {unit}\"";
    }

    internal override string Wanted { get; }

    internal override T Read(JsonItem item)
    {
        string text = Expect(item, JsonItemKind.Text).Text;
        return kind.Read(text, null, out T value) is { } problem ? throw item.Refuse(problem.Message) : value;
    }

    internal override JsonText Write(T value) => JsonText.Of(kind.Format(value, unit, null));

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        definitions.Refer(
            kind.Name.Replace(' ', '-'),
            () =>
                JsonText.Object(
                    ("description", JsonText.Of($"A {kind.Name}: a number and one of {kind.Kind.Allowed}.")),
                    ("type", JsonText.Of("string")),
                    ("maxLength", JsonText.Of(QuantityReading.MaximumLength)),
                    ("pattern", JsonText.Of(Pattern))
                )
        );

    private string Pattern
    {
        get
        {
            IEnumerable<string> spellings = kind.Kind.Units.SelectMany(u => u.Spellings).Select(Regex.Escape);

            // Regex.Escape escapes spaces, which is an error in the patterns of schemas.
            string units = string.Join('|', spellings).Replace(@"\ ", " ", StringComparison.Ordinal);
            return $@"^\s*[+-]?([0-9]+\.?[0-9]*|\.[0-9]+)([eE][+-]?[0-9]+)?\s*({units})\s*$";
        }
    }
}

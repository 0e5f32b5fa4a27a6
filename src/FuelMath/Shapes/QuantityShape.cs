namespace FuelMath;

/// <summary>A quantity as text with its unit, written in one chosen unit.</summary>
internal sealed class QuantityShape<T> : Shape<T>
    where T : struct
{
    private readonly QuantityKind<T> kind;
    private readonly string unit;
    private readonly Sign sign;

    internal QuantityShape(QuantityKind<T> kind, string unit, Sign sign = Sign.Any)
    {
        (this.kind, this.unit, this.sign) = (kind, unit, sign);
        Wanted = $"a {kind.Name} as text with its unit, for example \"1 {unit}\"";
    }

    /// <summary>The same, greater than zero.</summary>
    internal QuantityShape<T> Positive => new(kind, unit, Sign.Positive);

    /// <summary>The same, zero or more.</summary>
    internal QuantityShape<T> NotNegative => new(kind, unit, Sign.NotNegative);

    internal override string Wanted { get; }

    internal override T Read(JsonItem item)
    {
        string text = Expect(item, JsonItemKind.Text).Text;
        return kind.Read(text, null, out T value) is { } problem ? throw item.Refuse(problem.Message, problem) : value;
    }

    internal override DocumentException? RefuseSign(JsonItem item)
    {
        T value = Read(item);
        if (sign.Allows(kind.Si(value)) || WrittenQuantity.Of(item.Text, kind.Kind) is not var (number, found))
        {
            return null;
        }

        RefusedValueException problem = WrittenRefusal.In(
            sign.Refused(item.Name, value, new Amount(number, found.Symbol)),
            same => same,
            found.Symbol,
            item.Text
        );
        return item.Refuse(problem.Sentence, problem);
    }

    internal override JsonText Write(T value) => JsonText.Of(kind.Format(value, unit, null));

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        definitions.Refer(
            kind.Name.Replace(' ', '-') + sign.NameEnd(),
            () =>
                JsonText.Object(
                    (
                        "description",
                        JsonText.Of(
                            $"{("aeiou".Contains(kind.Name[0]) ? "An" : "A")} {kind.Name}{sign.Words()}: a number and one of {kind.Kind.Allowed}."
                        )
                    ),
                    ("type", JsonText.Of("string")),
                    ("maxLength", JsonText.Of(QuantityReading.MaximumLength)),
                    ("pattern", JsonText.Of(sign.Pattern(kind.Kind)))
                )
        );
}

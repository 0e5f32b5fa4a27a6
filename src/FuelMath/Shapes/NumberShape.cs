using System.Globalization;

namespace FuelMath;

/// <summary>A pure number, as a JSON number.</summary>
internal sealed class NumberShape : Shape<double>
{
    private readonly Sign sign;

    private NumberShape(Sign sign) => this.sign = sign;

    internal static NumberShape Instance { get; } = new(Sign.Any);

    internal static NumberShape Positive { get; } = new(Sign.Positive);

    internal static NumberShape NotNegative { get; } = new(Sign.NotNegative);

    internal override string Wanted => "a pure number, without quotes or unit";

    internal override double Read(JsonItem item)
    {
        string text = Expect(item, JsonItemKind.Number).Text;
        return
            double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            && double.IsFinite(value)
            ? value
            : throw item.Refuse(RefusalCode.NotFinite, "Must be a finite number.");
    }

    internal override DocumentException? RefuseSign(JsonItem item)
    {
        double value = Read(item);
        if (sign.Allows(value))
        {
            return null;
        }

        RefusedValueException problem = sign.Refused(item.Name, value, new Amount(value, ""));
        return item.Refuse(problem.Sentence, problem);
    }

    internal override JsonText Write(double value) => JsonText.Of(value + 0.0);

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object([("type", JsonText.Of("number")), .. sign.Limits()]);
}

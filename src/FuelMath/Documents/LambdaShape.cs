namespace FuelMath;

/// <summary>A lambda as a pure number.</summary>
internal sealed class LambdaShape : Shape<Lambda>
{
    internal static LambdaShape Instance { get; } = new();

    internal override string Wanted => "a lambda, a pure number greater than zero";

    internal override Lambda Read(JsonItem item)
    {
        double value = NumberShape.Instance.Read(Expect(item, JsonItemKind.Number));
        return value > 0 ? Lambda.FromRatio(value) : throw item.RefuseKind(Wanted);
    }

    internal override JsonText Write(Lambda value) => NumberShape.Instance.Write(value.ToRatio());

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object(("type", JsonText.Of("number")), ("exclusiveMinimum", JsonText.Of(0)));
}

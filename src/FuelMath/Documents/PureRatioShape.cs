using UnitsNet;

namespace FuelMath;

/// <summary>A pure number by definition, such as a loss coefficient: written as a number, not as a percentage.</summary>
internal sealed class PureRatioShape : Shape<Ratio>
{
    private readonly NumberShape number;

    private PureRatioShape(NumberShape number) => this.number = number;

    internal static PureRatioShape Positive { get; } = new(NumberShape.Positive);

    internal static PureRatioShape NotNegative { get; } = new(NumberShape.NotNegative);

    internal override string Wanted => number.Wanted;

    internal override Ratio Read(JsonItem item) => SiUnits.Ratio(number.Read(item));

    internal override DocumentException? RefuseSign(JsonItem item) => number.RefuseSign(item);

    internal override JsonText Write(Ratio value) => number.Write(value.InSi());

    internal override JsonText Schema(SchemaDefinitions definitions) => number.Schema(definitions);
}

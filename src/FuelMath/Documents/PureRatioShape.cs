using UnitsNet;

namespace FuelMath;

/// <summary>A pure number by definition, such as a loss coefficient: written as a number, not as a percentage.</summary>
internal sealed class PureRatioShape : Shape<Ratio>
{
    internal static PureRatioShape Instance { get; } = new();

    internal override string Wanted => NumberShape.Instance.Wanted;

    internal override Ratio Read(JsonItem item) => SiUnits.Ratio(NumberShape.Instance.Read(item));

    internal override JsonText Write(Ratio value) => NumberShape.Instance.Write(value.InSi());

    internal override JsonText Schema(SchemaDefinitions definitions) => NumberShape.Instance.Schema(definitions);
}

using FuelMath.Fuels;
using FuelMath.Shapes;

namespace FuelMath.Documents;

/// <summary>Any fuel: known by name or data sheet, mixed from others, or described by its own measured points.</summary>
internal static class FuelShape
{
    internal static UnionShape<Fuel> Shape { get; } =
        new(
            StandardFuelShapes.Named,
            StandardFuelShapes.Gasoline,
            StandardFuelShapes.TwoStrokeOil,
            BlendShapes.ByVolume,
            BlendShapes.ByMass,
            BlendShapes.Premix,
            UnionCase<Fuel>.Of(OwnFuelShape.Shape, f => f.Recipe is null)
        );
}

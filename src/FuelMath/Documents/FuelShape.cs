namespace FuelMath;

/// <summary>
/// Fuels: the library's own by name alone; others in full, at the root of a document or as a part of a blend.
/// </summary>
internal static class FuelShape
{
    /// <summary>A fuel in full: from a data sheet, mixed from others, or by its own measured points.</summary>
    internal static UnionShape<Fuel> Full { get; } =
        new(
            StandardFuelShapes.Gasoline,
            StandardFuelShapes.TwoStrokeOil,
            BlendShapes.ByVolume,
            BlendShapes.ByMass,
            BlendShapes.Premix,
            BlendShapes.E85,
            OwnFuelShape.Shape
        );

    /// <summary>A fuel as a component of another.</summary>
    internal static Shape<Fuel> Part { get; } = new WordOrShape<Fuel>(StandardFuelShapes.Words, Full);

    /// <summary>The fuels at the root.</summary>
    internal static NamedListShape<Fuel> List { get; } = new("fuels", Full, 50);

    /// <summary>A fuel that a part refers to.</summary>
    internal static Shape<Fuel> Reference { get; } =
        new ReferenceShape<Fuel>("a fuel", List, f => f.Name, StandardFuelShapes.Words);

    /// <summary>Whether its name is enough.</summary>
    internal static bool IsStandard(Fuel fuel) => StandardFuelShapes.Words.Has(fuel);
}

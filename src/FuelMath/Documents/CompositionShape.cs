using UnitsNet;

namespace FuelMath;

/// <summary>What a fuel is made of, by mass.</summary>
internal static class CompositionShape
{
    private static readonly ValueProperty<ElementalComposition, Ratio> Carbon = Of("carbon", c => c.Carbon);

    private static readonly ValueProperty<ElementalComposition, Ratio> Hydrogen = Of("hydrogen", c => c.Hydrogen);

    private static readonly ValueProperty<ElementalComposition, Ratio> Oxygen = Of("oxygen", c => c.Oxygen);

    private static readonly ValueProperty<ElementalComposition, Ratio> Nitrogen = Of("nitrogen", c => c.Nitrogen);

    private static readonly ValueProperty<ElementalComposition, Ratio> Sulfur = Of("sulfur", c => c.Sulfur);

    internal static ObjectShape<ElementalComposition> Shape { get; } =
        new(
            "composition",
            "Mass fractions of the elements, which add up to 100 %.",
            [Carbon, Hydrogen, Oxygen, Nitrogen, Sulfur],
            f => new(f.Of(Carbon), f.Of(Hydrogen), f.Of(Oxygen), f.Of(Nitrogen), f.Of(Sulfur))
        );

    private static ValueProperty<ElementalComposition, Ratio> Of(string name, Func<ElementalComposition, Ratio> get) =>
        new(name, $"Mass fraction of {name}.", QuantityShapes.Ratio, get);
}

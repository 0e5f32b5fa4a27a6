using UnitsNet;

namespace FuelMath;

/// <summary>The composition of a fuel by mass.</summary>
internal static class CompositionShape
{
    internal static ObjectShape<ElementalComposition> Shape { get; } =
        new(o =>
        {
            o.Is("composition", "Mass fractions of the elements, which add up to 100 %.");
            var carbon = Share(o, "carbon", c => c.Carbon);
            var hydrogen = Share(o, "hydrogen", c => c.Hydrogen);
            var oxygen = Share(o, "oxygen", c => c.Oxygen);
            var nitrogen = Share(o, "nitrogen", c => c.Nitrogen);
            var sulfur = Share(o, "sulfur", c => c.Sulfur);
            return f => new(f.Of(carbon), f.Of(hydrogen), f.Of(oxygen), f.Of(nitrogen), f.Of(sulfur));
        });

    private static ValueProperty<ElementalComposition, Ratio> Share(
        ObjectBuilder<ElementalComposition> o,
        string name,
        Func<ElementalComposition, Ratio> get
    ) => o.Required(name, QuantityShapes.Ratio.NotNegative, get).Says($"Mass fraction of {name}.");
}

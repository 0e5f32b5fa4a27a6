using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A property of a fuel as points over temperature.</summary>
internal static class PropertyPointsShape
{
    internal delegate TProperty Make<TProperty, TValue>(
        IEnumerable<Temperature> temperatures,
        IEnumerable<TValue> values,
        DataSource source
    );

    internal static ObjectShape<TProperty> Of<TProperty, TValue>(
        string name,
        string valuesName,
        Shape<TValue> value,
        Func<TProperty, GivenPoints<TValue>?> points,
        Make<TProperty, TValue> make,
        params ImmutableArray<Property<TProperty>> before
    )
        where TValue : struct
    {
        GivenPoints<TValue> Given(TProperty property) =>
            points(property)
            ?? throw new ArgumentException(
                $"The {name} of a fuel can't be written, because it was not made from points.",
                nameof(property)
            );

        ValueProperty<TProperty, ImmutableArray<Temperature>> temperatures = new(
            "temperatures",
            "Temperatures of the points, rising.",
            TableShapes.Knots(QuantityShapes.Temperature),
            p => Given(p).Temperatures
        );
        ValueProperty<TProperty, ImmutableArray<TValue>> values = new(
            valuesName,
            "As many values.",
            TableShapes.Knots(value),
            p => Given(p).Values
        );
        ValueProperty<TProperty, DataSource> source = SourceShape.Of<TProperty>(p => Given(p).Source);
        return new(
            name.Replace(' ', '-'),
            $"The {name} of a fuel through measured points.",
            [.. before, temperatures, values, source],
            f => make(f.Of(temperatures), f.Of(values), f.Of(source))
        );
    }
}

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
        Action<ObjectBuilder<TProperty>>? begin = null
    )
        where TValue : struct
    {
        GivenPoints<TValue> Given(TProperty property) =>
            points(property)
            ?? throw new RefusedArgumentException(
                RefusalCode.NotWritable,
                $"The {name:subject} of a fuel can't be written, because it was not made from points.",
                nameof(property)
            );

        return new(o =>
        {
            o.Is(name.Replace(' ', '-'), $"The {name} of a fuel through measured points.");
            begin?.Invoke(o);
            var temperatures = o.Required(
                    "temperatures",
                    QuantityShapes.Temperature.Knots(),
                    p => Given(p).Temperatures
                )
                .Says("Temperatures of the points, rising.");
            var values = o.Required(valuesName, value.Knots(), p => Given(p).Values).Says("As many values.");
            var source = o.Source(p => Given(p).Source);
            return f => make(f.Of(temperatures), f.Of(values), f.Of(source));
        });
    }
}

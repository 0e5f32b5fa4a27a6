namespace FuelMath;

/// <summary>The measured exponent of pressure of a static flow.</summary>
internal static class MeasuredExponentShape
{
    internal static ObjectShape<MeasuredExponent> Shape { get; } =
        new(o =>
        {
            o.Is("measured-exponent", "A measured power of pressure in place of the square root.");
            var power = o.Required("power", PureRatioShape.Positive, e => e.Exponent, parameter: "exponent")
                .Says("The power, where 0.5 is the square root.");
            var low = o.Required(
                    "lowestDifferentialPressure",
                    QuantityShapes.PressureDifference.Positive,
                    e => e.LowestDifferentialPressure
                )
                .Says("The lowest pressure of the readings.");
            var high = o.Required(
                    "highestDifferentialPressure",
                    QuantityShapes.PressureDifference.Positive,
                    e => e.HighestDifferentialPressure
                )
                .Says("The highest pressure of the readings.");
            var outside = o.Required(
                    "outside",
                    ChoiceShape.Of(("refuse", OutsideRange.Refuse), ("extend", OutsideRange.Extend)),
                    e => e.Outside
                )
                .Says("What happens beyond the pressures of the readings.");
            var source = o.Source(e => e.Source);
            return f => new(f.Of(power), f.Of(low), f.Of(high), f.Of(outside), f.Of(source));
        });
}

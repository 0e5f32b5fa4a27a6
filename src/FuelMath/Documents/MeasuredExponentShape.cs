using UnitsNet;

namespace FuelMath;

/// <summary>The power of pressure that a static flow was measured to follow.</summary>
internal static class MeasuredExponentShape
{
    private static readonly ValueProperty<MeasuredExponent, Ratio> Power = new(
        "power",
        "The power, where 0.5 is the square root.",
        PureRatioShape.Instance,
        e => e.Exponent
    )
    {
        Parameter = "exponent",
    };

    private static readonly ValueProperty<MeasuredExponent, Pressure> Low = new(
        "lowestDifferentialPressure",
        "The lowest pressure of the readings.",
        QuantityShapes.PressureDifference,
        e => e.LowestDifferentialPressure
    );

    private static readonly ValueProperty<MeasuredExponent, Pressure> High = new(
        "highestDifferentialPressure",
        "The highest pressure of the readings.",
        QuantityShapes.PressureDifference,
        e => e.HighestDifferentialPressure
    );

    private static readonly ValueProperty<MeasuredExponent, OutsideRange> Outside = new(
        "outside",
        "What happens beyond the pressures of the readings.",
        new ChoiceShape<OutsideRange>(("refuse", OutsideRange.Refuse), ("extend", OutsideRange.Extend)),
        e => e.Outside
    );

    private static readonly ValueProperty<MeasuredExponent, DataSource> Source = SourceShape.Of<MeasuredExponent>(e =>
        e.Source
    );

    internal static ObjectShape<MeasuredExponent> Shape { get; } =
        new(
            "measured-exponent",
            "A measured power of pressure in place of the square root.",
            [Power, Low, High, Outside, Source],
            f => new(f.Of(Power), f.Of(Low), f.Of(High), f.Of(Outside), f.Of(Source))
        );
}

using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath;

/// <summary>What of a description is uncertain: one kind of object for each way to make an <see cref="UncertainInput"/>.</summary>
internal static class UncertainInputShape
{
    private static readonly ChoiceShape<SpreadShape> Spread = new(
        ("normal", SpreadShape.Normal),
        ("rectangular", SpreadShape.Rectangular),
        ("triangular", SpreadShape.Triangular)
    );

    internal static UnionShape<UncertainInput> Shape { get; } =
        new(
            Share("injector flow", "The static flow of all injectors alike.", UncertainInput.InjectorFlow),
            Share("each injector flow", "The static flow of each injector by itself.", UncertainInput.EachInjectorFlow),
            Of(
                "dead time",
                "The dead time of all injectors alike.",
                QuantityShapes.Duration.Positive,
                UncertainInput.DeadTime
            ),
            Share("pump flow", "The flow of all pumps alike, at each pressure rise.", UncertainInput.PumpFlow),
            Of(
                "regulator set point",
                "What all regulators hold.",
                QuantityShapes.PressureDifference.Positive,
                UncertainInput.RegulatorSetPoint,
                "standardDifference"
            ),
            Share("fuel density", "The density of the fuel in the tank.", UncertainInput.FuelDensity)
        );

    private static ObjectShape<UncertainInput> Share(
        string kind,
        string words,
        Func<Ratio, SpreadShape, DataSource, UncertainInput> make
    ) => Of(kind, words, QuantityShapes.Ratio.Positive, make);

    private static ObjectShape<UncertainInput> Of<T>(
        string kind,
        string words,
        Shape<T> quantity,
        Func<T, SpreadShape, DataSource, UncertainInput> make,
        string? parameter = null
    ) =>
        new(o =>
        {
            o.Is($"uncertain-{kind.Replace(' ', '-')}", words);
            o.Kind(kind, "What is uncertain.", i => i.Kind == kind);
            var deviation = o.Required("standardDeviation", quantity, i => (T)(object)i.StandardDeviation, parameter)
                .Says(
                    "Its standard deviation: half of the distance that 19 of 20 lie within; of a rectangle half of its width over the root of 3."
                );
            var spread = o.Optional("shape", Spread, i => i.Shape == SpreadShape.Normal ? null : i.Shape)
                .Says(
                    "The shape of its scatter: normal when left out; rectangular where all values between two ends are alike."
                );
            var source = o.Source(i => i.Source);
            return f => make(f.Of(deviation), f.Of(spread) ?? SpreadShape.Normal, f.Of(source));
        });
}

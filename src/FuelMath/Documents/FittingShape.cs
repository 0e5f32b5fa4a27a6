using UnitsNet;

namespace FuelMath;

/// <summary>A fitting as a hydraulic loss: bore and loss coefficient.</summary>
internal static class FittingShape
{
    private static readonly ValueProperty<Fitting, string> Name = new("name", "Its name.", TextShape.Name, f => f.Name);

    private static readonly ValueProperty<Fitting, Length> Bore = new(
        "bore",
        "The inner diameter that the coefficient belongs to.",
        QuantityShapes.SmallLength,
        f => f.Bore
    );

    private static readonly ValueProperty<Fitting, Ratio> LossCoefficient = new(
        "lossCoefficient",
        "Its loss coefficient, for that bore.",
        PureRatioShape.Instance,
        f => f.LossCoefficient
    );

    private static readonly ValueProperty<Fitting, LossBasis> Basis = new(
        "basis",
        "What the coefficient rests on.",
        new ChoiceShape<LossBasis>(
            ("published", LossBasis.Published),
            ("supplied", LossBasis.Supplied),
            ("estimate", LossBasis.Estimate)
        ),
        f => f.Basis
    );

    private static readonly ValueProperty<Fitting, DataSource> Source = SourceShape.Of<Fitting>(f => f.Source);

    internal static ObjectShape<Fitting> Shape { get; } =
        new(
            "fitting",
            "A fitting: its loss coefficient, and the bore whose velocity it belongs to.",
            [Name, Bore, LossCoefficient, Basis, Source],
            f => new(f.Of(Name), f.Of(Bore), f.Of(LossCoefficient), f.Of(Basis), f.Of(Source))
        );
}

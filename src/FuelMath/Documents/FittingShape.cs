namespace FuelMath;

/// <summary>A fitting as a hydraulic loss: bore and loss coefficient.</summary>
internal static class FittingShape
{
    internal static ObjectShape<Fitting> Shape { get; } =
        new(o =>
        {
            o.Is("fitting", "A fitting: its loss coefficient, and the bore whose velocity it belongs to.");
            var name = o.Named(f => f.Name);
            var bore = o.Required("bore", QuantityShapes.SmallLength.Positive, f => f.Bore)
                .Says("The inner diameter that the coefficient belongs to.");
            var lossCoefficient = o.Required("lossCoefficient", PureRatioShape.NotNegative, f => f.LossCoefficient)
                .Says("Its loss coefficient, for that bore.");
            var basis = o.Required(
                    "basis",
                    ChoiceShape.Of(
                        ("published", Fitting.LossBasis.Published),
                        ("supplied", Fitting.LossBasis.Supplied),
                        ("estimate", Fitting.LossBasis.Estimate)
                    ),
                    f => f.Basis
                )
                .Says("What the coefficient rests on.");
            var source = o.Source(f => f.Source);
            return f => new(f.Of(name), f.Of(bore), f.Of(lossCoefficient), f.Of(basis), f.Of(source));
        });
}

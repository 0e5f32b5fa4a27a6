namespace FuelMath;

/// <summary>A hose with its end fittings.</summary>
internal static class HoseShape
{
    internal static ObjectShape<Hose> Shape { get; } =
        new(o =>
        {
            o.Is("hose", "A hose with its end fittings.");
            var name = o.Named(h => h.Name);
            var length = o.Required("length", QuantityShapes.Length.Positive, h => h.Length).Says("Its length.");
            var bore = o.Required("bore", QuantityShapes.SmallLength.Positive, h => h.Bore)
                .Says("Its inner diameter; a dash size is not one.");
            var roughness = o.Required("roughness", QuantityShapes.SmallLength.NotNegative, h => h.Roughness)
                .Says("Roughness of the wall.");
            var lossCoefficient = o.Required("lossCoefficient", PureRatioShape.NotNegative, h => h.LossCoefficient)
                .Says("Sum of the loss coefficients of ends and bends, for this bore.");
            o.With("coilDiameter", QuantityShapes.SmallLength.Positive, h => h.CoilDiameter, (h, v) => h.WithCoil(v))
                .Says(
                    "Diameter of the curve of its center line, where it is bent all along; left out for a straight one."
                );
            var source = o.Source(h => h.Source);
            return f => new(f.Of(name), f.Of(length), f.Of(bore), f.Of(roughness), f.Of(lossCoefficient), f.Of(source));
        });
}

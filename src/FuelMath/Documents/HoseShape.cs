using UnitsNet;

namespace FuelMath;

/// <summary>A hose with its end fittings.</summary>
internal static class HoseShape
{
    private static readonly ValueProperty<Hose, string> Name = new("name", "Its name.", TextShape.Name, h => h.Name);

    private static readonly ValueProperty<Hose, Length> Length = new(
        "length",
        "Its length.",
        QuantityShapes.Length,
        h => h.Length
    );

    private static readonly ValueProperty<Hose, Length> Bore = new(
        "bore",
        "Its inner diameter; a dash size is not one.",
        QuantityShapes.SmallLength,
        h => h.Bore
    );

    private static readonly ValueProperty<Hose, Length> Roughness = new(
        "roughness",
        "Roughness of the wall.",
        QuantityShapes.SmallLength,
        h => h.Roughness
    );

    private static readonly ValueProperty<Hose, Ratio> LossCoefficient = new(
        "lossCoefficient",
        "Sum of the loss coefficients of ends and bends, for this bore.",
        PureRatioShape.Instance,
        h => h.LossCoefficient
    );

    private static readonly ValueProperty<Hose, Length> Coil = new(
        "coilDiameter",
        "Diameter of the curve of its center line, where it is bent all along; left out for a straight one.",
        QuantityShapes.SmallLength,
        h => h.CoilDiameter!.Value,
        h => h.CoilDiameter is not null,
        default
    );

    private static readonly ValueProperty<Hose, DataSource> Source = SourceShape.Of<Hose>(h => h.Source);

    internal static ObjectShape<Hose> Shape { get; } =
        new(
            "hose",
            "A hose with its end fittings.",
            [Name, Length, Bore, Roughness, LossCoefficient, Coil, Source],
            Make
        );

    private static Hose Make(Fields<Hose> f)
    {
        Hose hose = new(f.Of(Name), f.Of(Length), f.Of(Bore), f.Of(Roughness), f.Of(LossCoefficient), f.Of(Source));
        return f.Has(Coil) ? hose.WithCoil(f.Of(Coil)) : hose;
    }
}

using UnitsNet;

namespace FuelMath;

/// <summary>A jet by one reading.</summary>
internal static class JetShape
{
    private static readonly ValueProperty<Jet, string> Name = new("name", "Its name.", TextShape.Name, j => j.Name);

    private static readonly ValueProperty<Jet, VolumeFlow> Flow = new(
        "flow",
        "The flow of the reading.",
        QuantityShapes.VolumeFlow,
        j => j.Flow
    );

    private static readonly ValueProperty<Jet, Pressure> Across = new(
        "differentialPressure",
        "The pressure across it at that flow.",
        QuantityShapes.PressureDifference,
        j => j.DifferentialPressure
    );

    private static readonly ValueProperty<Jet, Density> Density = new(
        "density",
        "Density of the fluid of the reading.",
        QuantityShapes.Density,
        j => j.Density
    );

    private static readonly ValueProperty<Jet, Ratio> Exponent = new(
        "exponent",
        "The power of pressure that flow goes with; the square root, 0.5, when left out.",
        PureRatioShape.Instance,
        j => j.Exponent,
        j => j.Exponent.InSi() != 0.5,
        SiUnits.Ratio(0.5)
    );

    private static readonly ValueProperty<Jet, DataSource> Source = SourceShape.Of<Jet>(j => j.Source);

    internal static ObjectShape<Jet> Shape { get; } =
        new(
            "jet",
            "A calibrated opening in a line, by one reading.",
            [Name, Flow, Across, Density, Exponent, Source],
            f => new(f.Of(Name), f.Of(Flow), f.Of(Across), f.Of(Density), f.Of(Exponent), f.Of(Source))
        );
}

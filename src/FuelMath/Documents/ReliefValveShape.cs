using UnitsNet;

namespace FuelMath;

/// <summary>A relief valve by two readings.</summary>
internal static class ReliefValveShape
{
    private static readonly ValueProperty<ReliefValve, string> Name = new(
        "name",
        "Its name.",
        TextShape.Name,
        v => v.Name
    );

    private static readonly ValueProperty<ReliefValve, Pressure> Opening = new(
        "opening",
        "The difference at which it begins to open.",
        QuantityShapes.PressureDifference,
        v => v.OpeningDifferentialPressure
    )
    {
        Parameter = "openingDifferentialPressure",
    };

    private static readonly ValueProperty<ReliefValve, Pressure> Added = new(
        "addedLoss",
        "By how much the difference rises above that until the flow passes.",
        QuantityShapes.PressureDifference,
        v => v.AddedLoss
    );

    private static readonly ValueProperty<ReliefValve, VolumeFlow> Flow = new(
        "flow",
        "That flow.",
        QuantityShapes.VolumeFlow,
        v => v.Flow
    );

    private static readonly ValueProperty<ReliefValve, Density> FluidDensity = new(
        "density",
        "Density of the fluid of that reading.",
        QuantityShapes.Density,
        v => v.Density
    );

    private static readonly ValueProperty<ReliefValve, DataSource> Source = SourceShape.Of<ReliefValve>(v => v.Source);

    internal static ObjectShape<ReliefValve> Shape { get; } =
        new(
            "relief-valve",
            "A spring-loaded way back around a pump.",
            [Name, Opening, Added, Flow, FluidDensity, Source],
            f => new(f.Of(Name), f.Of(Opening), f.Of(Added), f.Of(Flow), f.Of(FluidDensity), f.Of(Source))
        );
}

using UnitsNet;

namespace FuelMath;

/// <summary>The rating of an injector: a volume flow or a mass flow, with the conditions that give it a meaning.</summary>
internal static class FlowRatingShape
{
    private static readonly ValueProperty<FlowRating, VolumeFlow> ByVolume = new(
        "volumeFlow",
        "Volume flow when held open; for a rating by volume.",
        QuantityShapes.InjectorVolumeFlow,
        r => r.StaticVolumeFlow,
        r => r.IsByVolume,
        default
    )
    {
        Parameter = "staticFlow",
    };

    private static readonly ValueProperty<FlowRating, MassFlow> ByMass = new(
        "massFlow",
        "Mass flow when held open; for a rating by mass.",
        QuantityShapes.MassFlow,
        r => r.StaticMassFlow,
        r => !r.IsByVolume,
        default
    )
    {
        Parameter = "staticFlow",
    };

    private static readonly ValueProperty<FlowRating, Pressure> Difference = new(
        "differentialPressure",
        "Inlet less discharge pressure.",
        QuantityShapes.PressureDifference,
        r => r.DifferentialPressure
    );

    private static readonly ValueProperty<FlowRating, Fuel> Fluid = new(
        "fluid",
        "The fluid.",
        FuelShape.Reference,
        r => r.Fluid
    );

    private static readonly ValueProperty<FlowRating, Temperature> FluidTemperature = new(
        "fluidTemperature",
        "Its temperature.",
        QuantityShapes.Temperature,
        r => r.FluidTemperature
    );

    private static readonly ValueProperty<FlowRating, DataSource> Source = SourceShape.Of<FlowRating>(r => r.Source);

    private static readonly ValueProperty<FlowRating, MeasuredExponent?> Exponent = new(
        "exponent",
        "The power of pressure that was measured; left out, the square root is taken.",
        MeasuredExponentShape.Shape!,
        r => r.Exponent,
        r => r.Exponent is not null,
        null
    );

    internal static ObjectShape<FlowRating> Shape { get; } =
        new(
            "flow-rating",
            "Static flow of an injector with the conditions that give it a meaning.",
            [ByVolume, ByMass, Difference, Fluid, FluidTemperature, Exponent, Source],
            f => f.Of(Exponent) is { } exponent ? Plain(f).WithExponent(exponent) : Plain(f)
        )
        {
            ExactlyOne = [ByVolume.Name, ByMass.Name],
        };

    private static FlowRating Plain(Fields<FlowRating> f) =>
        f.Has(ByVolume)
            ? FlowRating.FromVolume(f.Of(ByVolume), f.Of(Difference), f.Of(Fluid), f.Of(FluidTemperature), f.Of(Source))
            : FlowRating.FromMass(f.Of(ByMass), f.Of(Difference), f.Of(Fluid), f.Of(FluidTemperature), f.Of(Source));
}

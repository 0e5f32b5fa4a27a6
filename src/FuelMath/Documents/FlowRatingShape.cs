using UnitsNet;

namespace FuelMath;

/// <summary>The rating of an injector: a volume flow or a mass flow, with the conditions that give it a meaning.</summary>
internal static class FlowRatingShape
{
    internal static ObjectShape<FlowRating> Shape { get; } =
        new(o =>
        {
            o.Is("flow-rating", "Static flow of an injector with the conditions that give it a meaning.");
            var byVolume = o.Optional(
                    "volumeFlow",
                    QuantityShapes.InjectorVolumeFlow.Positive,
                    r => r.IsByVolume ? r.StaticVolumeFlow : null,
                    "staticFlow"
                )
                .Says("Volume flow when held open; for a rating by volume.");
            var byMass = o.Optional(
                    "massFlow",
                    QuantityShapes.MassFlow.Positive,
                    r => r.IsByVolume ? null : r.StaticMassFlow,
                    "staticFlow"
                )
                .Says("Mass flow when held open; for a rating by mass.");
            var difference = o.Required(
                    "differentialPressure",
                    QuantityShapes.PressureDifference.Positive,
                    r => r.DifferentialPressure
                )
                .Says("Inlet less discharge pressure.");
            var fluid = o.Required("fluid", FuelShape.Reference, r => r.Fluid).Says("The fluid.");
            var fluidTemperature = o.Required("fluidTemperature", QuantityShapes.Temperature, r => r.FluidTemperature)
                .Says("Its temperature.");
            o.With("exponent", MeasuredExponentShape.Shape, r => r.Exponent, (r, v) => r.WithExponent(v))
                .Says("The power of pressure that was measured; left out, the square root is taken.");
            var source = o.Source(r => r.Source);
            o.ExactlyOne(byVolume, byMass);
            return f =>
                f.Of(byVolume) is { } volume
                    ? FlowRating.FromVolume(volume, f.Of(difference), f.Of(fluid), f.Of(fluidTemperature), f.Of(source))
                    : FlowRating.FromMass(
                        f.Of(byMass)!.Value,
                        f.Of(difference),
                        f.Of(fluid),
                        f.Of(fluidTemperature),
                        f.Of(source)
                    );
        });
}

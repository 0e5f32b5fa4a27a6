using UnitsNet;

namespace FuelMath;

/// <summary>A jet by one reading.</summary>
internal static class JetShape
{
    internal static ObjectShape<Jet> Shape { get; } =
        new(o =>
        {
            o.Is("jet", "A calibrated opening in a line, by one reading.");
            var name = o.Named(j => j.Name);
            var flow = o.Required("flow", QuantityShapes.VolumeFlow.Positive, j => j.Flow)
                .Says("The flow of the reading.");
            var across = o.Required(
                    "differentialPressure",
                    QuantityShapes.PressureDifference.Positive,
                    j => j.DifferentialPressure
                )
                .Says("The pressure across it at that flow.");
            var density = o.Required("density", QuantityShapes.Density.Positive, j => j.Density)
                .Says("Density of the fluid of the reading.");
            var exponent = o.Optional(
                    "exponent",
                    PureRatioShape.Positive,
                    j => j.Exponent.InSi() == 0.5 ? null : j.Exponent
                )
                .Says("The power of pressure that flow goes with; the square root, 0.5, when left out.");
            var source = o.Source(j => j.Source);
            return f =>
                new(
                    f.Of(name),
                    f.Of(flow),
                    f.Of(across),
                    f.Of(density),
                    f.Of(exponent) ?? SiUnits.Ratio(0.5),
                    f.Of(source)
                );
        });
}

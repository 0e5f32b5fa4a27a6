using UnitsNet;

namespace FuelMath;

/// <summary>A relief valve by two readings.</summary>
internal static class ReliefValveShape
{
    internal static ObjectShape<ReliefValve> Shape { get; } =
        new(o =>
        {
            o.Is("relief-valve", "A safety valve: a spring-loaded way back around a pump, shut in normal operation.");
            var name = o.Named(v => v.Name);
            var opening = o.Required(
                    "opening",
                    QuantityShapes.PressureDifference.Positive,
                    v => v.OpeningDifferentialPressure,
                    parameter: "openingDifferentialPressure"
                )
                .Says("The difference at which it begins to open.");
            var added = o.Required("addedLoss", QuantityShapes.PressureDifference.Positive, v => v.AddedLoss)
                .Says("By how much the difference rises above that until the flow passes.");
            var flow = o.Required("flow", QuantityShapes.VolumeFlow.Positive, v => v.Flow).Says("That flow.");
            var fluidDensity = o.Required("density", QuantityShapes.Density.Positive, v => v.Density)
                .Says("Density of the fluid of that reading.");
            var source = o.Source(v => v.Source);
            return f => new(f.Of(name), f.Of(opening), f.Of(added), f.Of(flow), f.Of(fluidDensity), f.Of(source));
        });
}

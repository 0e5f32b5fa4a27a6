namespace FuelMath;

/// <summary>A pump by its curves.</summary>
internal static class PumpShape
{
    internal static ObjectShape<Pump> Shape { get; } =
        new(o =>
        {
            o.Is("pump", "A pump measured at one or more voltages.");
            var name = o.Named(p => p.Name);
            var curves = o.Required("curves", PumpCurveShape.Shape.List(1, 20), p => p.Curves)
                .Says("One or more curves, voltage rising.");
            var fluid = o.Required("fluid", FuelShape.Reference, p => p.Fluid)
                .Says("The fluid that the curves were measured with.");
            o.With(
                    "fluidTemperature",
                    QuantityShapes.Temperature,
                    p => p.FluidTemperature,
                    (p, v) => p.WithFluidTemperature(v),
                    "temperature"
                )
                .Says(
                    "The temperature of the fluid during the measurement; left out where it is not known, and 20 °C are taken."
                );
            o.With(
                    "principle",
                    ChoiceShape.Of(
                        ("displacement", Pump.WorkingPrinciple.Displacement),
                        ("rotodynamic", Pump.WorkingPrinciple.Rotodynamic)
                    ),
                    p => p.Principle == Pump.WorkingPrinciple.NotKnown ? null : p.Principle,
                    (p, v) => p.WithPrinciple(v)
                )
                .Says(
                    "By which principle it works: displacement (gerotor, roller cell, vane, gear) or rotodynamic (turbine, side channel); left out where it is not known."
                );
            o.With(
                    "drive",
                    PumpDriveShape.Shape,
                    p => p.Drive == PumpDrive.Direct ? null : p.Drive,
                    (p, v) => p.WithDrive(p.Name, v)
                )
                .Says("The controller that feeds it; left out where the circuit feeds it as it is.");
            var source = o.Source(p => p.Source);
            return f => new(f.Of(name), f.Of(curves), f.Of(fluid), f.Of(source));
        });
}

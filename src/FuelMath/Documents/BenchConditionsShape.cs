using FuelMath.Bench;

namespace FuelMath;

/// <summary>The conditions of a bench reading.</summary>
internal static class BenchConditionsShape
{
    private static readonly ObjectShape<BenchConditions> Shape = new(o =>
    {
        o.Is("bench-conditions", "The conditions of a bench reading.");
        var difference = o.Required(
                "differentialPressure",
                RawShapes.PressureDifference.Positive,
                c => c.DifferentialPressure
            )
            .Says("Inlet less discharge pressure.");
        var fluid = o.Required("fluid", FuelShape.Reference, c => c.Fluid).Says("The fluid.");
        var fluidTemperature = o.Required("fluidTemperature", RawShapes.Temperature, c => c.FluidTemperature)
            .Says("Its temperature.");
        o.With("driver", DriverShape.Shape, c => c.Driver, (c, v) => c.WithDriver(v))
            .Says("What drove the coil; left out where the report does not say.");
        o.With(
                "widthsCorrectedFor",
                ChoiceShape.Of(
                    ("voltage", WidthCorrections.Voltage),
                    ("pressure", WidthCorrections.Pressure),
                    ("voltage and pressure", WidthCorrections.Voltage | WidthCorrections.Pressure)
                ),
                c => c.Widths == WidthCorrections.None ? null : c.Widths,
                (c, v) => c.WithWidths(v)
            )
            .Says("What was already put into the widths; left out when nothing was.");
        var source = o.Source(c => c.Source);
        return f => new(f.Of(difference), f.Of(fluid), f.Of(fluidTemperature), f.Of(source));
    });

    /// <summary>The property "conditions" of a reading.</summary>
    internal static ValueProperty<T, BenchConditions> Conditions<T>(
        this ObjectBuilder<T> o,
        Func<T, BenchConditions> get
    ) => o.Required("conditions", Shape, get).Says("What the bench held.");
}

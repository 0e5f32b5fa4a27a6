using FuelMath.Bench;
using UnitsNet;

namespace FuelMath;

/// <summary>What a bench held while it took a reading.</summary>
internal static class BenchConditionsShape
{
    private static readonly ValueProperty<BenchConditions, Pressure> Difference = new(
        "differentialPressure",
        "Inlet less discharge pressure.",
        RawShapes.PressureDifference,
        c => c.DifferentialPressure
    );

    private static readonly ValueProperty<BenchConditions, Fuel> Fluid = new(
        "fluid",
        "The fluid.",
        FuelShape.Reference,
        c => c.Fluid
    );

    private static readonly ValueProperty<BenchConditions, Temperature> FluidTemperature = new(
        "fluidTemperature",
        "Its temperature.",
        RawShapes.Temperature,
        c => c.FluidTemperature
    );

    private static readonly ValueProperty<BenchConditions, InjectorDriver?> Driver = new(
        "driver",
        "What drove the coil; left out where the report does not say.",
        DriverShape.Shape!,
        c => c.Driver,
        c => c.Driver is not null,
        null
    );

    private static readonly ValueProperty<BenchConditions, WidthCorrections> Widths = new(
        "widthsCorrectedFor",
        "What was already put into the widths; left out when nothing was.",
        new ChoiceShape<WidthCorrections>(
            ("voltage", WidthCorrections.Voltage),
            ("pressure", WidthCorrections.Pressure),
            ("voltage and pressure", WidthCorrections.Voltage | WidthCorrections.Pressure)
        ),
        c => c.Widths,
        c => c.Widths != WidthCorrections.None,
        WidthCorrections.None
    );

    private static readonly ValueProperty<BenchConditions, DataSource> Source = SourceShape.Of<BenchConditions>(c =>
        c.Source
    );

    private static readonly ObjectShape<BenchConditions> Shape = new(
        "bench-conditions",
        "What a bench held while it took a reading.",
        [Difference, Fluid, FluidTemperature, Driver, Widths, Source],
        Make
    );

    /// <summary>The property "conditions" of a reading.</summary>
    internal static ValueProperty<T, BenchConditions> Of<T>(Func<T, BenchConditions> get) =>
        new("conditions", "What the bench held.", Shape, get);

    private static BenchConditions Make(Fields<BenchConditions> f)
    {
        BenchConditions plain = new BenchConditions(
            f.Of(Difference),
            f.Of(Fluid),
            f.Of(FluidTemperature),
            f.Of(Source)
        ).WithWidths(f.Of(Widths));
        return f.Of(Driver) is { } driver ? plain.WithDriver(driver) : plain;
    }
}

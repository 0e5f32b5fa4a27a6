using UnitsNet;

namespace FuelMath.Bench;

/// <summary>
/// What a bench held while it took readings: differential pressure, fluid and its temperature, the driver of the coil, and
/// what was already put into the widths.
/// </summary>
/// <remarks>
/// Caution: bench fluids are flammable, and drivers spark: ventilate, no flames, extinguisher at hand.
/// </remarks>
public sealed class BenchConditions
{
    /// <summary>Creates the conditions.</summary>
    /// <param name="differentialPressure">Inlet less discharge pressure; greater than zero.</param>
    /// <param name="fluid">The fluid.</param>
    /// <param name="fluidTemperature">Its temperature, for which its density is known.</param>
    /// <param name="source">Which report the readings come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException">Fluid or source is null.</exception>
    public BenchConditions(Pressure differentialPressure, Fuel fluid, Temperature fluidTemperature, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        ArgumentNullException.ThrowIfNull(source);
        PressureSi = Guard.Positive(differentialPressure, differentialPressure.InSi());
        DensitySi = fluid.DensityAt(fluidTemperature).InSi();
        (DifferentialPressure, Fluid, FluidTemperature) = (differentialPressure, fluid, fluidTemperature);
        Source = source;
    }

    private BenchConditions(BenchConditions from, InjectorDriver? driver, WidthCorrections widths)
        : this(from.DifferentialPressure, from.Fluid, from.FluidTemperature, from.Source) =>
        (Driver, Widths) = (driver, widths);

    /// <summary>Inlet less discharge pressure.</summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>The fluid.</summary>
    public Fuel Fluid { get; }

    /// <summary>Its temperature.</summary>
    public Temperature FluidTemperature { get; }

    /// <summary>Its density at that temperature, in kg/m³.</summary>
    public Density FluidDensity => SiUnits.Density(DensitySi);

    /// <summary>Which report the readings come from.</summary>
    public DataSource Source { get; }

    /// <summary>What drove the coil; none where the report does not say.</summary>
    public InjectorDriver? Driver { get; }

    /// <summary>What was already put into the widths; nothing unless stated.</summary>
    public WidthCorrections Widths { get; }

    /// <summary>The same conditions with what drove the coil.</summary>
    /// <param name="driver">The driver.</param>
    /// <returns>The conditions.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="driver"/> is null.</exception>
    public BenchConditions WithDriver(InjectorDriver driver)
    {
        ArgumentNullException.ThrowIfNull(driver);
        return new(this, driver, Widths);
    }

    /// <summary>The same conditions for widths that something was already put into.</summary>
    /// <param name="widths">What.</param>
    /// <returns>The conditions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the known ones.</exception>
    public BenchConditions WithWidths(WidthCorrections widths) =>
        (widths & ~(WidthCorrections.Voltage | WidthCorrections.Pressure)) == 0
            ? new(this, Driver, widths)
            : throw new ArgumentOutOfRangeException(
                nameof(widths),
                $"Must be None, Voltage, Pressure or both; it was {widths}."
            );

    internal double PressureSi { get; }

    internal double DensitySi { get; }

    /// <summary>Whether readings under both belong on one line.</summary>
    internal bool Match(BenchConditions other) =>
        MatchFluid(other)
        && Widths == other.Widths
        && (Driver is null ? other.Driver is null : other.Driver is not null && Driver.Matches(other.Driver));

    /// <summary>Whether pressure, fluid and temperature are the same: all that a shut injector feels.</summary>
    internal bool MatchFluid(BenchConditions other) =>
        Fluid.Name == other.Fluid.Name
        && Same(PressureSi, other.PressureSi)
        && Same(FluidTemperature.InSi(), other.FluidTemperature.InSi());

    /// <summary>The driver and what is in the widths, in words.</summary>
    internal string Driven =>
        $"{(Driver is null ? "driver not stated" : Driver.ToString())}, "
        + (Widths == WidthCorrections.None ? "plain widths" : $"widths corrected for {CorrectionWords.Of(Widths)}");

    internal static bool Same(double one, double other) => Math.Abs(one - other) <= Guard.EdgeTolerance * Math.Abs(one);
}

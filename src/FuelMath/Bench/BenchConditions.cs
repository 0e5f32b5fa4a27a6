using UnitsNet;

namespace FuelMath.Bench;

/// <summary>
/// The conditions on a bench during readings: differential pressure, fluid and its temperature, the driver of the coil,
/// and the corrections already contained in the widths.
/// </summary>
/// <remarks>
/// Caution: bench fluids are flammable, and drivers spark: ventilate, no flames, extinguisher at hand.
/// </remarks>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed partial class BenchConditions
{
    /// <summary>Creates the conditions.</summary>
    /// <param name="differentialPressure">Inlet less discharge pressure; greater than zero.</param>
    /// <param name="fluid">The fluid.</param>
    /// <param name="fluidTemperature">Its temperature, for which its density is known.</param>
    /// <param name="source">The report that the readings come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is not greater than zero.</exception>
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

    /// <summary>The report that the readings come from.</summary>
    public DataSource Source { get; }

    /// <summary>The driver of the coil; null when the report does not say.</summary>
    public InjectorDriver? Driver { get; }

    /// <summary>The corrections already contained in the widths; none unless stated.</summary>
    public WidthCorrections Widths { get; }

    /// <summary>The same conditions with a driver of the coil.</summary>
    /// <param name="driver">The driver.</param>
    /// <returns>The conditions.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="driver"/> is null.</exception>
    public BenchConditions WithDriver(InjectorDriver driver)
    {
        ArgumentNullException.ThrowIfNull(driver);
        return new(this, driver, Widths);
    }

    /// <summary>The same conditions for widths that already contain corrections.</summary>
    /// <param name="widths">The corrections.</param>
    /// <returns>The conditions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="widths"/> is not a combination of the known corrections.
    /// </exception>
    public BenchConditions WithWidths(WidthCorrections widths) =>
        (widths & ~(WidthCorrections.Voltage | WidthCorrections.Pressure)) == 0
            ? new(this, Driver, widths)
            : throw Guard.Outside(
                widths,
                RefusalCode.NotOneOf,
                $"Must be {WidthCorrections.None:allowed}, {WidthCorrections.Voltage:allowed}, {WidthCorrections.Pressure:allowed} or both; it was {widths:given}."
            );

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{DifferentialPressure}, {Fluid} at {FluidTemperature}");

    internal double PressureSi { get; }

    internal double DensitySi { get; }

    /// <summary>Whether readings under both may be fitted with one line.</summary>
    internal bool Match(BenchConditions other) =>
        MatchFluid(other)
        && Widths == other.Widths
        && (Driver is null ? other.Driver is null : other.Driver is not null && Driver.Matches(other.Driver));

    /// <summary>Whether pressure, fluid and temperature are the same: all that affects a closed injector.</summary>
    internal bool MatchFluid(BenchConditions other) =>
        Fluid.Name == other.Fluid.Name
        && Same(PressureSi, other.PressureSi)
        && Same(FluidTemperature.InSi(), other.FluidTemperature.InSi());

    /// <summary>The driver and the corrections contained in the widths, in words.</summary>
    internal string Driven =>
        $"{(Driver is null ? "driver not stated" : Driver.ToString())}, "
        + (Widths == WidthCorrections.None ? "plain widths" : $"widths corrected for {CorrectionWords.Of(Widths)}");

    internal static bool Same(double one, double other) => Math.Abs(one - other) <= Guard.EdgeTolerance * Math.Abs(one);
}

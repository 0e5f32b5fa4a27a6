using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The driver of a coil, a <see cref="Saturated"/> or a <see cref="PeakAndHold"/>. It affects current, heat and dead time, so readings are only valid for their driver.
/// </summary>
/// <remarks>
/// <para>
/// Voltages are those of the supply, ahead of a ballast resistor. The current is the final one; its rise would need the
/// coil's inductance.
/// </para>
/// <para>
/// Caution: a low-impedance coil on a driver without a limit burns the driver, and drivers spark at a bench.
/// </para>
/// </remarks>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
public abstract partial class InjectorDriver
{
    private readonly double ballast;
    private readonly double peak;
    private readonly double hold;

    private protected InjectorDriver(double ballast, double peak, double hold) =>
        (this.ballast, this.peak, this.hold) = (ballast, peak, hold);

    /// <inheritdoc />
    public abstract override string ToString();

    /// <summary>The largest current through a coil: that of its circuit, or the peak where that is less.</summary>
    /// <param name="supply">Voltage at the supply; greater than zero.</param>
    /// <param name="coil">Present resistance of the coil; greater than zero.</param>
    /// <returns>The current, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public ElectricCurrent LargestCurrent(ElectricPotential supply, ElectricResistance coil) =>
        SiUnits.ElectricCurrent(Math.Min(peak, Circuit(supply, coil)));

    /// <summary>The current through a coil at the end of a long pulse.</summary>
    /// <param name="supply">Voltage at the supply; greater than zero.</param>
    /// <param name="coil">Present resistance of the coil; greater than zero.</param>
    /// <returns>The current, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public ElectricCurrent FinalCurrent(ElectricPotential supply, ElectricResistance coil) =>
        SiUnits.ElectricCurrent(Math.Min(hold, Circuit(supply, coil)));

    /// <summary>Checks whether it suits a coil: the current against the limit of the driver.</summary>
    /// <param name="coil">The coil.</param>
    /// <param name="supply">The highest voltage at the supply; greater than zero.</param>
    /// <param name="driverLimit">The largest allowed current of the driver; greater than zero.</param>
    /// <param name="source">Where that limit comes from.</param>
    /// <returns>The findings; empty when it suits. Judged at 20 °C: a cold coil draws more.</returns>
    /// <exception cref="ArgumentNullException">Coil or source is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public ImmutableArray<Finding> FindingsFor(
        CoilResistance coil,
        ElectricPotential supply,
        ElectricCurrent driverLimit,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(coil);
        ArgumentNullException.ThrowIfNull(source);
        double limit = Guard.Positive(driverLimit, driverLimit.InSi());
        ElectricCurrent drawn = LargestCurrent(supply, coil.AtTwentyCelsius);
        return DriverFindings.Of(
            this,
            coil,
            drawn,
            drawn.InSi() > limit * (1 + Guard.EdgeTolerance),
            driverLimit,
            source
        );
    }

    /// <summary>Whether readings with both drivers may be combined.</summary>
    internal bool Matches(InjectorDriver other) =>
        GetType() == other.GetType()
        && Near(ballast, other.ballast)
        && Near(peak, other.peak)
        && Near(hold, other.hold);

    internal double BallastSi => ballast;

    private double Circuit(ElectricPotential supply, ElectricResistance coil) =>
        Guard.Positive(supply, supply.InSi()) / (Guard.Positive(coil, coil.InSi()) + ballast);

    private static bool Near(double one, double other) =>
        one == other || Math.Abs(one - other) <= Guard.EdgeTolerance * Math.Abs(one);
}

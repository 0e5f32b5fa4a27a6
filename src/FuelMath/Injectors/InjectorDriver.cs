using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The driver of a coil. It affects current, heat and dead time, so readings are only valid for their driver.
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
public sealed partial class InjectorDriver
{
    private readonly double ballast;
    private readonly double peak;
    private readonly double hold;

    private InjectorDriver(DriverKind kind, double ballast, double peak, double hold) =>
        (Kind, this.ballast, this.peak, this.hold) = (kind, ballast, peak, hold);

    /// <summary>Saturated without a ballast resistor.</summary>
    public static InjectorDriver PlainSaturated { get; } =
        new(DriverKind.Saturated, 0, double.PositiveInfinity, double.PositiveInfinity);

    /// <summary>How the coil is driven.</summary>
    public DriverKind Kind { get; }

    /// <summary>Resistance in series with the coil, in ohm; zero without a ballast resistor.</summary>
    public ElectricResistance Ballast => SiUnits.ElectricResistance(ballast);

    /// <summary>The peak current of a peak-and-hold driver, in A; null for a saturated one.</summary>
    public ElectricCurrent? Peak => Kind == DriverKind.PeakAndHold ? SiUnits.ElectricCurrent(peak) : null;

    /// <summary>The hold current of a peak-and-hold driver, in A; null for a saturated one.</summary>
    public ElectricCurrent? Hold => Kind == DriverKind.PeakAndHold ? SiUnits.ElectricCurrent(hold) : null;

    /// <summary>A saturated driver with a ballast resistor in series with the coil.</summary>
    /// <param name="ballast">Its resistance; greater than zero.</param>
    /// <returns>The driver.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ballast"/> is not greater than zero.</exception>
    public static InjectorDriver FromBallast(ElectricResistance ballast) =>
        new(
            DriverKind.Saturated,
            Guard.Positive(ballast, ballast.InSi()),
            double.PositiveInfinity,
            double.PositiveInfinity
        );

    /// <summary>A driver that limits the current.</summary>
    /// <param name="peak">The peak current; greater than zero.</param>
    /// <param name="hold">The hold current; greater than zero, at most the peak.</param>
    /// <returns>The driver.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static InjectorDriver FromPeakAndHold(ElectricCurrent peak, ElectricCurrent hold)
    {
        double most = Guard.Positive(peak, peak.InSi());
        double held = Guard.Positive(hold, hold.InSi());
        return held <= most
            ? new(DriverKind.PeakAndHold, 0, most, held)
            : throw Guard.OutOfRange(hold, $"at most the peak, {peak:most}");
    }

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

    /// <summary>Formats the driver in words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Kind == DriverKind.PeakAndHold ? FormattableString.Invariant($"peak {peak:0.###} A and hold {hold:0.###} A")
        : ballast == 0 ? "saturated"
        : FormattableString.Invariant($"saturated with {ballast:0.###} ohm ballast");

    /// <summary>Whether readings with both drivers may be combined.</summary>
    internal bool Matches(InjectorDriver other) =>
        Kind == other.Kind && Near(ballast, other.ballast) && Near(peak, other.peak) && Near(hold, other.hold);

    internal double BallastSi => ballast;

    private double Circuit(ElectricPotential supply, ElectricResistance coil) =>
        Guard.Positive(supply, supply.InSi()) / (Guard.Positive(coil, coil.InSi()) + ballast);

    private static bool Near(double one, double other) =>
        one == other || Math.Abs(one - other) <= Guard.EdgeTolerance * Math.Abs(one);
}

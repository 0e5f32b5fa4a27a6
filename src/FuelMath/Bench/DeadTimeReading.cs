using UnitsNet;

namespace FuelMath.Bench;

/// <summary>A dead time at one voltage and pressure, from a report or a characterization.</summary>
/// <remarks>Kept as read, even if negative; a table refuses negative values.</remarks>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed class DeadTimeReading
{
    /// <summary>Creates a reading.</summary>
    /// <param name="atInjector">Voltage at the injector; greater than zero.</param>
    /// <param name="deadTime">The dead time; finite.</param>
    /// <param name="resolution">The resolution; greater than zero.</param>
    /// <param name="conditions">The conditions on the bench.</param>
    /// <exception cref="ArgumentNullException"><paramref name="conditions"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public DeadTimeReading(
        ElectricPotential atInjector,
        Duration deadTime,
        Duration resolution,
        BenchConditions conditions
    )
    {
        ArgumentNullException.ThrowIfNull(conditions);
        VoltageSi = Guard.Positive(atInjector, atInjector.InSi());
        Guard.Finite(deadTime, deadTime.InSi());
        Guard.Positive(resolution, resolution.InSi());
        (AtInjector, DeadTime, Resolution, Conditions) = (atInjector, deadTime, resolution, conditions);
    }

    /// <summary>Voltage at the injector.</summary>
    public ElectricPotential AtInjector { get; }

    /// <summary>The dead time.</summary>
    public Duration DeadTime { get; }

    /// <summary>The resolution.</summary>
    public Duration Resolution { get; }

    /// <summary>The conditions on the bench.</summary>
    public BenchConditions Conditions { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{DeadTime} at {AtInjector}, {Conditions.DifferentialPressure}");

    internal double VoltageSi { get; }
}

using UnitsNet;

namespace FuelMath.Bench;

/// <summary>One reading of a pulsed injector: the amount collected from a counted number of equal pulses.</summary>
/// <remarks>Kept as read.</remarks>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed class DynamicFlowReading
{
    private const int MostPulses = 100_000_000;

    /// <summary>Creates a reading.</summary>
    /// <param name="pulseWidth">Commanded width; greater than zero and shorter than the period.</param>
    /// <param name="period">Time from one pulse to the next; greater than zero.</param>
    /// <param name="pulses">Number of pulses; one or more.</param>
    /// <param name="collected">The total amount that they delivered.</param>
    /// <param name="atInjector">Voltage at the injector; greater than zero.</param>
    /// <param name="conditions">The conditions on the bench.</param>
    /// <exception cref="ArgumentException">Nothing was collected.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="conditions"/> is null.</exception>
    public DynamicFlowReading(
        Duration pulseWidth,
        Duration period,
        int pulses,
        CollectedFuel collected,
        ElectricPotential atInjector,
        BenchConditions conditions
    )
    {
        ArgumentNullException.ThrowIfNull(conditions);
        if (collected.IsNothing)
        {
            throw new RefusedArgumentException(
                RefusalCode.Missing,
                "Must be a collected volume or mass; nothing was.",
                nameof(collected)
            );
        }

        WidthSi = Guard.Positive(pulseWidth, pulseWidth.InSi());
        double seconds = Guard.Positive(period, period.InSi());
        if (WidthSi >= seconds)
        {
            throw Guard.OutOfRange(pulseWidth, $"shorter than the period, {period:below}");
        }

        Pulses = Guard.InRange(pulses, 1, MostPulses);
        VoltageSi = Guard.Positive(atInjector, atInjector.InSi());
        (PulseWidth, Period, Collected, AtInjector) = (pulseWidth, period, collected, atInjector);
        Conditions = conditions;
    }

    /// <summary>Commanded width.</summary>
    public Duration PulseWidth { get; }

    /// <summary>Time from one pulse to the next.</summary>
    public Duration Period { get; }

    /// <summary>Number of pulses.</summary>
    public int Pulses { get; }

    /// <summary>The total amount that they delivered.</summary>
    public CollectedFuel Collected { get; }

    /// <summary>Voltage at the injector.</summary>
    public ElectricPotential AtInjector { get; }

    /// <summary>The conditions on the bench.</summary>
    public BenchConditions Conditions { get; }

    /// <summary>The mass of one pulse, in kg.</summary>
    public Mass MassPerPulse => SiUnits.Mass(MassSi);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{MassPerPulse} a pulse of {PulseWidth} every {Period}");

    internal double WidthSi { get; }

    internal double VoltageSi { get; }

    internal double MassSi => Collected.MassSi(Conditions.DensitySi) / Pulses;
}

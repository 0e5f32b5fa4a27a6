using UnitsNet;

namespace FuelMath;

/// <summary>The metering of a small mass by an injector, as at idle.</summary>
/// <remarks>
/// If the mass needed is below the least repeatable mass of a large injector, the engine idles rich or unsteadily.
/// </remarks>
/// <seealso href="../guide/sizing.html">Sizing, timing and idle of injectors</seealso>
public sealed class IdleControl
{
    private readonly double wanted;
    private readonly double least;
    private readonly double effective;
    private readonly double dead;
    private readonly double smallest;

    internal IdleControl(
        double wanted,
        double least,
        double effective,
        double dead,
        double smallest,
        Lambda atLeast,
        ControllerTimer timer
    )
    {
        (this.wanted, this.least, this.effective) = (wanted, least, effective);
        (this.dead, this.smallest, LambdaAtLeastPulse, Timer) = (dead, smallest, atLeast, timer);
    }

    /// <summary>The mass needed from one pulse, in kg.</summary>
    public Mass WantedMass => SiUnits.Mass(wanted);

    /// <summary>The least repeatable mass of the injector, in kg.</summary>
    public Mass LeastMass => SiUnits.Mass(least);

    /// <summary>Needed over least mass: below 100 % the injector can't meter it.</summary>
    public Ratio Margin => SiUnits.Ratio(wanted / least);

    /// <summary>Whether the injector can meter the mass.</summary>
    public bool IsControllable => wanted >= least * (1 - Guard.EdgeTolerance);

    /// <summary>
    /// The effective width for the needed mass, or the shortest repeatable one if that is longer; in s.
    /// </summary>
    public Duration EffectiveWidth => SiUnits.Duration(effective);

    /// <summary>The shortest repeatable effective width, in s.</summary>
    public Duration SmallestEffectiveWidth => SiUnits.Duration(smallest);

    /// <summary>The width to command, dead time included, in s.</summary>
    public Duration PulseWidth => SiUnits.Duration(dead + effective);

    /// <summary>The lambda with the least mass: the leanest idle with this injector.</summary>
    public Lambda LambdaAtLeastPulse { get; }

    /// <summary>The timer that sets the width.</summary>
    public ControllerTimer Timer { get; }

    /// <summary>The largest relative error of the mass from the step of the timer.</summary>
    public Ratio WorstStepError => Timer.WorstMassErrorAt(EffectiveWidth);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{WantedMass} wanted, {LeastMass} least");
}

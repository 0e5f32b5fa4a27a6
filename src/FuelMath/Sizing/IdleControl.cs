using UnitsNet;

namespace FuelMath;

/// <summary>How well an injector meters a small amount, as at idle.</summary>
/// <remarks>
/// A large injector gives its least repeatable mass, and more is needed than that: with less, the engine idles rich or
/// wanders.
/// </remarks>
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

    /// <summary>The mass that one pulse should deliver, in kg.</summary>
    public Mass WantedMass => SiUnits.Mass(wanted);

    /// <summary>The least mass that the injector repeats, in kg.</summary>
    public Mass LeastMass => SiUnits.Mass(least);

    /// <summary>Wanted over least mass: below 100 % the injector cannot meter it.</summary>
    public Ratio Margin => SiUnits.Ratio(wanted / least);

    /// <summary>Whether the injector repeats so small a mass.</summary>
    public bool IsControllable => wanted >= least * (1 - Guard.EdgeTolerance);

    /// <summary>The effective width for the wanted mass, or the shortest that repeats where that is too long already; in s.</summary>
    public Duration EffectiveWidth => SiUnits.Duration(effective);

    /// <summary>The shortest effective width that repeats, in s.</summary>
    public Duration SmallestEffectiveWidth => SiUnits.Duration(smallest);

    /// <summary>The width to command, dead time included, in s.</summary>
    public Duration PulseWidth => SiUnits.Duration(dead + effective);

    /// <summary>The lambda that the engine gets from the least mass: as lean as this injector can idle it.</summary>
    public Lambda LambdaAtLeastPulse { get; }

    /// <summary>The timer that sets the width.</summary>
    public ControllerTimer Timer { get; }

    /// <summary>The worst relative error of the mass by the step of the timer.</summary>
    public Ratio WorstStepError => Timer.WorstMassErrorAt(EffectiveWidth);
}

using UnitsNet;

namespace FuelMath.Systems;

/// <summary>What one stage of injectors does at an operating point.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class StageResult
{
    internal StageResult(
        string name,
        Duration pulseWidth,
        Duration period,
        Ratio dutyCycle,
        Pressure leastDifferentialPressure,
        MassFlow meanFlow,
        Ratio quadraticLossFactor,
        bool isShut,
        bool isHeldOpen
    )
    {
        Name = name;
        PulseWidth = pulseWidth;
        Period = period;
        DutyCycle = dutyCycle;
        LeastDifferentialPressure = leastDifferentialPressure;
        MeanFlow = meanFlow;
        QuadraticLossFactor = quadraticLossFactor;
        IsShut = isShut;
        IsHeldOpen = isHeldOpen;
    }

    /// <summary>The stage's name.</summary>
    public string Name { get; }

    /// <summary>The width that the controller gives to every injector of the stage.</summary>
    public Duration PulseWidth { get; }

    /// <summary>The time between the starts of two pulses of one injector.</summary>
    public Duration Period { get; }

    /// <summary>Pulse width over period; counts dead time.</summary>
    public Ratio DutyCycle { get; }

    /// <summary>The lowest injector differential pressure in the stage.</summary>
    public Pressure LeastDifferentialPressure { get; }

    /// <summary>Mean fuel mass flow of the whole stage.</summary>
    public MassFlow MeanFlow { get; }

    /// <summary>
    /// The undamped bound: by how much pulsing would raise quadratic losses over those of the mean flow, with evenly
    /// staggered injectors and no damping. One when every injector is open all the time.
    /// </summary>
    public Ratio QuadraticLossFactor { get; }

    /// <summary>Whether the stage is told to stay shut.</summary>
    public bool IsShut { get; }

    /// <summary>Whether its injectors have no time to close and flow all the time.</summary>
    public bool IsHeldOpen { get; }
}

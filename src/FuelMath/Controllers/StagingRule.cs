using UnitsNet;

namespace FuelMath;

/// <summary>How primaries and secondaries share the fuel.</summary>
/// <remarks>
/// Primaries work alone until their duty cycle reaches the transition. Beyond it the secondaries take what is over, but
/// never less than their smallest repeatable pulse, the primaries giving back as much; so the total is continuous. Once
/// the secondaries reach the same duty cycle too, both rise together.
/// </remarks>
public sealed class StagingRule
{
    /// <summary>Creates a rule.</summary>
    /// <param name="transitionDutyCycle">The primaries' duty cycle at which the secondaries join; 5 % to 95 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The duty cycle is out of range.</exception>
    public StagingRule(Ratio transitionDutyCycle)
    {
        Guard.InRange(transitionDutyCycle, transitionDutyCycle.InSi(), 0.05, 0.95, SiUnits.Ratio);
        TransitionDutyCycle = transitionDutyCycle;
    }

    /// <summary>The primaries' duty cycle at which the secondaries join.</summary>
    public Ratio TransitionDutyCycle { get; }
}

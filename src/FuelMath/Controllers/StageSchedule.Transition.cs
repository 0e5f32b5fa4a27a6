using UnitsNet;

namespace FuelMath;

public sealed partial class StageSchedule
{
    /// <summary>The division of the fuel between primaries and secondaries.</summary>
    /// <remarks>
    /// Primaries work alone until their duty cycle reaches the transition. Beyond it the secondaries take the excess,
    /// but
    /// at least their smallest repeatable pulse, with the primaries reduced by as much, so the total is continuous.
    /// Once
    /// the secondaries reach the same duty cycle, both rise together.
    /// </remarks>
    public sealed class Transition
    {
        /// <summary>Creates a rule.</summary>
        /// <param name="transitionDutyCycle">The primaries' duty cycle at which the secondaries join; 5 % to 95
        /// %.</param>
        /// <exception cref="ArgumentOutOfRangeException">
        /// <paramref name="transitionDutyCycle"/> is not from 5 % to 95 %.
        /// </exception>
        public Transition(Ratio transitionDutyCycle)
        {
            Guard.InRange(transitionDutyCycle, transitionDutyCycle.InSi(), 0.05, 0.95, SiUnits.Ratio);
            TransitionDutyCycle = transitionDutyCycle;
        }

        /// <summary>The primaries' duty cycle at which the secondaries join.</summary>
        public Ratio TransitionDutyCycle { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"joins at {TransitionDutyCycle}");
    }
}

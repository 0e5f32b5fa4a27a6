namespace FuelMath;

public sealed partial class BriefAssessment
{
    /// <summary>The quantities of a first answer, each judged by a limit.</summary>
    public enum Output
    {
        /// <summary>The largest duty cycle of the injectors; the limit is a maximum.</summary>
        DutyCycle,

        /// <summary>
        /// The relative deviation of the leanest chamber from the requested lambda, negative where it is rich; the
        /// limit is
        /// a maximum.
        /// </summary>
        LeanDeviation,

        /// <summary>The flow that the pump could still give, over the flow drawn; the limit is a minimum.</summary>
        PumpReserve,
    }
}

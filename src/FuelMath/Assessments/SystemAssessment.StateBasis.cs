namespace FuelMath;

public sealed partial class SystemAssessment
{
    /// <summary>The injectors of a state, and whether a sensor corrects.</summary>
    public enum StateBasis
    {
        /// <summary>The system as it is described.</summary>
        AsDescribed,

        /// <summary>
        /// The same at a point where a sensor holds the mixture, if the sensor fails: without correction.
        /// </summary>
        AsDescribedUncorrected,

        /// <summary>The injectors as measured, with the controller's belief as described.</summary>
        AsMeasured,

        /// <summary>
        /// The same at a point where a sensor holds the mixture, if the sensor fails: without correction.
        /// </summary>
        AsMeasuredUncorrected,
    }

    /// <summary>Whether a state is the one that a failed sensor leaves.</summary>
    internal static bool IsUncorrected(StateBasis basis) =>
        basis is StateBasis.AsDescribedUncorrected or StateBasis.AsMeasuredUncorrected;

    /// <summary>Whether the injectors of a state are those of the bench.</summary>
    internal static bool IsMeasured(StateBasis basis) =>
        basis is StateBasis.AsMeasured or StateBasis.AsMeasuredUncorrected;
}

namespace FuelMath;

public sealed partial class SystemAssessment
{
    /// <summary>The injectors of a state, and whether a sensor corrects.</summary>
    public enum StateBasis
    {
        /// <summary>The system as it is described.</summary>
        AsDescribed,

        /// <summary>The injectors as measured, with the controller's belief as described.</summary>
        AsMeasured,

        /// <summary>
        /// The same at a point where a sensor holds the mixture, if the sensor fails: without correction.
        /// </summary>
        AsMeasuredUncorrected,
    }
}

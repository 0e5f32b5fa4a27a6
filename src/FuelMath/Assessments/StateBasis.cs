namespace FuelMath;

/// <summary>Which injectors a state was found with, and who corrects.</summary>
public enum StateBasis
{
    /// <summary>The system as it is described.</summary>
    AsDescribed,

    /// <summary>The injectors as they were measured, the controller told what it was told.</summary>
    AsMeasured,

    /// <summary>The same at a point where a sensor holds the mixture, if the sensor fails: nobody corrects.</summary>
    AsMeasuredUncorrected,
}

namespace FuelMath;

public sealed partial class FittingEnd
{
    /// <summary>
    /// Whether an end goes into another or around it. For threaded ends it is the gender of the thread.
    /// </summary>
    public enum EndGender
    {
        /// <summary>Goes into the other: outside thread, tube end, barb.</summary>
        Male,

        /// <summary>Goes around the other: inside thread, port, nut, coupler, hose.</summary>
        Female,
    }
}

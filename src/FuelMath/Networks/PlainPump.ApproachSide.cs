namespace FuelMath;

public sealed partial class PlainPump
{
    /// <summary>
    /// The side from which a pump with a humped curve approaches a steady flow, if there are several.
    /// </summary>
    public enum ApproachSide
    {
        /// <summary>Its flow increased from zero: it stays at the least stable flow.</summary>
        NoFlow,

        /// <summary>Its flow decreased from free delivery: it stays at the greatest.</summary>
        FreeFlow,
    }
}

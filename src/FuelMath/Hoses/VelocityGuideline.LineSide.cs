namespace FuelMath;

public sealed partial class VelocityGuideline
{
    /// <summary>The side of a pump that a line is on.</summary>
    public enum LineSide
    {
        /// <summary>Ahead of the pump, where lost pressure makes vapor.</summary>
        Suction,

        /// <summary>Behind the pump.</summary>
        Delivery,
    }
}

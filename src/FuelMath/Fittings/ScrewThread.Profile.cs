namespace FuelMath;

public sealed partial class ScrewThread
{
    /// <summary>The profile of a screw thread: angle of its flanks, and whether its diameter tapers.</summary>
    public enum Profile
    {
        /// <summary>Unified inch thread: 60 degrees, parallel.</summary>
        Unified,

        /// <summary>Metric thread: 60 degrees, parallel.</summary>
        Metric,

        /// <summary>American pipe thread: 60 degrees, taper of 1 in 16 on diameter.</summary>
        AmericanPipeTaper,

        /// <summary>Whitworth pipe thread: 55 degrees, parallel.</summary>
        WhitworthPipeParallel,

        /// <summary>Whitworth pipe thread: 55 degrees, taper of 1 in 16 on diameter.</summary>
        WhitworthPipeTaper,
    }
}

namespace FuelMath;

public static partial class TwoK
{
    /// <summary>A shape whose two constants are published.</summary>
    public enum Shape
    {
        /// <summary>Elbow of 90 degrees over one diameter, screwed.</summary>
        Elbow90Screwed,

        /// <summary>Elbow of 90 degrees over one diameter, flanged or welded.</summary>
        Elbow90Flanged,

        /// <summary>Elbow of 45 degrees over one diameter.</summary>
        Elbow45,

        /// <summary>Tee with flow along the run only, screwed.</summary>
        TeeRunScrewed,
    }
}

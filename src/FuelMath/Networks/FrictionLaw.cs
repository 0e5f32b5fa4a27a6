namespace FuelMath;

/// <summary>How a pipe's friction factor is found.</summary>
public enum FrictionLaw
{
    /// <summary>
    /// Laminar to a Reynolds number of 2000, Colebrook and White from 4000, straight in the Reynolds number between. The
    /// default of this library.
    /// </summary>
    ColebrookStraightPassage,

    /// <summary>
    /// Laminar to 2000, the explicit law of Swamee and Jain from 4000, a cubic between: what general water-network
    /// engines use. For comparison with their results.
    /// </summary>
    SwameeJainCubicPassage,
}

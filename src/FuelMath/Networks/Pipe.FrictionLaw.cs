namespace FuelMath;

public sealed partial class Pipe
{
    /// <summary>The law of a pipe's friction factor.</summary>
    public enum FrictionLaw
    {
        /// <summary>
        /// Laminar to a Reynolds number of 2000, Colebrook and White from 4000, linear in the Reynolds number between.
        /// The
        /// default.
        /// </summary>
        ColebrookStraightPassage,

        /// <summary>
        /// Laminar to 2000, the explicit law of Swamee and Jain from 4000, a cubic between, as in general water-network
        /// engines. For comparison with their results.
        /// </summary>
        SwameeJainCubicPassage,
    }
}

namespace FuelMath;

public sealed partial class Fitting
{
    /// <summary>The basis of a loss coefficient.</summary>
    public enum LossBasis
    {
        /// <summary>A published formula or table, with all its dimensions given.</summary>
        Published,

        /// <summary>Measured on this part, or stated by its maker.</summary>
        Supplied,

        /// <summary>An estimate: a published formula with assumed dimensions, or beyond its checked range.</summary>
        Estimate,
    }
}

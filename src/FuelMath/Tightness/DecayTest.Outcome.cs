namespace FuelMath.ShopTests;

public sealed partial class DecayTest
{
    /// <summary>The verdict of a pressure-decay test against a limit.</summary>
    public enum Outcome
    {
        /// <summary>The rate and its expanded uncertainty stay below the limit.</summary>
        Passes,

        /// <summary>The rate less its expanded uncertainty is above the limit.</summary>
        Fails,

        /// <summary>
        /// The limit lies within the uncertainty: wait longer, bleed the gas, or keep the temperature steadier.
        /// </summary>
        Undecided,

        /// <summary>
        /// The pressure is at vapor pressure or ambient, where it stays with or without a leak; or the rate is negative
        /// beyond its uncertainty, so something else raises the pressure and may hide a leak. Not a pass, whatever the
        /// rate.
        /// </summary>
        NotATest,
    }
}

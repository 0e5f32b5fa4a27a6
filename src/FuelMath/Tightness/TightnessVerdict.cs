namespace FuelMath.ShopTests;

/// <summary>What a pressure-decay test says against a limit.</summary>
public enum TightnessVerdict
{
    /// <summary>The rate and its expanded uncertainty stay below the limit.</summary>
    Passes,

    /// <summary>The rate less its expanded uncertainty is above the limit.</summary>
    Fails,

    /// <summary>The limit lies within the uncertainty: wait longer, bleed the gas, or keep the temperature steadier.</summary>
    Undecided,

    /// <summary>
    /// The pressure stands at vapor pressure or at ambient, where it stays whether fuel leaks or not; or the rate is negative
    /// beyond its uncertainty, so that something unseen lifts the pressure and may hide a leak. No pass, whatever the rate
    /// looks like.
    /// </summary>
    NotATest,
}

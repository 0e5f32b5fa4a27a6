namespace FuelMath;

/// <summary>What a loss coefficient rests on.</summary>
public enum LossBasis
{
    /// <summary>A published formula or table, with every measure it asks for given.</summary>
    Published,

    /// <summary>Measured on this part, or stated by its maker.</summary>
    Supplied,

    /// <summary>An estimate: a published formula with assumed measures, or beyond what it was checked for.</summary>
    Estimate,
}

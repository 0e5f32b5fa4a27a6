using FuelMath.Internal;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>One thing that, alone, would explain a reading that differs: how far off it would have to be, and how to tell.</summary>
/// <remarks>Immutable; equality is by reference.</remarks>
public sealed class ShopCause
{
    internal ShopCause(string what, string needed, double departure, string howToTell)
    {
        What = what;
        Needed = needed;
        Departure = SiUnits.Ratio(departure);
        HowToTell = howToTell;
    }

    /// <summary>What would be off.</summary>
    public string What { get; }

    /// <summary>By how much, with what was expected beside it.</summary>
    public string Needed { get; }

    /// <summary>The same as a share of what was expected; causes are ranked by it, the smallest first.</summary>
    public Ratio Departure { get; }

    /// <summary>What to measure to tell it from the others, a sentence.</summary>
    public string HowToTell { get; }

    /// <summary>Gives cause and amount.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{What}: {Needed}. {HowToTell}";
}

using UnitsNet;

namespace FuelMath.Fuels;

/// <summary>What to add to a tank.</summary>
/// <remarks>The default value adds nothing. Immutable.</remarks>
#pragma warning disable CA1815 // Compared by its members, with a tolerance that the caller knows.
public readonly struct PremixTopUp
#pragma warning restore CA1815
{
    internal PremixTopUp(Volume fuel, Volume oil)
    {
        Fuel = fuel;
        Oil = oil;
    }

    /// <summary>Volume of fuel to add.</summary>
    public Volume Fuel { get; }

    /// <summary>Volume of oil to add.</summary>
    public Volume Oil { get; }
}

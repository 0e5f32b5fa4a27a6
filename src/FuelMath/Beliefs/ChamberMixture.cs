using FuelMath.Quantities;
using UnitsNet;

namespace FuelMath.Beliefs;

/// <summary>Air and fuel of one cylinder or rotor in one working cycle.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class ChamberMixture
{
    internal ChamberMixture(int chamber, Mass air, Mass fuel, Lambda? lambda)
    {
        Chamber = chamber;
        Air = air;
        Fuel = fuel;
        Lambda = lambda;
    }

    /// <summary>The cylinder or rotor, counted from 1.</summary>
    public int Chamber { get; }

    /// <summary>Air in one cycle.</summary>
    public Mass Air { get; }

    /// <summary>Fuel in one cycle.</summary>
    public Mass Fuel { get; }

    /// <summary>The mixture; null when there is no fuel.</summary>
    public Lambda? Lambda { get; }
}

using FuelMath.Internal;
using FuelMath.Networks;
using FuelMath.Quantities;
using UnitsNet;

namespace FuelMath.Systems;

/// <summary>A named place in the fuel path where pressure is asked for and parts meet.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class PlanNode
{
    private PlanNode(string name, bool isTank, GaugePressure pressure, Length elevation)
    {
        Name = Guard.Name(name, nameof(name));
        Guard.Finite(elevation, elevation.InSi(), nameof(elevation));
        IsTank = isTank;
        TankPressure = pressure;
        Elevation = elevation;
    }

    /// <summary>The name by which lines and injectors refer to it.</summary>
    public string Name { get; }

    /// <summary>Whether this is a tank, whose pressure is given and not solved for.</summary>
    public bool IsTank { get; }

    /// <summary>The pressure in the tank; ambient for a junction, where it means nothing.</summary>
    public GaugePressure TankPressure { get; }

    /// <summary>Height above a datum of the caller's choice; the fuel level for a tank.</summary>
    public Length Elevation { get; }

    /// <summary>A tank: fuel at a known pressure.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="pressure">The gauge pressure above the fuel, not below vacuum; zero for a vented tank.</param>
    /// <param name="elevation">Height of the fuel level above the datum.</param>
    /// <returns>The node.</returns>
    /// <exception cref="ArgumentException">The name is blank or the elevation not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is below vacuum.</exception>
    public static PlanNode Tank(string name, GaugePressure pressure, Length elevation)
    {
        NetworkChecks.NotBelowVacuum(pressure, nameof(pressure));
        return new(name, true, pressure, elevation);
    }

    /// <summary>A place where parts meet.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="elevation">Height above the datum.</param>
    /// <returns>The node.</returns>
    /// <exception cref="ArgumentException">The name is blank or the elevation not finite.</exception>
    public static PlanNode Junction(string name, Length elevation) => new(name, false, default, elevation);
}

using UnitsNet;

namespace FuelMath;

/// <summary>A named place in the fuel path where pressure is asked for and parts meet.</summary>
public sealed class PlanNode
{
    private PlanNode(string name, bool isTank, GaugePressure pressure, Length elevation, Volume? usableVolume)
    {
        Name = Guard.Name(name);
        Guard.Finite(elevation, elevation.InSi());
        IsTank = isTank;
        TankPressure = pressure;
        Elevation = elevation;
        UsableVolume = usableVolume;
    }

    private PlanNode(PlanNode other, double forward, double left)
    {
        (Name, IsTank, TankPressure) = (other.Name, other.IsTank, other.TankPressure);
        (Elevation, UsableVolume) = (other.Elevation, other.UsableVolume);
        (ForwardSi, LeftSi) = (forward, left);
    }

    /// <summary>The name by which lines and injectors refer to it.</summary>
    public string Name { get; }

    /// <summary>Whether this is a tank, a surge tank too, whose pressure is given and not solved for.</summary>
    public bool IsTank { get; }

    /// <summary>The pressure in the tank; ambient for a junction, where it means nothing.</summary>
    public GaugePressure TankPressure { get; }

    /// <summary>Height above a datum of the caller's choice; the fuel level for a tank.</summary>
    public Length Elevation { get; }

    /// <summary>How far ahead it lies, in m.</summary>
    public Length Forward => SiUnits.Length(ForwardSi);

    /// <summary>How far to the left it lies, in m.</summary>
    public Length Left => SiUnits.Length(LeftSi);

    internal double ForwardSi { get; }

    internal double LeftSi { get; }

    /// <summary>What can be drawn from a full surge tank before its pump sucks air; null for any other node.</summary>
    public Volume? UsableVolume { get; }

    /// <summary>The same node at a place; without it a node is where all places are counted from.</summary>
    /// <param name="forward">How far ahead of a place that all nodes share; finite.</param>
    /// <param name="left">How far to the left of it; finite.</param>
    /// <returns>The node. The place counts where the vehicle speeds up: see <see cref="OperatingPoint.WithAcceleration"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
    public PlanNode AtPlace(Length forward, Length left) =>
        new(this, Guard.Finite(forward, forward.InSi()), Guard.Finite(left, left.InSi()));

    /// <summary>The height that gives a column at rest the pressure that this place has in a vehicle that speeds up, m.</summary>
    internal double HeightAt(OperatingPoint point) => point.Acceleration.HeightOf(Elevation.InSi(), ForwardSi, LeftSi);

    /// <summary>A tank: fuel at a known pressure.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="pressure">The gauge pressure above the fuel, not below vacuum; zero for a vented tank.</param>
    /// <param name="elevation">Height of the fuel level above the datum.</param>
    /// <returns>The node.</returns>
    /// <exception cref="ArgumentException">The name is blank or the elevation not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is below vacuum.</exception>
    public static PlanNode Tank(string name, GaugePressure pressure, Length elevation)
    {
        NetworkChecks.NotBelowVacuum(pressure);
        return new(name, true, pressure, elevation, null);
    }

    /// <summary>A surge tank: a lift pump fills it from another tank, and what is too much overflows back there.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="pressure">The gauge pressure above the fuel, not below vacuum; zero where it is vented.</param>
    /// <param name="elevation">Height of the fuel level above the datum.</param>
    /// <param name="usableVolume">What can be drawn from it when full before its pump sucks air; greater than zero.</param>
    /// <returns>The node.</returns>
    /// <exception cref="ArgumentException">The name is blank or the elevation not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is below vacuum, or the volume not greater than zero.</exception>
    public static PlanNode SurgeTank(string name, GaugePressure pressure, Length elevation, Volume usableVolume)
    {
        NetworkChecks.NotBelowVacuum(pressure);
        Guard.Positive(usableVolume, usableVolume.InSi());
        return new(name, true, pressure, elevation, usableVolume);
    }

    /// <summary>A place where parts meet.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="elevation">Height above the datum.</param>
    /// <returns>The node.</returns>
    /// <exception cref="ArgumentException">The name is blank or the elevation not finite.</exception>
    public static PlanNode Junction(string name, Length elevation) => new(name, false, default, elevation, null);
}

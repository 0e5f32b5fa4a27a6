using UnitsNet;

namespace FuelMath;

/// <summary>A place in a network where links meet: its pressure is either given or sought.</summary>
public sealed class NetworkNode
{
    private NetworkNode(string name, bool isFixed, double pressure, double elevation, double draw)
        : this(name, isFixed, pressure, elevation, draw, 0, 0) { }

    private NetworkNode(
        string name,
        bool isFixed,
        double pressure,
        double elevation,
        double draw,
        double forward,
        double left
    )
    {
        Name = Guard.Name(name);
        IsFixed = isFixed;
        PressureSi = pressure;
        ElevationSi = elevation;
        DrawSi = draw;
        (ForwardSi, LeftSi) = (forward, left);
    }

    /// <summary>A node whose pressure is given: a tank, a manifold, a supply line.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="pressure">Its pressure; not below vacuum, -101.325 kPa gauge.</param>
    /// <param name="elevation">Its height above any level that all nodes share.</param>
    /// <returns>The node.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is below vacuum, or the elevation not finite.</exception>
    public static NetworkNode FixedPressure(string name, GaugePressure pressure, Length elevation) =>
        new(name, true, NetworkChecks.NotBelowVacuum(pressure), Guard.Finite(elevation, elevation.InSi()), 0);

    /// <summary>A node whose pressure is sought, where nothing is drawn.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="elevation">Its height above any level that all nodes share.</param>
    /// <returns>The node.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The elevation is not finite.</exception>
    public static NetworkNode Junction(string name, Length elevation) =>
        Junction(name, elevation, SiUnits.VolumeFlow(0));

    /// <summary>A node whose pressure is sought, where a fixed flow is drawn.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="elevation">Its height above any level that all nodes share.</param>
    /// <param name="draw">The volume flow drawn, whatever the pressure; negative feeds the network.</param>
    /// <returns>The node.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
    public static NetworkNode Junction(string name, Length elevation, VolumeFlow draw) =>
        new(name, false, 0, Guard.Finite(elevation, elevation.InSi()), Guard.Finite(draw, draw.InSi()));

    /// <summary>The same node at a place in a vehicle; without it a node is where all places are counted from.</summary>
    /// <param name="forward">How far ahead of a place that all nodes share; finite.</param>
    /// <param name="left">How far to the left of it; finite.</param>
    /// <returns>The node. The place counts where the network is accelerated: see <see cref="Network.Under"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
    public NetworkNode AtPlace(Length forward, Length left) =>
        new(
            Name,
            IsFixed,
            PressureSi,
            ElevationSi,
            DrawSi,
            Guard.Finite(forward, forward.InSi()),
            Guard.Finite(left, left.InSi())
        );

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Whether its pressure is given.</summary>
    public bool IsFixed { get; }

    /// <summary>Its height, in m.</summary>
    public Length Elevation => SiUnits.Length(ElevationSi);

    /// <summary>How far ahead it lies, in m.</summary>
    public Length Forward => SiUnits.Length(ForwardSi);

    /// <summary>How far to the left it lies, in m.</summary>
    public Length Left => SiUnits.Length(LeftSi);

    /// <summary>The volume flow drawn, in m³/s; zero at a node of fixed pressure.</summary>
    public VolumeFlow Draw => SiUnits.VolumeFlow(DrawSi);

    internal double PressureSi { get; }

    internal double ElevationSi { get; }

    internal double DrawSi { get; }

    internal double ForwardSi { get; }

    internal double LeftSi { get; }

    /// <summary>A copy of the node whose elevation gives, at rest, the same hydrostatic pressure as the acceleration.</summary>
    internal NetworkNode Under(VehicleAcceleration acceleration) =>
        new(Name, IsFixed, PressureSi, acceleration.HeightOf(this), DrawSi, ForwardSi, LeftSi);

    /// <summary>Gives its name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}

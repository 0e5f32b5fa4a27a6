using FuelMath.Internal;
using FuelMath.Quantities;
using UnitsNet;

namespace FuelMath.Networks;

/// <summary>A place in a network where links meet: its pressure is either given or sought.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class NetworkNode
{
    private NetworkNode(string name, bool isFixed, double pressure, double elevation, double draw)
    {
        Name = Guard.Name(name, nameof(name));
        IsFixed = isFixed;
        PressureSi = pressure;
        ElevationSi = elevation;
        DrawSi = draw;
    }

    /// <summary>A node whose pressure is given: a tank, a manifold, a supply line.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="pressure">Its pressure.</param>
    /// <param name="elevation">Its height above any level that all nodes share.</param>
    /// <returns>The node.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The elevation is not finite.</exception>
    public static NetworkNode FixedPressure(string name, GaugePressure pressure, Length elevation) =>
        new(name, true, pressure.Si, Guard.Finite(elevation, elevation.InSi(), nameof(elevation)), 0);

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
        new(
            name,
            false,
            0,
            Guard.Finite(elevation, elevation.InSi(), nameof(elevation)),
            Guard.Finite(draw, draw.InSi(), nameof(draw))
        );

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Whether its pressure is given.</summary>
    public bool IsFixed { get; }

    /// <summary>Its height, in m.</summary>
    public Length Elevation => SiUnits.Length(ElevationSi);

    /// <summary>The volume flow drawn, in m³/s; zero at a node of fixed pressure.</summary>
    public VolumeFlow Draw => SiUnits.VolumeFlow(DrawSi);

    internal double PressureSi { get; }

    internal double ElevationSi { get; }

    internal double DrawSi { get; }

    /// <summary>Gives its name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}

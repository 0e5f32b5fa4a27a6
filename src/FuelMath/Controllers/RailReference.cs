namespace FuelMath;

/// <summary>What a controller takes the pressure across its injectors to follow from.</summary>
public enum RailReference
{
    /// <summary>The rail follows the manifold, or wherever the injectors spray into: the difference entered holds at every point.</summary>
    Manifold,

    /// <summary>The rail is fixed against ambient pressure: boost takes from the difference entered, and vacuum adds to it.</summary>
    Fixed,

    /// <summary>A sensor measures the pressure across the injectors; the difference entered is that of the flow data.</summary>
    Measured,
}

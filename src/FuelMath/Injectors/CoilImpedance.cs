namespace FuelMath;

/// <summary>What a coil's resistance says of the driver that it needs. Source: [Common-practice] no single work.</summary>
public enum CoilImpedance
{
    /// <summary>Below 5 ohm: needs a driver that limits the current, or a ballast resistor.</summary>
    Low,

    /// <summary>From 5 to 10 ohm: the usual figures do not say; look at the maker's data.</summary>
    Between,

    /// <summary>Above 10 ohm: may be switched to the supply for the whole pulse.</summary>
    High,
}

namespace FuelMath;

public sealed partial class CoilResistance
{
    /// <summary>
    /// The kind of driver that a coil needs by its resistance. Source: [Common-practice] no single work.
    /// </summary>
    public enum ImpedanceClass
    {
        /// <summary>Below 5 ohm: needs a driver that limits the current, or a ballast resistor.</summary>
        Low,

        /// <summary>From 5 to 10 ohm: not decided by the usual limits; see the maker's data.</summary>
        Between,

        /// <summary>Above 10 ohm: may be switched to the supply for the whole pulse.</summary>
        High,
    }
}

namespace FuelMath;

public sealed partial class WiringMesh
{
    /// <summary>How a load's current depends on its voltage.</summary>
    internal enum LoadKind
    {
        /// <summary>The same current at any voltage: a pump at a given operating point.</summary>
        ConstantCurrent,

        /// <summary>Current in proportion to voltage: a coil, a lamp, a heater.</summary>
        Resistance,

        /// <summary>
        /// The same power at any voltage, so the current rises as voltage falls: an electronic driver.
        /// </summary>
        ConstantPower,
    }
}

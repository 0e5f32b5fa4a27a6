namespace FuelMath;

public sealed partial class InjectorDriver
{
    /// <summary>How a coil is driven.</summary>
    public enum DriverKind
    {
        /// <summary>
        /// Switched to the supply for the whole pulse; the resistance of the circuit limits the current.
        /// </summary>
        Saturated,

        /// <summary>Driven to a peak current, then held at a smaller one by the driver.</summary>
        PeakAndHold,
    }
}

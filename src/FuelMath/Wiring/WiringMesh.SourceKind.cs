namespace FuelMath;

public sealed partial class WiringMesh
{
    /// <summary>How a source's voltage depends on its current.</summary>
    public enum SourceKind
    {
        /// <summary>A fixed voltage, whatever the current: as an operating point gives it at the terminals.</summary>
        Held,

        /// <summary>An open-circuit voltage with an internal resistance; current may flow either way.</summary>
        Battery,

        /// <summary>A regulated voltage up to a greatest current; current flows out only.</summary>
        Alternator,
    }
}

namespace FuelMath;

/// <summary>How a source's voltage depends on its current.</summary>
public enum WiringSourceKind
{
    /// <summary>A voltage that no current moves: what an operating point states at the terminals.</summary>
    Held,

    /// <summary>An open-circuit voltage behind an internal resistance; current may flow either way.</summary>
    Battery,

    /// <summary>A regulated voltage up to a greatest current; current flows out only.</summary>
    Alternator,
}

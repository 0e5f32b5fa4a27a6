namespace FuelMath;

/// <summary>What an alternator does in a solved mesh.</summary>
public enum AlternatorState
{
    /// <summary>It holds its voltage, and gives less than its greatest current.</summary>
    Regulating,

    /// <summary>
    /// It gives its greatest current, and its voltage has fallen below the one it is set to. Whether the battery drains or
    /// is still charged is told by the battery's own current (<see cref="WiringState.CurrentFrom"/>).
    /// </summary>
    AtLimit,

    /// <summary>The mesh is above the voltage that it is set to: it gives nothing.</summary>
    Idle,
}

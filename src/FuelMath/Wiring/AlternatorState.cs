namespace FuelMath;

/// <summary>The state of an alternator in a solved mesh.</summary>
public enum AlternatorState
{
    /// <summary>It holds its voltage and delivers less than its greatest current.</summary>
    Regulating,

    /// <summary>
    /// It delivers its greatest current, and its voltage is below its regulated one. Whether the battery drains or is
    /// still charged shows in the battery's own current (<see cref="WiringState.CurrentFrom"/>).
    /// </summary>
    AtLimit,

    /// <summary>The voltage of the mesh is above its regulated one: it delivers nothing.</summary>
    Idle,
}

namespace FuelMath;

public sealed partial class WiringMesh
{
    /// <summary>The state of an alternator in a solved mesh.</summary>
    public enum AlternatorCondition
    {
        /// <summary>It holds its voltage and delivers less than its greatest current.</summary>
        Regulating,

        /// <summary>
        /// It delivers its greatest current, and its voltage is below its regulated one. Whether the battery drains or
        /// is
        /// still charged shows in the battery's own current (<see cref="State.CurrentFrom"/>).
        /// </summary>
        AtLimit,

        /// <summary>The voltage of the mesh is above its regulated one: it delivers nothing.</summary>
        Idle,
    }
}

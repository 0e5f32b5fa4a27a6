namespace FuelMath;

/// <summary>The state of a regulator.</summary>
/// <seealso href="../guide/regulators.html">Regulators</seealso>
public enum RegulatorCondition
{
    /// <summary>
    /// Closed. A bypass regulator: nothing is bypassed, and the pressure upstream is below its set point. A reducing
    /// one: satisfied, nothing is drawn.
    /// </summary>
    Seated,

    /// <summary>Holding the pressure: upstream by bypassing, or downstream by throttling.</summary>
    Regulating,

    /// <summary>
    /// Open to its stop, a fixed restriction. A bypass regulator: the pressure upstream lies above its set point. A reducing
    /// one: starved, the pressure downstream lies below it.
    /// </summary>
    FullyOpen,
}

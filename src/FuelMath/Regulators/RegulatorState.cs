namespace FuelMath.Regulators;

/// <summary>What a bypass regulator is doing.</summary>
public enum RegulatorState
{
    /// <summary>Shut: nothing is bypassed, and the pressure upstream is below its set point.</summary>
    Seated,

    /// <summary>Holding the pressure upstream by bypassing what is not used.</summary>
    Regulating,

    /// <summary>Open to its stop: a fixed restriction, and the pressure upstream lies above its set point.</summary>
    FullyOpen,
}

namespace FuelMath;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Act before relying on the result.</summary>
    Warning,

    /// <summary>Do not run the engine like this.</summary>
    Danger,
}

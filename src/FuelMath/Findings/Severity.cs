namespace FuelMath;

/// <summary>The severity of a finding.</summary>
/// <seealso href="../guide/findings.html">Findings</seealso>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Act before relying on the result.</summary>
    Warning,

    /// <summary>Do not run the engine like this.</summary>
    Danger,
}

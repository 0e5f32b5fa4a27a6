namespace FuelMath.Bench;

/// <summary>How dead time is taken to change with voltage and pressure where a pair was not read.</summary>
public enum DeadTimePattern
{
    /// <summary>A step in pressure adds the same time at every voltage.</summary>
    Additive,

    /// <summary>A step in pressure multiplies the time at every voltage alike.</summary>
    Proportional,
}

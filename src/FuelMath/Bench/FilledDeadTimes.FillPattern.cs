namespace FuelMath.Bench;

public sealed partial class FilledDeadTimes
{
    /// <summary>How dead time is assumed to change with voltage and pressure where a pair was not read.</summary>
    public enum FillPattern
    {
        /// <summary>A step in pressure adds the same time at every voltage.</summary>
        Additive,

        /// <summary>A step in pressure multiplies the time by the same factor at every voltage.</summary>
        Proportional,
    }
}

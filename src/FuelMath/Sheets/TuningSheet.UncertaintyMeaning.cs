namespace FuelMath;

public sealed partial class TuningSheet
{
    /// <summary>The meaning of the uncertainty beside a value.</summary>
    public enum UncertaintyMeaning
    {
        /// <summary>No uncertainty was stated or measured.</summary>
        NotStated,

        /// <summary>Half of a confidence interval, from repeated readings.</summary>
        Interval,

        /// <summary>Half of the range of a set, with one reading each.</summary>
        HalfSpread,
    }
}

namespace FuelMath;

/// <summary>What stands behind the number beside a value: three things that must not be taken for one another.</summary>
public enum UncertaintyMeaning
{
    /// <summary>Nobody stated or measured one.</summary>
    NotStated,

    /// <summary>Half of a confidence interval, from repeats.</summary>
    Interval,

    /// <summary>Half of the difference between the largest and the smallest of a set, one reading each.</summary>
    HalfSpread,
}

namespace FuelMath;

/// <summary>What a table does when it is asked beyond its data.</summary>
public enum OutsideRange
{
    /// <summary>It refuses with an <see cref="OutsideTableException"/>. The default everywhere.</summary>
    Refuse = 0,

    /// <summary>It gives the value at the nearer end. The caller knows that the data end there.</summary>
    HoldEnds = 1,

    /// <summary>It goes on straight with the slope at the end. The caller answers for it.</summary>
    Extend = 2,
}

namespace FuelMath;

/// <summary>The behavior of a table beyond its data.</summary>
/// <seealso href="../guide/tables.html">Tables</seealso>
public enum OutsideRange
{
    /// <summary>Throws an <see cref="OutsideTableException"/>. The default.</summary>
    Refuse = 0,

    /// <summary>Uses the value at the nearer end: the caller accepts that.</summary>
    HoldEnds = 1,

    /// <summary>Extrapolates linearly with the slope at the end: the caller accepts that.</summary>
    Extend = 2,
}

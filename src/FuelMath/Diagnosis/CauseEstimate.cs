using UnitsNet;

namespace FuelMath;

/// <summary>How large an error would be if it were the cause, and how well the observations say so.</summary>
/// <remarks>
/// In SI units: a <see cref="Ratio"/> for flow, air and reference, a <see cref="Duration"/> for dead time, a
/// <see cref="Pressure"/> for pressure. The interval is one of 95 %.
/// </remarks>
public sealed class CauseEstimate
{
    internal CauseEstimate(string what, IQuantity value, IQuantity standardError, IQuantity low, IQuantity high) =>
        (What, Value, StandardError, Low, High) = (what, value, standardError, low, high);

    /// <summary>What is estimated, in words.</summary>
    public string What { get; }

    /// <summary>The estimate.</summary>
    public IQuantity Value { get; }

    /// <summary>Its standard error.</summary>
    public IQuantity StandardError { get; }

    /// <summary>The lower end of the interval of 95 %.</summary>
    public IQuantity Low { get; }

    /// <summary>The upper end of the interval of 95 %.</summary>
    public IQuantity High { get; }
}

namespace FuelMath.Statistics;

/// <summary>A range of numbers that contains a true value with a stated confidence.</summary>
/// <remarks>
/// Created by a fit or a sample, in the unit of their data. The default value is the single number zero.
/// </remarks>
/// <seealso href="../guide/uncertainty.html">Uncertainty</seealso>
public readonly struct Interval
{
    internal Interval(double low, double high) => (Low, High) = (low, high);

    /// <summary>The lower end.</summary>
    public double Low { get; }

    /// <summary>The upper end.</summary>
    public double High { get; }

    /// <summary>Whether a number lies in it, ends included.</summary>
    /// <param name="value">The number.</param>
    /// <returns>True when it does.</returns>
    public bool Contains(double value) => value >= Low && value <= High;

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Low} to {High}");

    internal static Interval Around(double center, double halfWidth) => new(center - halfWidth, center + halfWidth);
}

namespace FuelMath;

/// <summary>Which uncertain inputs make the scatter at one operating point, or why that can't be said.</summary>
public sealed class PointShares
{
    private PointShares(OperatingPoint point, SystemShares? shares, Exception? refusal) =>
        (Point, Shares, Refusal) = (point, shares, refusal);

    /// <summary>The operating point.</summary>
    public OperatingPoint Point { get; }

    /// <summary>The shares; null where there is no state.</summary>
    public SystemShares? Shares { get; }

    /// <summary>Why there are none, an <see cref="IRefusal"/>; null where there are.</summary>
    public Exception? Refusal { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Point}: {(Shares is null ? "refused" : "shares")}");

    internal static PointShares Of(FuelSystem system, OperatingPoint point, IEnumerable<UncertainInput> inputs)
    {
        try
        {
            return new(point, new SystemShares(system, point, inputs), null);
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            return new(point, null, refusal);
        }
    }
}

namespace FuelMath;

/// <summary>One point of a history: a state, or a refusal with its reason; never both.</summary>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed class HistoryPoint
{
    internal HistoryPoint(OperatingPoint point, SystemState? state, Exception? refusal) =>
        (Point, State, Refusal) = (point, state, refusal);

    /// <summary>The point asked about.</summary>
    public OperatingPoint Point { get; }

    /// <summary>The state; null when it was refused.</summary>
    public SystemState? State { get; }

    /// <summary>Why there is no state, with its numbers, an <see cref="IRefusal"/>; null when there is one.</summary>
    public Exception? Refusal { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Point}: {(State is null ? "refused" : "solved")}");
}

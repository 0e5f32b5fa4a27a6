using System.Collections.Immutable;

namespace FuelMath;

/// <summary>
/// Operating points one after another: each pump with a switch goes on as it ran at the point before, so that a rising and a
/// falling speed meet different states where a switch has hysteresis.
/// </summary>
/// <remarks>
/// Each state is steady: how long a point lasts, and how fast a switch acts, is not looked at. A point that has no state
/// carries its refusal, and the pumps go on as they ran at the last point that has one. The points of a <see cref="Sweep"/>
/// have no such order.
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/SystemExamples.cs" region="History" />
/// </example>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed class OperatingHistory
{
    /// <summary>Solves a system at points in their order.</summary>
    /// <param name="system">The system; its switches say what was running before the first point.</param>
    /// <param name="points">The points, at least one.</param>
    /// <param name="cancellation">Stops between two points.</param>
    /// <exception cref="ArgumentNullException">An argument or a point is null.</exception>
    /// <exception cref="ArgumentException">No point is given, or a command does not fit the system.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public OperatingHistory(FuelSystem system, IEnumerable<OperatingPoint> points, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(points);
        OperatingPoint[] asked = [.. Lists.NoNulls(points)];
        if (asked.Length == 0)
        {
            throw Guard.Empty(nameof(points));
        }

        var found = ImmutableArray.CreateBuilder<HistoryPoint>(asked.Length);
        foreach (OperatingPoint point in asked)
        {
            cancellation.ThrowIfCancellationRequested();
            try
            {
                SystemState state = system.Solve(point);
                found.Add(new(point, state, null));
                system = system.After(state);
            }
            catch (Exception refusal) when (refusal is IRefusal)
            {
                found.Add(new(point, null, refusal));
            }
        }

        (Points, SystemAfter) = (found.MoveToImmutable(), system);
    }

    /// <summary>The points in their order.</summary>
    public ImmutableArray<HistoryPoint> Points { get; }

    /// <summary>The system as the last point left it, to go on from.</summary>
    public FuelSystem SystemAfter { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{SystemAfter}: {Points.Length} points in their order");
}

using UnitsNet;

namespace FuelMath;

/// <summary>The results of a batch: for each point its state or a refusal.</summary>
public sealed class NetworkBatchResult
{
    private readonly NetworkState? start;
    private readonly BatchNumbers numbers;

    internal NetworkBatchResult(NetworkBatch batch, NetworkState? start, BatchNumbers numbers)
    {
        (Batch, this.start, this.numbers) = (batch, start, numbers);
        SolvedCount = numbers.Refusal.Count(r => r is null);
    }

    /// <summary>The batch that was solved.</summary>
    public NetworkBatch Batch { get; }

    /// <summary>The number of points.</summary>
    public int Count => numbers.Count;

    /// <summary>Number of points with a state.</summary>
    public int SolvedCount { get; }

    /// <summary>Why a point has no state, with its numbers; null when it has one.</summary>
    /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
    /// <returns>A <see cref="NoSolutionException"/> or an <see cref="OutsideTableException"/>, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such point.</exception>
    public Exception? RefusalAt(int point) => numbers.Refusal[Guard.InRange(point, 0, Count - 1)];

    /// <summary>The pressure of a node at a point.</summary>
    /// <param name="node">Its name; a junction.</param>
    /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
    /// <returns>The pressure, as in <see cref="NetworkState.PressureAt"/>.</returns>
    /// <exception cref="ArgumentException">There is no such junction or point.</exception>
    /// <exception cref="InvalidOperationException">The point was refused, or the node is cut off there.</exception>
    public GaugePressure PressureAt(string node, int point)
    {
        int i = NetworkSettings.Sought(Batch.Network.Plan, node);
        double pressure = numbers.PressureRow(i)[Solved(point)];
        return double.IsNaN(pressure) ? throw NetworkState.CutOff(node) : new GaugePressure(pressure);
    }

    /// <summary>The volume flow in a link at a point, positive in the link's direction.</summary>
    /// <param name="link">Its name.</param>
    /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
    /// <returns>The flow, in m³/s.</returns>
    /// <exception cref="ArgumentException">There is no such link or point.</exception>
    /// <exception cref="InvalidOperationException">The point was refused.</exception>
    public VolumeFlow FlowIn(string link, int point) =>
        SiUnits.VolumeFlow(numbers.FlowRow(Batch.Network.Plan.Link(link))[Solved(point)]);

    /// <summary>Iterations of the solver at a point.</summary>
    /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
    /// <returns>The number of iterations.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such point.</exception>
    /// <exception cref="InvalidOperationException">The point was refused.</exception>
    public int IterationsAt(int point) => (int)numbers.Iterations[Solved(point)];

    /// <summary>
    /// The whole state of a point, with the conditions of links and the residuals. Solved once more, with the same
    /// bits.
    /// </summary>
    /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such point.</exception>
    /// <exception cref="InvalidOperationException">The point was refused.</exception>
    public NetworkState ToState(int point) =>
        start is null ? Batch.StateAt(Solved(point)) : Batch.StateAt(Solved(point), start);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{SolvedCount} of {Count} points solved");

    private int Solved(int point) =>
        RefusalAt(point) is { } refusal
            ? throw new InvalidOperationException(
                $"Point {point} has no state. {ExceptionText.Sentence(refusal)}",
                refusal
            )
            : point;
}

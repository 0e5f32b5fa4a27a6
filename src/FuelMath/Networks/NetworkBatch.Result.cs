using UnitsNet;

namespace FuelMath;

public sealed partial class NetworkBatch
{
    /// <summary>The results of a batch: for each point its state or a refusal.</summary>
    public sealed class Result
    {
        private readonly NetworkState? start;
        private readonly BatchNumbers numbers;

        // What nodes of fixed pressure are given point by point.
        private readonly double[]?[] given;

        internal Result(NetworkBatch batch, NetworkState? start, BatchNumbers numbers)
        {
            (Batch, this.start, this.numbers) = (batch, start, numbers);
            given = [.. Enumerable.Range(0, Plan.Nodes.Length).Select(batch.PressuresOf)];
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
        /// <param name="node">Its name.</param>
        /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
        /// <returns>
        /// The pressure: of a junction as <see cref="NetworkState.PressureAt(string)"/> gives it, of a node of fixed
        /// pressure the
        /// one given.
        /// </returns>
        /// <exception cref="ArgumentException">There is no such node or point.</exception>
        /// <exception cref="InvalidOperationException">The point was refused, or the node is cut off there.</exception>
        public GaugePressure PressureAt(string node, int point) => PressureOf(Plan.Node(node), Solved(point));

        /// <summary>The pressure of a node at a point.</summary>
        /// <param name="node">Its handle.</param>
        /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
        /// <returns>
        /// The pressure: of a junction as <see cref="NetworkState.PressureAt(string)"/> gives it, of a node of fixed
        /// pressure the
        /// one given.
        /// </returns>
        /// <exception cref="ArgumentException">The handle is of another network, or there is no such point.</exception>
        public GaugePressure PressureAt(Network.NodeHandle node, int point) =>
            PressureOf(Plan.Names.Node(node), Solved(point));

        /// <summary>The pressure of a node at a point, where there is one.</summary>
        /// <param name="node">Its name.</param>
        /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
        /// <param name="pressure">The pressure; without meaning where there is none.</param>
        /// <returns>Whether there is one: false where the point was refused, or the node is cut off there.</returns>
        /// <exception cref="ArgumentException">There is no such node or point.</exception>
        public bool TryPressureAt(string node, int point, out GaugePressure pressure) =>
            TryPressureOf(Plan.Node(node), point, out pressure);

        /// <summary>The pressure of a node at a point, where there is one.</summary>
        /// <param name="node">Its handle.</param>
        /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
        /// <param name="pressure">The pressure; without meaning where there is none.</param>
        /// <returns>Whether there is one: false where the point was refused, or the node is cut off there.</returns>
        /// <exception cref="ArgumentException">The handle is of another network, or there is no such point.</exception>
        public bool TryPressureAt(Network.NodeHandle node, int point, out GaugePressure pressure) =>
            TryPressureOf(Plan.Names.Node(node), point, out pressure);

        /// <summary>The volume flow in a line at a point, positive in the link's direction.</summary>
        /// <param name="line">Its name.</param>
        /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
        /// <returns>The flow, in m³/s.</returns>
        /// <exception cref="ArgumentException">There is no such link or point.</exception>
        /// <exception cref="InvalidOperationException">The point was refused.</exception>
        public VolumeFlow FlowIn(string line, int point) => FlowOf(Plan.Link(line), Solved(point));

        /// <summary>The volume flow in a line at a point, positive in the link's direction.</summary>
        /// <param name="line">Its handle.</param>
        /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
        /// <returns>The flow, in m³/s.</returns>
        /// <exception cref="ArgumentException">The handle is of another network, or there is no such point.</exception>
        public VolumeFlow FlowIn(Network.LineHandle line, int point) => FlowOf(Plan.Names.Line(line), Solved(point));

        /// <summary>The volume flow in a line at a point, where there is a state.</summary>
        /// <param name="line">Its name.</param>
        /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
        /// <param name="flow">The flow, in m³/s; without meaning where there is none.</param>
        /// <returns>Whether there is one: false where the point was refused.</returns>
        /// <exception cref="ArgumentException">There is no such link or point.</exception>
        public bool TryFlowIn(string line, int point, out VolumeFlow flow) =>
            TryFlowOf(Plan.Link(line), point, out flow);

        /// <summary>The volume flow in a line at a point, where there is a state.</summary>
        /// <param name="line">Its handle.</param>
        /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
        /// <param name="flow">The flow, in m³/s; without meaning where there is none.</param>
        /// <returns>Whether there is one: false where the point was refused.</returns>
        /// <exception cref="ArgumentException">The handle is of another network, or there is no such point.</exception>
        public bool TryFlowIn(Network.LineHandle line, int point, out VolumeFlow flow) =>
            TryFlowOf(Plan.Names.Line(line), point, out flow);

        /// <summary>What a line is doing at a point.</summary>
        /// <param name="line">Its name.</param>
        /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
        /// <returns>Its condition, as <see cref="NetworkState.ConditionOf(string)"/> gives it.</returns>
        /// <exception cref="ArgumentException">There is no such link or point.</exception>
        /// <exception cref="InvalidOperationException">The point was refused.</exception>
        public Network.LineCondition ConditionOf(string line, int point) => ConditionIn(Plan.Link(line), Solved(point));

        /// <summary>What a line is doing at a point.</summary>
        /// <param name="line">Its handle.</param>
        /// <param name="point">Which, 0 to less than <see cref="Count"/>.</param>
        /// <returns>Its condition, as <see cref="NetworkState.ConditionOf(string)"/> gives it.</returns>
        /// <exception cref="ArgumentException">The handle is of another network, or there is no such point.</exception>
        public Network.LineCondition ConditionOf(Network.LineHandle line, int point) =>
            ConditionIn(Plan.Names.Line(line), Solved(point));

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

        private NetworkPlan Plan => Batch.Network.Plan;

        private bool TryPressureOf(int node, int point, out GaugePressure pressure)
        {
            double found = RefusalAt(point) is null ? PressureSi(node, point) : double.NaN;
            pressure = double.IsNaN(found) ? default : new GaugePressure(found);
            return !double.IsNaN(found);
        }

        private GaugePressure PressureOf(int node, int point) =>
            TryPressureOf(node, point, out GaugePressure found)
                ? found
                : throw NetworkState.CutOff(Plan.Nodes[node].Name);

        private double PressureSi(int node, int point) =>
            node < Plan.Unknown ? numbers.PressureRow(node)[point] : given[node]?[point] ?? Plan.Nodes[node].PressureSi;

        private bool TryFlowOf(int line, int point, out VolumeFlow flow)
        {
            bool isSolved = RefusalAt(point) is null;
            flow = isSolved ? FlowOf(line, point) : default;
            return isSolved;
        }

        private VolumeFlow FlowOf(int line, int point) => SiUnits.VolumeFlow(numbers.FlowRow(line)[point]);

        private Network.LineCondition ConditionIn(int line, int point) =>
            (Network.LineCondition)numbers.ConditionRow(line)[point];

        private int Solved(int point) =>
            RefusalAt(point) is { } refusal
                ? throw new RefusedOperationException(
                    RefusalCode.StateRefused,
                    ((RefusalText)$"Point {point:point} has no state. ").Then(ExceptionText.Sentence(refusal)),
                    inner: refusal
                )
                : point;
    }
}

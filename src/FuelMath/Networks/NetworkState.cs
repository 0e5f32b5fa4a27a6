using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A network in steady state: pressures, flows, what each part is doing, and how exact that is.</summary>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed class NetworkState
{
    private readonly NetworkPlan plan;

    /// <summary>The pressures of the nodes, then the flows of the links, then the roots of their laws.</summary>
    private readonly double[] numbers;

    /// <summary>The condition of each link, then for each node 1 where its pressure is determined.</summary>
    private readonly byte[] marks;
    private readonly Evidence evidence;

    /// <summary>Takes over what a workspace holds and what the verdict on it noted.</summary>
    internal NetworkState(NetworkWork<Real> work)
    {
        plan = work.Plan;
        evidence = work.Notes.Evidence;
        Remarks = plan.Flat.Remarks(work);
        (int nodes, int links) = (plan.Nodes.Length, plan.Links.Length);
        (numbers, marks) = (new double[nodes + links + links], new byte[links + nodes]);
        for (int i = 0; i < nodes; i++)
        {
            numbers[i] = work.PressureAt(i).Value;
            marks[links + i] = work.Notes.Known[i] ? (byte)1 : (byte)0;
        }

        for (int e = 0; e < links; e++)
        {
            (numbers[nodes + e], numbers[nodes + links + e]) = (work.Flow[e].Value, work.Memory[e].Value);
            marks[e] = (byte)work.Notes.Conditions[e];
        }
    }

    private NetworkState(NetworkState other, ImmutableArray<string> remarks)
    {
        (plan, numbers, marks, evidence) = (other.plan, other.numbers, other.marks, other.evidence);
        Remarks = remarks;
    }

    /// <summary>
    /// Sentences on how it was chosen where that was a question, and on flows that the laws do not determine; empty where
    /// they leave one state only.
    /// </summary>
    public ImmutableArray<string> Remarks { get; }

    /// <summary>The names of the junctions, whose pressure is sought.</summary>
    public ImmutableArray<string> JunctionNames => plan.Names.Junctions;

    /// <summary>The names of the lines, in the order they were given.</summary>
    public ImmutableArray<string> LineNames => plan.Names.Lines;

    /// <summary>
    /// The names of the junctions that no open way joins to a given pressure, and that nothing can fill. Theirs is what it was when the last
    /// way shut, which a steady state does not know.
    /// </summary>
    public ImmutableArray<string> CutOffNodeNames =>
        [.. plan.Nodes.Take(plan.Unknown).Where((_, i) => IsCutOff(i)).Select(n => n.Name)];

    /// <summary>Iterations of the solver.</summary>
    public int Iterations => evidence.Iterations;

    /// <summary>The greatest flow that appears or vanishes at a junction, in m³/s.</summary>
    /// <remarks>At most a billionth of the greatest flow and of the greatest that its parts usually carry.</remarks>
    public VolumeFlow WorstMassImbalance => SiUnits.VolumeFlow(evidence.Imbalance);

    /// <summary>The junction where it does; empty when all balance to the last digit.</summary>
    public string WorstMassImbalanceNode => evidence.ImbalanceNode < 0 ? "" : plan.Nodes[evidence.ImbalanceNode].Name;

    /// <summary>The greatest difference between the pressures at a line and what its own law says, in Pa.</summary>
    /// <remarks>
    /// At most 1 mPa and a billionth of the greatest pressure, or there would be no state. A shut line is judged by its
    /// flow.
    /// </remarks>
    public Pressure WorstPressureResidual => SiUnits.Pressure(evidence.Error);

    /// <summary>The line where it is.</summary>
    public string WorstPressureResidualLine => plan.Links[evidence.ErrorLink].Name;

    /// <summary>The pressure of a node.</summary>
    /// <param name="node">Its name.</param>
    /// <returns>
    /// The pressure. Behind a check valve without flow it is the one to which the network fills the place by itself; a
    /// higher one may be trapped there.
    /// </returns>
    /// <exception cref="ArgumentException">There is no node of that name.</exception>
    /// <exception cref="InvalidOperationException">The node is cut off, so that its pressure is not determined.</exception>
    public GaugePressure PressureAt(string node) => PressureOf(plan.Node(node));

    /// <summary>The pressure of a node.</summary>
    /// <param name="node">Its handle.</param>
    /// <returns>
    /// The pressure. Behind a check valve without flow it is the one to which the network fills the place by itself; a
    /// higher one may be trapped there.
    /// </returns>
    /// <exception cref="ArgumentException">The handle is of another network.</exception>
    public GaugePressure PressureAt(Network.NodeHandle node) => PressureOf(plan.Names.Node(node));

    /// <summary>The pressure of a node, where it is determined.</summary>
    /// <param name="node">Its name.</param>
    /// <param name="pressure">The pressure, as <see cref="PressureAt(string)"/> gives it; without meaning where there is none.</param>
    /// <returns>Whether there is one: false where the node is cut off.</returns>
    /// <exception cref="ArgumentException">There is no node of that name.</exception>
    public bool TryPressureAt(string node, out GaugePressure pressure) => TryPressureOf(plan.Node(node), out pressure);

    /// <summary>The pressure of a node, where it is determined.</summary>
    /// <param name="node">Its handle.</param>
    /// <param name="pressure">The pressure; without meaning where there is none.</param>
    /// <returns>Whether there is one: false where the node is cut off.</returns>
    /// <exception cref="ArgumentException">The handle is of another network.</exception>
    public bool TryPressureAt(Network.NodeHandle node, out GaugePressure pressure) =>
        TryPressureOf(plan.Names.Node(node), out pressure);

    /// <summary>The volume flow in a line, positive in its direction.</summary>
    /// <param name="line">Its name.</param>
    /// <returns>The flow, in m³/s.</returns>
    /// <exception cref="ArgumentException">There is no line of that name.</exception>
    public VolumeFlow FlowIn(string line) => SiUnits.VolumeFlow(FlowSi(plan.Link(line)));

    /// <summary>The volume flow in a line, positive in its direction.</summary>
    /// <param name="line">Its handle.</param>
    /// <returns>The flow, in m³/s.</returns>
    /// <exception cref="ArgumentException">The handle is of another network.</exception>
    public VolumeFlow FlowIn(Network.LineHandle line) => SiUnits.VolumeFlow(FlowSi(plan.Names.Line(line)));

    /// <summary>What a line is doing.</summary>
    /// <param name="line">Its name.</param>
    /// <returns>Its condition.</returns>
    /// <exception cref="ArgumentException">There is no line of that name.</exception>
    public Network.LineCondition ConditionOf(string line) => ConditionAt(plan.Link(line));

    /// <summary>What a line is doing.</summary>
    /// <param name="line">Its handle.</param>
    /// <returns>Its condition.</returns>
    /// <exception cref="ArgumentException">The handle is of another network.</exception>
    public Network.LineCondition ConditionOf(Network.LineHandle line) => ConditionAt(plan.Names.Line(line));

    /// <summary>The pressure from a line's upstream node to its downstream node, as gauges there would show it.</summary>
    /// <param name="line">Its name.</param>
    /// <returns>Upstream less downstream pressure, in Pa: height counts.</returns>
    /// <exception cref="ArgumentException">There is no line of that name.</exception>
    /// <exception cref="InvalidOperationException">An end is cut off, so that its pressure is not determined.</exception>
    public Pressure PressureDifferenceOver(string line) => DifferenceOver(plan.Link(line));

    /// <summary>The pressure from a line's upstream node to its downstream node, as gauges there would show it.</summary>
    /// <param name="line">Its handle.</param>
    /// <returns>Upstream less downstream pressure, in Pa: height counts.</returns>
    /// <exception cref="ArgumentException">The handle is of another network.</exception>
    public Pressure PressureDifferenceOver(Network.LineHandle line) => DifferenceOver(plan.Names.Line(line));

    /// <summary>The pressure from a line's upstream node to its downstream node, where both are determined.</summary>
    /// <param name="line">Its name.</param>
    /// <param name="difference">Upstream less downstream pressure, in Pa; without meaning where there is none.</param>
    /// <returns>Whether there is one: false where an end is cut off.</returns>
    /// <exception cref="ArgumentException">There is no line of that name.</exception>
    public bool TryPressureDifferenceOver(string line, out Pressure difference) =>
        TryDifferenceOver(plan.Link(line), out difference);

    /// <summary>The pressure from a line's upstream node to its downstream node, where both are determined.</summary>
    /// <param name="line">Its handle.</param>
    /// <param name="difference">Upstream less downstream pressure, in Pa; without meaning where there is none.</param>
    /// <returns>Whether there is one: false where an end is cut off.</returns>
    /// <exception cref="ArgumentException">The handle is of another network.</exception>
    public bool TryPressureDifferenceOver(Network.LineHandle line, out Pressure difference) =>
        TryDifferenceOver(plan.Names.Line(line), out difference);

    private GaugePressure PressureOf(int node) =>
        TryPressureOf(node, out GaugePressure found) ? found : throw CutOff(plan.Nodes[node].Name);

    private bool TryPressureOf(int node, out GaugePressure found)
    {
        bool determined = !IsCutOff(node);
        found = determined ? new GaugePressure(PressureSi(node)) : default;
        return determined;
    }

    private Pressure DifferenceOver(int link) => PressureOf(plan.From[link]) - PressureOf(plan.To[link]);

    private bool TryDifferenceOver(int link, out Pressure difference)
    {
        bool determined = !IsCutOff(plan.From[link]) && !IsCutOff(plan.To[link]);
        difference = determined ? DifferenceOver(link) : default;
        return determined;
    }

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{JunctionNames.Length} junctions, {LineNames.Length} lines, worst imbalance {WorstMassImbalance}");

    internal NetworkPlan Plan => plan;

    /// <summary>The same state with one more remark.</summary>
    internal NetworkState With(string remark) => new(this, Remarks.Add(remark));

    internal double FlowSi(int link) => Shown(ConditionAt(link), numbers[plan.Nodes.Length + link]);

    /// <summary>The flow of a link in a workspace that was judged.</summary>
    internal static double FlowSi(NetworkWork<Real> judged, int link) =>
        Shown(judged.Notes.Conditions[link], judged.Flow[link].Value);

    private static double Shown(Network.LineCondition condition, double flow) =>
        LinkConditions.Shown(new Real((int)condition), new Real(flow)).Value;

    internal static RefusedOperationException CutOff(string node) =>
        new(
            RefusalCode.PressureUndetermined,
            $"The pressure at '{node:node}' is not determined: every way to it is shut, so that it keeps what it had."
        );

    internal double PressureSi(int node) => numbers[node];

    /// <summary>Puts this state into a workspace of the same plan, for a warm start.</summary>
    internal void CopyTo<T>(NetworkWork<T> work)
        where T : struct, IScalar<T>
    {
        (int nodes, int links) = (plan.Nodes.Length, plan.Links.Length);
        for (int i = 0; i < plan.Unknown; i++)
        {
            work.SetUnknown(i, T.Of(numbers[i]));
        }

        for (int e = 0; e < links; e++)
        {
            work.Flow[e] = T.Of(numbers[nodes + e]);
            work.Memory[e] = T.Of(numbers[nodes + links + e]);
        }
    }

    internal bool IsCutOff(int node) => marks[plan.Links.Length + node] == 0;

    internal Network.LineCondition ConditionAt(int link) => (Network.LineCondition)marks[link];
}

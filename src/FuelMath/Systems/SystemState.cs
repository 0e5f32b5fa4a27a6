using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The steady state of a fuel system at an operating point, with its findings and its evidence.</summary>
/// <remarks>
/// Names of nodes and lines are those of the network; pressures and flows are kept as SI numbers and made quantities on
/// request. So are its results by part, evidence, findings and verdict: they are made when the first of them is asked for,
/// and are the same whenever that is.
/// </remarks>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed partial class SystemState
{
    private readonly KeptSolve solve;
    private readonly ReportOnRequest report;

    /// <exception cref="OutsideTableException">The data of the pumps do not reach as far as their reserve.</exception>
    internal SystemState(KeptSolve solve)
    {
        this.solve = solve;
        report = new ReportOnRequest(solve);
        Remarks = solve.Network.Remarks;
    }

    /// <summary>The conditions that were asked about.</summary>
    public OperatingPoint Point => solve.Point;

    /// <summary>
    /// Sentences on how the state was chosen where pumps join and leave, and on flows that the laws do not determine; empty
    /// where they leave one state only.
    /// </summary>
    public ImmutableArray<string> Remarks { get; private set; }

    /// <summary>Every injector, stage by stage in the order of the seats.</summary>
    public ImmutableArray<InjectorResult> Injectors => report.Parts.Injectors;

    /// <summary>Every stage.</summary>
    public ImmutableArray<StageResult> Stages => report.Parts.Stages;

    /// <summary>Every pump that runs, in the order of the lines.</summary>
    public ImmutableArray<PumpResult> Pumps => report.Parts.Pumps;

    /// <summary>Every regulator, in the order of the lines.</summary>
    public ImmutableArray<RegulatorResult> Regulators => report.Parts.Regulators;

    /// <summary>
    /// The fuel path as a network in steady state: what each line and each injector does, and which nodes are cut off. Beside
    /// the nodes of the network it has two spaces that injectors spray into.
    /// </summary>
    public NetworkState Network => solve.Network;

    /// <summary>What comes into each surge tank and what goes, in the order of the nodes; often none.</summary>
    public ImmutableArray<SurgeTankBalance> SurgeTanks => report.Parts.SurgeTanks;

    /// <summary>
    /// What the pumps could still give at the pressure that must hold, beyond what injectors, jets and leaks take, in m³/s:
    /// what a bypass regulator sends back, or what the pumps' curves hold where nothing returns. Null where there is no pump,
    /// nothing says which pressure must hold, or some pumps are in series and others in parallel: a finding says so then.
    /// </summary>
    public VolumeFlow? PumpReserve => report.Parts.Reserve is { } reserve ? SiUnits.VolumeFlow(reserve) : null;

    /// <summary>The mixture of every cylinder or rotor.</summary>
    public ImmutableArray<PredictedMixture.ChamberMixture> Chambers => report.Parts.Chambers;

    /// <summary>What the sensor of each bank sees; one where one sensor stands behind all chambers, none without air.</summary>
    public ImmutableArray<BankResult> Banks => report.Parts.Banks;

    /// <summary>
    /// Total air over total fuel relative to stoichiometric, as one sensor behind all chambers would see it; null when
    /// there is no fuel or no air.
    /// </summary>
    public Lambda? Lambda => report.Parts.Lambda;

    /// <summary>
    /// The same if none of a premix's oil burns, the lean bound: the truth lies between the two. The same as
    /// <see cref="Lambda"/> without oil.
    /// </summary>
    public Lambda? LambdaIfOilUnburned => report.Parts.LambdaIfOilUnburned;

    /// <summary>The lambda that was asked for; null when the command asks for none.</summary>
    public Lambda? TargetLambda => solve.Point.Command.Lambda;

    /// <summary>
    /// Voltage between the terminals of the source that the operating point names, which the controller is taken to measure
    /// and voltage drops are counted from: what the point states, less what a battery of a mesh loses inside or an alternator
    /// at its limit lacks.
    /// </summary>
    public ElectricPotential SourceVoltage => SiUnits.ElectricPotential(report.Parts.SourceVolts);

    /// <summary>Voltages and currents in the mesh that feeds pumps and injectors; null where two circuits do.</summary>
    public WiringMesh.State? Wiring => report.Parts.Wiring;

    /// <summary>How well the equations are satisfied, and which values are estimates.</summary>
    public SolutionEvidence Evidence => report.Evidence;

    /// <summary>What to act on, the gravest first.</summary>
    public ImmutableArray<Finding> Findings => report.Findings;

    /// <summary>What the findings come to.</summary>
    public Verdict Verdict => report.Verdict;

    /// <summary>The same state with more to be said of it.</summary>
    internal SystemState With(IEnumerable<string> remarks)
    {
        var state = (SystemState)MemberwiseClone();
        state.Remarks = Remarks.AddRange(remarks);
        return state;
    }

    /// <summary>The pressure at a node.</summary>
    /// <param name="node">A node of the network.</param>
    /// <returns>Its gauge pressure.</returns>
    /// <exception cref="ArgumentException">There is no such node.</exception>
    /// <exception cref="InvalidOperationException">Every way to the node is shut, so that its pressure is not determined.</exception>
    public GaugePressure PressureAt(string node)
    {
        int at = Names.PlaceOf(node);
        double pressure = solve.PressureAt(at);
        return double.IsNaN(pressure) ? throw NetworkState.CutOff(node) : new GaugePressure(pressure);
    }

    /// <summary>
    /// How the pressure at a node follows from that of a tank, line by line at the flows of this state: each part's law with
    /// its numbers, and the weight of the fuel.
    /// </summary>
    /// <param name="node">A node of the network.</param>
    /// <returns>
    /// The working, which ends in the gauge pressure. A regulator and a part whose law has no steps stand in it with what they
    /// take.
    /// </returns>
    /// <exception cref="ArgumentException">There is no such node.</exception>
    /// <exception cref="InvalidOperationException">No open way leads from a tank to the node.</exception>
    public Working PressureWorkingAt(string node) => Steps.PressureAt(Names.PlaceOf(node)).ToWorking();

    /// <summary>The same working, which goes on to the residual: by how much the steps miss the pressure of this state.</summary>
    /// <param name="node">A node of the network.</param>
    /// <returns>The working, which ends in the residual, in Pa.</returns>
    /// <exception cref="ArgumentException">There is no such node.</exception>
    /// <exception cref="InvalidOperationException">No open way leads from a tank to the node.</exception>
    public Working ResidualWorkingAt(string node) => Steps.ResidualAt(Names.PlaceOf(node)).ToWorking();

    /// <summary>From a tank to the tip: the pressure across an injector, its static flow, and what a pulse of it delivers.</summary>
    /// <param name="injector">Which of <see cref="Injectors"/>, from 0.</param>
    /// <returns>
    /// The working, which ends in the mass of a pulse, in kg. Dead time and short-pulse correction are read from their tables.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such injector.</exception>
    /// <exception cref="InvalidOperationException">No open way leads from a tank to it, or no fuel can pass it.</exception>
    public Working DeliveryWorkingOf(int injector)
    {
        InjectorResult result = Injectors[Guard.InRange(injector, 0, Injectors.Length - 1)];
        PathWorking steps = Steps;
        int node = Names.PlaceOf(result.Seat.Node);
        return result.DeliveryWorking(steps.PressureAt(node), steps.Density, solve.PressureAt(node));
    }

    /// <summary>
    /// Where a pump meets the system: what its curve gives at its flow and voltage, less what the system asks of it there. The
    /// two cross where nothing is left.
    /// </summary>
    /// <param name="pump">Which of <see cref="Pumps"/>, from 0.</param>
    /// <returns>The working, which ends in the residual, in Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such pump.</exception>
    /// <exception cref="InvalidOperationException">It is stalled, so that it meets nothing, or an end is cut off.</exception>
    public Working PumpWorkingOf(int pump)
    {
        PumpResult match = Pumps[Guard.InRange(pump, 0, Pumps.Length - 1)];
        int line = Names.LineOf(match.Line);
        return match.IsStalled
            ? throw new RefusedOperationException(
                RefusalCode.PumpStalled,
                $"Pump '{match.Line:part}' is stalled: it delivers nothing, and meets nothing."
            )
            : Steps.MissOf(line).ToWorking();
    }

    private Network Names => solve.System.Network;

    private PathWorking Steps
    {
        get
        {
            using ReportedSolve reported = solve.ForReport();
            return new(Names, new StateInputs(reported.State), reported.NodePressures, reported.LineFlows);
        }
    }

    /// <summary>The flow through a line, positive from its first node to its second.</summary>
    /// <param name="line">A line of the network.</param>
    /// <returns>Its volume flow, in m³/s.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    public VolumeFlow FlowThrough(string line) => SiUnits.VolumeFlow(solve.FlowIn(Names.LineOf(line)));

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Point}: {Verdict}");
}

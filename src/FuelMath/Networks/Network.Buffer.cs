using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

public sealed partial class Network
{
    /// <summary>
    /// A reusable buffer for one state of a network, filled by <see cref="Network.Solve(Buffer)"/>, with the
    /// settings of the solve.
    /// </summary>
    /// <remarks>
    /// <para>
    /// For loops without allocation: a solve writes into the buffer by a warm start from its last state. Settings are
    /// kept
    /// until set again or <see cref="Reset"/>. Only a new pump, a refusal and <see cref="ToState"/> allocate.
    /// </para>
    /// <para>Mutable: one thread at a time.</para>
    /// </remarks>
    public sealed class Buffer
    {
        private readonly NetworkWork<Real> work;
        private bool hasState;

        /// <summary>Creates a buffer without a state.</summary>
        /// <param name="network">The network that it belongs to.</param>
        /// <exception cref="ArgumentException">The network may have several states.</exception>
        /// <exception cref="InvalidOperationException">The network has no conditions: see
        /// <see cref="Network.At"/>.</exception>
        public Buffer(Network network)
        {
            NetworkChecks.OneState(network);
            Network = network;
            work = network.Plan.Rent<Real>();
        }

        /// <summary>The network.</summary>
        public Network Network { get; }

        /// <summary>Whether it holds a state: it was solved, and nothing was set since.</summary>
        public bool HasState { get; private set; }

        /// <summary>Iterations of the solver.</summary>
        /// <exception cref="InvalidOperationException">There is no state.</exception>
        public int Iterations => Filled.Notes.Evidence.Iterations;

        /// <summary>The greatest flow that appears or vanishes at a junction, in m³/s.</summary>
        /// <exception cref="InvalidOperationException">There is no state.</exception>
        public VolumeFlow WorstMassImbalance => SiUnits.VolumeFlow(Filled.Notes.Evidence.Imbalance);

        /// <summary>The largest pressure residual of a link, in Pa.</summary>
        /// <exception cref="InvalidOperationException">There is no state.</exception>
        public Pressure WorstPressureResidual => SiUnits.Pressure(Filled.Notes.Evidence.Error);

        private NetworkPlan Plan => Network.Plan;

        private NetworkWork<Real> Filled =>
            HasState
                ? work
                : throw new RefusedOperationException(
                    RefusalCode.NotSolved,
                    "The buffer holds no state: solve the network into it."
                );

        private NetworkWork<Real> Settings
        {
            get
            {
                HasState = false;
                return work;
            }
        }

        /// <summary>The pressure of a node.</summary>
        /// <param name="node">Its name.</param>
        /// <returns>The pressure, as <see cref="NetworkState.PressureAt(string)"/> gives it.</returns>
        /// <exception cref="ArgumentException">There is no node of that name.</exception>
        /// <exception cref="InvalidOperationException">There is no state, or the node is cut off in it.</exception>
        public GaugePressure PressureAt(string node) => PressureOf(Plan.Node(node));

        /// <summary>The pressure of a node.</summary>
        /// <param name="node">Its handle.</param>
        /// <returns>The pressure, as <see cref="NetworkState.PressureAt(string)"/> gives it.</returns>
        /// <exception cref="ArgumentException">The handle is of another network.</exception>
        /// <exception cref="InvalidOperationException">There is no state.</exception>
        public GaugePressure PressureAt(NodeHandle node) => PressureOf(Plan.Names.Node(node));

        /// <summary>The pressure of a node, where it is determined.</summary>
        /// <param name="node">Its name.</param>
        /// <param name="pressure">The pressure; without meaning where there is none.</param>
        /// <returns>Whether there is one: false where the node is cut off.</returns>
        /// <exception cref="ArgumentException">There is no node of that name.</exception>
        /// <exception cref="InvalidOperationException">There is no state.</exception>
        public bool TryPressureAt(string node, out GaugePressure pressure) =>
            TryPressureOf(Plan.Node(node), out pressure);

        /// <summary>The pressure of a node, where it is determined.</summary>
        /// <param name="node">Its handle.</param>
        /// <param name="pressure">The pressure; without meaning where there is none.</param>
        /// <returns>Whether there is one: false where the node is cut off.</returns>
        /// <exception cref="ArgumentException">The handle is of another network.</exception>
        /// <exception cref="InvalidOperationException">There is no state.</exception>
        public bool TryPressureAt(NodeHandle node, out GaugePressure pressure) =>
            TryPressureOf(Plan.Names.Node(node), out pressure);

        /// <summary>The volume flow in a line, positive in its direction.</summary>
        /// <param name="line">Its name.</param>
        /// <returns>The flow, in m³/s.</returns>
        /// <exception cref="ArgumentException">There is no line of that name.</exception>
        /// <exception cref="InvalidOperationException">There is no state.</exception>
        public VolumeFlow FlowIn(string line) => FlowOf(Plan.Link(line));

        /// <summary>The volume flow in a line, positive in its direction.</summary>
        /// <param name="line">Its handle.</param>
        /// <returns>The flow, in m³/s.</returns>
        /// <exception cref="ArgumentException">The handle is of another network.</exception>
        /// <exception cref="InvalidOperationException">There is no state.</exception>
        public VolumeFlow FlowIn(LineHandle line) => FlowOf(Plan.Names.Line(line));

        /// <summary>The condition of a link.</summary>
        /// <param name="line">Its name.</param>
        /// <returns>Its condition.</returns>
        /// <exception cref="ArgumentException">There is no line of that name.</exception>
        /// <exception cref="InvalidOperationException">There is no state.</exception>
        public LineCondition ConditionOf(string line) => Filled.Notes.Conditions[Plan.Link(line)];

        /// <summary>The condition of a link.</summary>
        /// <param name="line">Its handle.</param>
        /// <returns>Its condition.</returns>
        /// <exception cref="ArgumentException">The handle is of another network.</exception>
        /// <exception cref="InvalidOperationException">There is no state.</exception>
        public LineCondition ConditionOf(LineHandle line) => Filled.Notes.Conditions[Plan.Names.Line(line)];

        /// <summary>Copies the state.</summary>
        /// <returns>The state, which later solves do not change.</returns>
        /// <exception cref="InvalidOperationException">There is no state.</exception>
        public NetworkState ToState() => new(Filled);

        /// <summary>Sets the fluid.</summary>
        /// <param name="density">Greater than zero.</param>
        /// <param name="viscosity">Greater than zero.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        public void SetFluid(Density density, DynamicViscosity viscosity) =>
            Settings.SetFluid(
                new Real(Guard.Positive(density, density.InSi())),
                new Real(Guard.Positive(viscosity, viscosity.InSi()))
            );

        /// <summary>Sets the pressure of a node of fixed pressure.</summary>
        /// <param name="node">Its name.</param>
        /// <param name="pressure">The pressure; not below vacuum.</param>
        /// <exception cref="ArgumentException">There is no such node.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The pressure is below vacuum.</exception>
        public void SetPressure(string node, GaugePressure pressure) => SetPressureOf(Plan.Node(node), pressure);

        /// <summary>Sets the pressure of a node of fixed pressure.</summary>
        /// <param name="node">Its handle.</param>
        /// <param name="pressure">The pressure; not below vacuum.</param>
        /// <exception cref="ArgumentException">The handle is of another network, or of a junction.</exception>
        public void SetPressure(NodeHandle node, GaugePressure pressure) =>
            SetPressureOf(Plan.Names.Node(node), pressure);

        /// <summary>Sets what is drawn at a junction.</summary>
        /// <param name="node">Its name.</param>
        /// <param name="draw">The volume flow; negative feeds the network.</param>
        /// <exception cref="ArgumentException">There is no such node, or the draw is not finite.</exception>
        public void SetDraw(string node, VolumeFlow draw) => SetDrawOf(Plan.Node(node), draw);

        /// <summary>Sets what is drawn at a junction.</summary>
        /// <param name="node">Its handle.</param>
        /// <param name="draw">The volume flow; negative feeds the network.</param>
        /// <exception cref="ArgumentException">The handle is of another network, or of a node of fixed
        /// pressure.</exception>
        public void SetDraw(NodeHandle node, VolumeFlow draw) => SetDrawOf(Plan.Names.Node(node), draw);

        /// <summary>Sets the command of a link of injectors.</summary>
        /// <param name="line">Its name.</param>
        /// <param name="commanded">The commanded mean flow; zero closes them.</param>
        /// <exception cref="ArgumentException">There is no such link, or the flow is negative or not
        /// finite.</exception>
        public void SetCommandedFlow(string line, VolumeFlow commanded) => SetCommandOf(Plan.Link(line), commanded);

        /// <summary>Sets the command of a link of injectors.</summary>
        /// <param name="line">Its handle.</param>
        /// <param name="commanded">The commanded mean flow; zero shuts them.</param>
        /// <exception cref="ArgumentException">The handle is of another network or part, or the flow is outside what is
        /// allowed.</exception>
        public void SetCommandedFlow(LineHandle line, VolumeFlow commanded) =>
            SetCommandOf(Plan.Names.Line(line), commanded);

        /// <summary>Sets the reference pressure of a regulator.</summary>
        /// <param name="line">Its name.</param>
        /// <param name="reference">The pressure on its spring side; not below vacuum.</param>
        /// <exception cref="ArgumentException">There is no such link.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The pressure is below vacuum.</exception>
        public void SetReference(string line, GaugePressure reference) => SetReferenceOf(Plan.Link(line), reference);

        /// <summary>Sets the reference pressure of a regulator.</summary>
        /// <param name="line">Its handle.</param>
        /// <param name="reference">The pressure on its spring side; not below vacuum.</param>
        /// <exception cref="ArgumentException">The handle is of another network or part.</exception>
        public void SetReference(LineHandle line, GaugePressure reference) =>
            SetReferenceOf(Plan.Names.Line(line), reference);

        /// <summary>Replaces a pump. Allocates.</summary>
        /// <param name="line">The name of the link.</param>
        /// <param name="pump">At another speed, or with a curve of the same kind and no more points.</param>
        /// <exception cref="ArgumentException">There is no such link, or the pump does not fit.</exception>
        public void SetPump(string line, PlainPump pump) => SetPumpOf(Plan.Link(line), pump);

        /// <summary>Replaces a pump. Allocates.</summary>
        /// <param name="line">Its handle.</param>
        /// <param name="pump">At another speed, or with a curve of the same kind and no more points.</param>
        /// <exception cref="ArgumentException">The handle is of another network or part, or the pump does not
        /// fit.</exception>
        public void SetPump(LineHandle line, PlainPump pump) => SetPumpOf(Plan.Names.Line(line), pump);

        /// <summary>
        /// Resets all settings and the state, so that the next solve is a cold start of the description.
        /// </summary>
        public void Reset()
        {
            hasState = false;
            Settings.Reset();
        }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{(HasState ? "filled" : "empty")}");

        /// <summary>Solves by a warm start from its state, or else by a cold start.</summary>
        internal void Solve()
        {
            bool warm = hasState;
            (hasState, HasState) = (false, false);
            if (warm)
            {
                NetworkVerdict.SolveWarm(work);
            }
            else
            {
                NetworkVerdict.Judge(work, Real.All(work.Solve(warm: false)));
            }

            (hasState, HasState) = (true, true);
        }

        private GaugePressure PressureOf(int node) =>
            TryPressureOf(node, out GaugePressure found) ? found : throw NetworkState.CutOff(Plan.Nodes[node].Name);

        private bool TryPressureOf(int node, out GaugePressure found)
        {
            bool known = Filled.Notes.Known[node];
            found = known ? new GaugePressure(work.PressureAt(node).Value) : default;
            return known;
        }

        private VolumeFlow FlowOf(int link)
        {
            Real condition = new((int)Filled.Notes.Conditions[link]);
            return SiUnits.VolumeFlow(LinkConditions.Shown(condition, work.Flow[link]).Value);
        }

        private void SetPressureOf(int node, GaugePressure pressure)
        {
            double si = NetworkChecks.NotBelowVacuum(pressure);
            Settings.SetPressure(NetworkSettings.FixedNode(Plan, node), new Real(si));
        }

        private void SetDrawOf(int node, VolumeFlow draw) =>
            Settings.SetDraw(NetworkSettings.Junction(Plan, node), new Real(Guard.Finite(draw, draw.InSi())));

        private void SetCommandOf(int line, VolumeFlow commanded)
        {
            _ = NetworkSettings.Line(Plan, line, SettingKind.Command);
            double asked = Guard.NotNegative(commanded, commanded.InSi());
            Span<double> settings = stackalloc double[2];
            Plan.Links[line].Law.Write(settings);
            settings[1] = asked;
            Settings.SetLane(line, settings);
        }

        private void SetReferenceOf(int line, GaugePressure reference)
        {
            double si = NetworkChecks.NotBelowVacuum(reference);
            Settings.SetLane(NetworkSettings.Line(Plan, line, SettingKind.Reference), [si]);
        }

        private void SetPumpOf(int line, PlainPump pump)
        {
            _ = NetworkSettings.Line(Plan, line, SettingKind.Curve);
            Settings.SetLane(line, NetworkSettings.Replacement(Plan, line, pump));
        }
    }
}

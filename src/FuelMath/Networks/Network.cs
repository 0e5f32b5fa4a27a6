using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A network of nodes and of lines with parts in them, ready to be solved at conditions.</summary>
/// <remarks>Checked and prepared once, so that solving it again costs little.</remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed partial class Network
{
    private readonly NetworkPlan plan;
    private readonly SwitchedNetwork? switched;
    private readonly LinesAtPoint parts;

    /// <summary>Checks and prepares a network of parts; what flows in it, and what they need, is said when it is solved.</summary>
    /// <param name="nodes">Its nodes, at least one of fixed pressure; each name once.</param>
    /// <param name="lines">The lines between them, at least one; each name once.</param>
    /// <exception cref="ArgumentException">The network can't be: the message names the node or line.</exception>
    public Network(IEnumerable<Node> nodes, IEnumerable<Line> lines)
        : this(nodes, lines, default, null) { }

    private Network(
        IEnumerable<Node> nodes,
        IEnumerable<Line> lines,
        VehicleAcceleration acceleration,
        NetworkPlan? like
    )
    {
        ArgumentNullException.ThrowIfNull(nodes);
        ArgumentNullException.ThrowIfNull(lines);
        Node[] allNodes = Lists.NoNulls(nodes);
        Line[] allLines = Lists.NoNulls(lines);
        NetworkChecks.All(allNodes, allLines);
        (Nodes, Lines, Acceleration) = ([.. allNodes], [.. allLines], acceleration);
        Node[] placed = acceleration.IsRest ? allNodes : Array.ConvertAll(allNodes, n => n.Under(acceleration));
        plan = new NetworkPlan(placed, allLines, like);
        switched = SwitchedNetwork.Of(allLines, some => new NetworkPlan(placed, some, plan));
        parts = new LinesAtPoint(Lines, Nodes);
    }

    private Network(Network other, NetworkConditions at)
    {
        (Nodes, Lines, Acceleration) = (other.Nodes, other.Lines, other.Acceleration);
        (parts, Conditions) = (other.parts, at);
        (int, double[])[] settings = parts.SettingsAt(at);
        plan = other.plan.At(at.DensitySi, at.ViscositySi, settings);
        switched = other.switched?.At(at, settings);
    }

    /// <summary>The nodes, in the order given.</summary>
    public ImmutableArray<Node> Nodes { get; }

    /// <summary>The lines, in the order given.</summary>
    public ImmutableArray<Line> Lines { get; }

    /// <summary>The conditions that it is solved at; null where they are said with each solve.</summary>
    public NetworkConditions? Conditions { get; }

    /// <summary>How the vehicle that carries it speeds up; rest unless it was set.</summary>
    public VehicleAcceleration Acceleration { get; }

    /// <summary>The same network in a vehicle that speeds up steadily.</summary>
    /// <param name="acceleration">How it speeds up.</param>
    /// <returns>The network; each node counts with its place: see <see cref="Node.AtPlace"/>.</returns>
    public Network Under(VehicleAcceleration acceleration) =>
        acceleration.IsRest && Acceleration.IsRest ? this : Moved(new Network(Nodes, Lines, acceleration, plan));

    /// <summary>The same network with lines of the same names and ends in the place of its own.</summary>
    internal Network WithLines(IEnumerable<Line> lines) => new(Nodes, lines, Acceleration, plan);

    /// <summary>The same network later: each pump with a switch was running if it ran in a state.</summary>
    /// <param name="last">The state: of this network, or of one with the same names.</param>
    /// <returns>The network; this one if it has no such pumps.</returns>
    /// <exception cref="ArgumentException"><paramref name="last"/> has other nodes or links.</exception>
    public Network After(NetworkState last)
    {
        ArgumentNullException.ThrowIfNull(last);
        _ = plan.Like(last);
        return switched is null
            ? this
            : Moved(new Network(Nodes, Lines.Select(l => SwitchedNetwork.After(l, last)), Acceleration, plan));
    }

    /// <summary>The same network at conditions: all that can be asked of a network can then be asked of it.</summary>
    /// <param name="conditions">What flows in it, and what its parts need.</param>
    /// <returns>The network; preparing it takes far less time than making it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="conditions"/> is null.</exception>
    /// <exception cref="ArgumentException">A part needs what is not given; the message names the line.</exception>
    /// <exception cref="OutsideTableException">A part has no data there.</exception>
    public Network At(NetworkConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        return new(this, conditions);
    }

    /// <summary>The index of a node.</summary>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    internal int PlaceOf(string node) => PlaceOf(Nodes, n => n.Name, node, nameof(node));

    /// <summary>The index of a line.</summary>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    internal int LineOf(string line) => PlaceOf(Lines, l => l.Name, line, nameof(line));

    private static int PlaceOf<TItem>(
        ImmutableArray<TItem> all,
        Func<TItem, string> nameOf,
        string name,
        string paramName
    )
    {
        ArgumentNullException.ThrowIfNull(name, paramName);
        for (int i = 0; i < all.Length; i++)
        {
            if (nameOf(all[i]) == name)
            {
                return i;
            }
        }

        throw new RefusedArgumentException(
            RefusalCode.NotOneOf,
            $"Must be one of: {all.Select(nameOf):allowed}; it was '{name:given}'.",
            paramName
        );
    }

    /// <summary>Finds a node, so that results and settings of it need no search for its name.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>Its handle, for this network at all conditions.</returns>
    /// <exception cref="ArgumentException">There is no node of that name.</exception>
    public NodeHandle FindNode(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return new(plan.Names, plan.Node(name));
    }

    /// <summary>Finds a line, so that results and settings of it need no search for its name.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>Its handle, for this network at all conditions.</returns>
    /// <exception cref="ArgumentException">There is no line of that name.</exception>
    public LineHandle FindLine(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return new(plan.Names, plan.Link(name));
    }

    /// <summary>What can be solved as it is.</summary>
    /// <exception cref="InvalidOperationException">The network was not told its conditions.</exception>
    internal NetworkPlan Plan =>
        Conditions is not null
            ? plan
            : throw new RefusedOperationException(
                RefusalCode.ConditionsNeeded,
                "A network is solved at conditions: give them to Solve, or to At beforehand."
            );

    /// <summary>The names of its nodes and lines, to which its handles belong.</summary>
    internal NetworkNames Names => plan.Names;

    /// <summary>Whether one solve is not enough.</summary>
    private bool HasCases => switched is not null || plan.Humps is not [];

    private NetworkState Chosen(PlainPump.ApproachSide? side) => switched?.One(side) ?? NetworkStates.One(Plan, side);

    private Network Moved(Network other) => Conditions is { } at ? other.At(at) : other;

    /// <summary>Finds the steady state.</summary>
    /// <returns>
    /// The state, which satisfies every equation within what it reports. Where a pump's curve has a hump, the only stable
    /// one; where pumps join and leave, the one that lasts, and of several that of the pumps that were running.
    /// </returns>
    /// <exception cref="NoSolutionException">There is none, or it was not found; the message says which and why.</exception>
    /// <exception cref="OutsideTableException">A pump would run outside its data and was not allowed to.</exception>
    /// <exception cref="InvalidOperationException">The network was not told its conditions.</exception>
    public NetworkState Solve()
    {
        if (HasCases)
        {
            return Chosen(side: null);
        }

        using NetworkWork<Real> work = Plan.Rent<Real>();
        return NetworkVerdict.State(work, Real.All(work.Solve(warm: false)));
    }

    /// <summary>Finds the steady state at conditions.</summary>
    /// <param name="conditions">What flows in it, and what its parts need.</param>
    /// <returns>The state, which satisfies every equation within what it reports.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="conditions"/> is null.</exception>
    /// <exception cref="ArgumentException">A part needs what is not given; the message names the line.</exception>
    /// <exception cref="NoSolutionException">There is none, or it was not found; the message says which and why.</exception>
    /// <exception cref="OutsideTableException">A part has no data there, or a state lies outside them.</exception>
    public NetworkState Solve(NetworkConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        if (HasCases)
        {
            return At(conditions).Solve();
        }

        using NetworkWork<Real> work = plan.Rent<Real>();
        parts.Put(work, conditions);
        return NetworkVerdict.State(work, Real.All(work.Solve(warm: false)));
    }

    /// <summary>Finds the steady state that pumps whose curves have humps come to from a side, all from the same.</summary>
    /// <param name="side">From where its flow changes, slowly.</param>
    /// <returns>The state; without a hump there is no choice. A side leads to a stable one.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="side"/> is none of the choices.</exception>
    /// <exception cref="NoSolutionException">There is none, or it was not found; the message says which and why.</exception>
    /// <exception cref="OutsideTableException">A pump would run outside its data and was not allowed to.</exception>
    /// <exception cref="InvalidOperationException">The network was not told its conditions.</exception>
    public NetworkState Solve(PlainPump.ApproachSide side) =>
        !Enum.IsDefined(side) ? throw Guard.NoChoice(side)
        : HasCases ? Chosen(side)
        : Solve();

    /// <summary>
    /// Finds all steady states, stable or not: more than one only where a pump's curve has a hump or where pumps join and leave.
    /// </summary>
    /// <returns>
    /// The states for each set of running pumps that their switches leave alone. For each set the flow of the pump with the
    /// hump rises; every other one is stable, the first and the last among them. Where nodes of fixed pressure part several
    /// such pumps, each meeting point of one comes with each of the others: the flow of the last one rises first.
    /// </returns>
    /// <remarks>
    /// Two states are told apart where the pump's flows or pressures differ by more than a millionth of the range of its curve.
    /// Where a curve touches without clearly crossing, it is refused with numbers.
    /// </remarks>
    /// <exception cref="NoSolutionException">
    /// There is none, or one is not a state that can be, or they can't be told apart; the message says which and why.
    /// </exception>
    /// <exception cref="OutsideTableException">A pump would run outside its data in one and was not allowed to.</exception>
    /// <exception cref="InvalidOperationException">The network was not told its conditions.</exception>
    public ImmutableArray<Solution> SolveAll() => switched?.All() ?? NetworkStates.All(Plan);

    /// <summary>Finds the steady state from one that is near it: of this network, or of one with the same names.</summary>
    /// <param name="start">Where to start.</param>
    /// <returns>
    /// The state: the same as without a start, sooner. Both keep every law within what <see cref="NetworkState"/> accepts, so
    /// pressures agree to about a hundred-millionth of the greatest, and a flow by what a millipascal drives through its part.
    /// Flows that the laws do not determine may differ: the state's remarks name their parts.
    /// </returns>
    /// <exception cref="ArgumentException"><paramref name="start"/> has other nodes or links.</exception>
    /// <exception cref="NoSolutionException">There is none, or it was not found; the message says which and why.</exception>
    /// <exception cref="OutsideTableException">A pump would run outside its data and was not allowed to.</exception>
    /// <exception cref="InvalidOperationException">The network was not told its conditions.</exception>
    public NetworkState Solve(NetworkState start)
    {
        _ = plan.Like(start);
        if (HasCases)
        {
            return Chosen(side: null);
        }

        using NetworkWork<Real> work = Plan.Rent<Real>();
        start.CopyTo(work);
        NetworkVerdict.SolveWarm(work);
        return new NetworkState(work);
    }

    /// <summary>Finds the steady state at a buffer's settings, from the state that it held last, and fills it.</summary>
    /// <param name="buffer">A buffer of this network.</param>
    /// <remarks>Allocates nothing unless it refuses; then the buffer holds no state.</remarks>
    /// <exception cref="ArgumentException">The buffer belongs to another network.</exception>
    /// <exception cref="NoSolutionException">There is none, or it was not found; the message says which and why.</exception>
    /// <exception cref="OutsideTableException">A pump would run outside its data and was not allowed to.</exception>
    public void Solve(Buffer buffer)
    {
        ArgumentNullException.ThrowIfNull(buffer);
        if (!ReferenceEquals(buffer.Network, this))
        {
            throw new RefusedArgumentException(
                RefusalCode.OfAnother,
                "Must be a buffer of this network; it belongs to another.",
                nameof(buffer)
            );
        }

        buffer.Solve();
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Nodes.Length} nodes, {Lines.Length} lines");
}

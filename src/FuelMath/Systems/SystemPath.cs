using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A system prepared for solving: its fuel path and its injectors as one network, and where everything sits in it. What
/// changes from round to round is set in a workspace of the network.
/// </summary>
internal sealed class SystemPath
{
    private readonly Network.Node[] places;
    private readonly int[] nodes;
    private readonly int[] seatNodes;
    private readonly int manifold;
    private readonly int ambient;
    private readonly int[] steady;
    private readonly int[] moving;
    private readonly Spares<SolverState> states = new();

    /// <summary>Prepares a system.</summary>
    /// <param name="system">The system.</param>
    /// <param name="like">A system that differs in which pumps run; null where there is none.</param>
    internal SystemPath(FuelSystem system, SystemPath? like = null)
    {
        System = system;
        ImmutableArray<Line> lines = system.Network.Lines;
        Lines = lines.Length;
        Seats = [.. system.Stages.SelectMany(s => s.Seats)];
        Stages = [.. system.Stages.SelectMany((stage, s) => Enumerable.Repeat(s, stage.Seats.Length))];
        First = [.. system.Stages.Select((_, s) => Array.IndexOf(Stages, s))];
        Injectors = [.. system.Stages.Select(stage => stage.Seats.Select(seat => seat.Injector).ToArray())];
        PulsesPerChamber =
        [
            .. system.Stages.Select(s => s.PulsesPerCycle * (s.Seats.Length / (double)system.Engine.Chambers)),
        ];
        BankCount = system.Banks.Max();
        BankOf = [.. Seats.Select(s => system.Banks[s.Chamber - 1] - 1)];
        CoilConductances = [.. system.Stages.Select(stage => stage.Seats.Sum(s => 1 / s.Injector.Coil.InSi()))];
        Transitions = system.Staging is { } staging ? [staging.TransitionDutyCycle.InSi()] : [];
        ReserveNeedsCurves = PumpReserve.NeedsCurves(system);
        Outlets = PumpOutlets.Of(system);
        MeasuresRail = system.Stages.Any(s => s.Belief?.RailReference == RailPressure.Reference.Measured);
        Parts = [.. lines.Select(l => l.Part), .. Seats.Select(s => new SeatDraw(s))];
        Tanks =
        [
            .. lines.Select(l =>
                l.Part is IRegulator { Reference: RegulatorReference.Tank } ? system.Layout.TankOf(l).PressureSi : 0
            ),
        ];
        Feeds = [.. lines.Select(l => system.Power.FeedOf(l.Name))];
        PumpLines = [.. Enumerable.Range(0, Lines).Where(i => Parts[i] is Pump)];
        Pumps = [.. Parts.OfType<Pump>()];
        PartReading?[] readings = Array.ConvertAll(Parts, p => p.Reading());
        steady = [.. Enumerable.Range(0, Parts.Length).Where(i => readings[i] is { IsSteady: true })];
        moving = [.. Enumerable.Range(0, Parts.Length).Where(i => readings[i] is { IsSteady: false })];

        string manifoldName = Free(system, "the manifold");
        string ambientName = Free(system, "ambient air");
        places = [.. system.Network.Nodes];
        Network = new NetworkPlan(
            [
                .. places,
                FuelMath.Network.Node.FixedPressure(manifoldName, default, default),
                FuelMath.Network.Node.FixedPressure(ambientName, default, default),
            ],
            [
                .. lines.Select((l, i) => new Line(l.Name, l.From, l.To, Parts[i])),
                .. system
                    .Stages.SelectMany(stage =>
                        stage.Seats.Select(
                            (seat, i) =>
                                (
                                    Name: $"{stage.Name} injector {i + 1} of chamber {seat.Chamber}",
                                    seat.Node,
                                    Space: stage.Discharge == InjectorStage.DischargePlace.Manifold
                                        ? manifoldName
                                        : ambientName
                                )
                        )
                    )
                    .Select((s, seat) => new Line(s.Name, s.Node, s.Space, Parts[Lines + seat])),
            ],
            like?.Network,
            system.Network.Names
        );
        nodes = [.. places.Select(n => Network.Node(n.Name, "places"))];
        seatNodes = [.. Seats.Select(s => Network.Node(s.Node, "stages"))];
        (manifold, ambient) = (Network.Node(manifoldName, "network"), Network.Node(ambientName, "network"));
        Estimates =
        [
            "Injectors draw their time-mean flow. Pulsing raises losses by the factors given for each stage in a line that carries that stage alone and neither damps nor resonates.",
            "Dead times belong to the mean voltage while an injector opens: its own coil's full current, and those of others whose pulses overlap, by the firing groups of a stage, evenly staggered where those are not known, and two stages at once. A coil's current needs time to rise, so that the real voltage lies above.",
            $"Limits of the findings: {system.Limits.Source}.",
            .. system.Limits.Own.Select(o =>
                $"Limit {o.Kind} of the owner's, {Guard.Show(o.Value, o.Value.Unit)} in place of {Guard.Show(system.Limits.Standing!.ValueOf(o.Kind), o.Value.Unit)}: {o.Reason}."
            ),
            .. system
                .Network.Lines.Select(l => l.Part)
                .OfType<IRegulator>()
                .Where(r => r.EstimateBasis is not null)
                .Select(r => $"A regulator is an estimate: {r.EstimateBasis}."),
        ];
    }

    internal FuelSystem System { get; }

    /// <summary>The lines of the system, then a line for each injector.</summary>
    internal NetworkPlan Network { get; }

    /// <summary>How many lines the system has.</summary>
    internal int Lines { get; }

    /// <summary>The parts of the lines, then a draw for each seat.</summary>
    internal FlowPart[] Parts { get; }

    /// <summary>The lines that the pumps are in.</summary>
    internal int[] PumpLines { get; }

    /// <summary>The pumps, in the order of the lines.</summary>
    internal Pump[] Pumps { get; }

    /// <summary>What feeds the pump of each line: 0 for what all share.</summary>
    internal int[] Feeds { get; }

    /// <summary>The pressure in the tank that a line's regulator sits in, Pa gauge.</summary>
    internal double[] Tanks { get; }

    /// <summary>All seats, stage by stage.</summary>
    internal InjectorStage.Seat[] Seats { get; }

    /// <summary>The stage of each seat.</summary>
    internal int[] Stages { get; }

    /// <summary>The first seat of each stage.</summary>
    internal int[] First { get; }

    /// <summary>The injectors of each stage.</summary>
    internal Injector[][] Injectors { get; }

    /// <summary>Pulses that a chamber gets from each stage in one cycle.</summary>
    internal double[] PulsesPerChamber { get; }

    /// <summary>How many banks have a sensor of their own.</summary>
    internal int BankCount { get; }

    /// <summary>The bank of each seat, counted from 0.</summary>
    internal int[] BankOf { get; }

    /// <summary>Conductance of all coils of each stage, S.</summary>
    internal double[] CoilConductances { get; }

    /// <summary>The duty cycle at which each stage after the first joins.</summary>
    internal double[] Transitions { get; }

    /// <summary>Whether a controller measures its rail.</summary>
    internal bool MeasuresRail { get; }

    /// <summary>See <see cref="PumpReserve.NeedsCurves"/>.</summary>
    internal bool ReserveNeedsCurves { get; }

    /// <summary>See <see cref="PumpOutlets.Of"/>.</summary>
    internal (int Line, int Sign)[] Outlets { get; }

    /// <summary>What every state rests on as an estimate or a rule of thumb, one sentence each.</summary>
    internal ImmutableArray<string> Estimates { get; }

    /// <summary>Sets what stays the same in all rounds of some points, one for each number of the scalar.</summary>
    internal void SetPoints<T>(NetworkWork<T> work, ReadOnlySpan<SolverState> points)
        where T : struct, ILane<T>
    {
        for (int i = 0; i < nodes.Length; i++)
        {
            work.SetHeight(nodes[i], Pack<T>(points, static (s, i) => s.Path.HeightOf(i, s.Point), i));
        }

        work.SetFluid(Pack<T>(points, static (s, _) => s.Density, 0), Pack<T>(points, static (s, _) => s.Viscosity, 0));
        work.SetPressure(manifold, Pack<T>(points, static (s, _) => s.ManifoldGauge, 0));
        work.SetPressure(ambient, T.Of(0));
        work.SetAmbient(Pack<T>(points, static (s, _) => s.Point.Air.Ambient.Si, 0));
        Write(work, points, steady);
    }

    /// <summary>Sets what the parts do in a round.</summary>
    internal void SetRound<T>(NetworkWork<T> work, ReadOnlySpan<SolverState> points)
        where T : struct, ILane<T> => Write(work, points, moving);

    /// <summary>Hands the pressures that were found to the points.</summary>
    /// <param name="work">The workspace.</param>
    /// <param name="points">The points.</param>
    /// <param name="live">Which of them are still sought.</param>
    internal void Read<T>(NetworkWork<T> work, ReadOnlySpan<SolverState> points, ReadOnlySpan<bool> live)
        where T : struct, ILane<T>
    {
        Span<double> numbers = stackalloc double[T.Count];
        for (int i = 0; i < seatNodes.Length; i++)
        {
            T.Store(work.PressureAt(seatNodes[i]), numbers);
            for (int n = 0; n < T.Count; n++)
            {
                if (live[n])
                {
                    points[n].SeatPressures[i] = numbers[n];
                }
            }
        }

        for (int p = 0; p < PumpLines.Length; p++)
        {
            // Outlet less inlet, both at the pump's own height.
            T.Store(work.Pressure[Network.To[PumpLines[p]]] - work.Pressure[Network.From[PumpLines[p]]], numbers);
            for (int n = 0; n < T.Count; n++)
            {
                if (live[n])
                {
                    points[n].PumpRises[p] = numbers[n];
                }
            }
        }
    }

    /// <summary>The height that a node of the system counts with, m.</summary>
    internal double HeightOf(int node, OperatingPoint point) => point.Acceleration.HeightOf(places[node]);

    /// <summary>The gauge pressure of a node of the system, Pa; not a number where every way to it is shut.</summary>
    internal double PressureIn(NetworkState state, int node) =>
        state.IsCutOff(nodes[node]) ? double.NaN : state.PressureSi(nodes[node]);

    /// <summary>The same in a workspace that was judged.</summary>
    internal double PressureIn(NetworkWork<Real> judged, int node) =>
        judged.Notes.Known[nodes[node]] ? judged.PressureAt(nodes[node]).Value : double.NaN;

    /// <summary>Room for a solve, as the last one left it; give it back.</summary>
    internal SolverState RentState() => states.Take() ?? new SolverState(this);

    /// <summary>Takes room back.</summary>
    internal void Return(SolverState state) => states.Give(state);

    private void Write<T>(NetworkWork<T> work, ReadOnlySpan<SolverState> points, int[] links)
        where T : struct, ILane<T>
    {
        Span<double> one = stackalloc double[Network.MostSettings];
        Span<double> all = stackalloc double[Network.MostSettings * T.Count];
        foreach (int link in links)
        {
            Span<double> here = one[..Network.Links[link].Law.SettingCount];
            for (int n = 0; n < T.Count; n++)
            {
                points[n].Readings[link]!.Write(points[n].InputsOf(link), here);
                for (int k = 0; k < here.Length; k++)
                {
                    all[(k * T.Count) + n] = here[k];
                }
            }

            work.SetLane(link, all[..(here.Length * T.Count)]);
        }
    }

    private static T Pack<T>(ReadOnlySpan<SolverState> points, Func<SolverState, int, double> number, int index)
        where T : struct, ILane<T>
    {
        Span<double> numbers = stackalloc double[T.Count];
        for (int n = 0; n < T.Count; n++)
        {
            numbers[n] = number(points[n], index);
        }

        return T.Load(numbers);
    }

    private static string Free(FuelSystem system, string name)
    {
        while (system.Network.Nodes.Any(n => n.Name == name))
        {
            name += "'";
        }

        return name;
    }
}

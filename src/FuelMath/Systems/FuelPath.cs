using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A plan and its injectors as a network: prepared once, solved for the draws, voltages and pressures of each round.
/// </summary>
internal sealed class FuelPath
{
    private readonly FuelSystem system;
    private readonly NetworkPlan network;
    private readonly int[] nodes;
    private readonly int[] lines;
    private readonly int[] seats;
    private readonly int manifold;
    private readonly int ambient;
    private readonly int[] steady;
    private readonly int[] moving;

    internal FuelPath(FuelSystem system, SeatMap map)
    {
        this.system = system;
        string manifoldName = Free("the manifold");
        string ambientName = Free("ambient air");
        NetworkNode[] allNodes =
        [
            .. system.Plan.Nodes.Select(n =>
                n.IsTank
                    ? NetworkNode.FixedPressure(n.Name, n.TankPressure, n.Elevation)
                    : NetworkNode.Junction(n.Name, n.Elevation)
            ),
            NetworkNode.FixedPressure(manifoldName, default, default),
            NetworkNode.FixedPressure(ambientName, default, default),
        ];
        var allLinks = system.Plan.Lines.Select((l, i) => new Line(l.Name, l.From, l.To, map.Parts[i])).ToList();
        foreach (InjectorStage stage in system.Stages)
        {
            string space = stage.Discharge == InjectorDischarge.Manifold ? manifoldName : ambientName;
            foreach ((int i, InjectorSeat seat) in stage.Seats.Index())
            {
                string name = $"{stage.Name} injector {i + 1} of chamber {seat.Chamber}";
                allLinks.Add(new Line(name, seat.Node, space, map.Parts[allLinks.Count]));
            }
        }

        Line[] links = [.. allLinks];
        NetworkChecks.All(
            [.. allNodes.Where(n => n.Name != manifoldName && n.Name != ambientName)],
            [.. links.Take(system.Plan.Lines.Length)]
        );
        network = new NetworkPlan(allNodes, links);
        nodes = [.. system.Plan.Nodes.Select(n => network.Node(n.Name))];
        lines = [.. Enumerable.Range(0, system.Plan.Lines.Length)];
        seats = [.. Enumerable.Range(lines.Length, links.Length - lines.Length)];
        manifold = network.Node(manifoldName);
        ambient = network.Node(ambientName);
        PartReading?[] readings = Array.ConvertAll(map.Parts, p => p.Reading());
        steady = [.. Enumerable.Range(0, links.Length).Where(i => readings[i] is { IsSteady: true })];
        moving = [.. Enumerable.Range(0, links.Length).Where(i => readings[i] is { IsSteady: false })];
        PumpLines = [.. lines.Where(i => system.Plan.Lines[i].Part is Pump)];
    }

    /// <summary>The lines that the pumps are in.</summary>
    internal int[] PumpLines { get; }

    /// <summary>A workspace; give it back by disposing of it.</summary>
    internal NetworkWork<T> Rent<T>()
        where T : struct, ILane<T> => network.Rent<T>();

    /// <summary>Sets what stays the same in all rounds of some points, one for each number of the scalar.</summary>
    internal void Prepare<T>(NetworkWork<T> work, ReadOnlySpan<SolverState> points)
        where T : struct, ILane<T>
    {
        for (int i = 0; i < nodes.Length; i++)
        {
            work.SetHeight(nodes[i], Pack<T>(points, static (s, i) => s.Map.Places[i].HeightAt(s.Point), i));
        }

        work.SetFluid(Pack<T>(points, static (s, _) => s.Density, 0), Pack<T>(points, static (s, _) => s.Viscosity, 0));
        work.SetPressure(manifold, Pack<T>(points, static (s, _) => s.ManifoldGauge, 0));
        work.SetPressure(ambient, T.Of(0));
        Write(work, points, steady);
    }

    /// <summary>Sets what the parts do in a round.</summary>
    internal void Ask<T>(NetworkWork<T> work, ReadOnlySpan<SolverState> points)
        where T : struct, ILane<T> => Write(work, points, moving);

    private void Write<T>(NetworkWork<T> work, ReadOnlySpan<SolverState> points, int[] links)
        where T : struct, ILane<T>
    {
        Span<double> one = stackalloc double[network.MostSettings];
        Span<double> all = stackalloc double[network.MostSettings * T.Count];
        foreach (int link in links)
        {
            Span<double> here = one[..network.Links[link].Law.SettingCount];
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

    /// <summary>Hands the pressures that were found to the points.</summary>
    /// <param name="work">The workspace.</param>
    /// <param name="points">The points.</param>
    /// <param name="live">Which of them are still sought.</param>
    internal void Answer<T>(NetworkWork<T> work, ReadOnlySpan<SolverState> points, ReadOnlySpan<bool> live)
        where T : struct, ILane<T>
    {
        Span<double> numbers = stackalloc double[T.Count];
        for (int i = 0; i < seats.Length; i++)
        {
            T.Store(work.PressureAt(nodes[points[0].Map.Nodes[i]]), numbers);
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
            T.Store(work.Pressure[network.To[PumpLines[p]]] - work.Pressure[network.From[PumpLines[p]]], numbers);
            for (int n = 0; n < T.Count; n++)
            {
                if (live[n])
                {
                    points[n].PumpRises[p] = numbers[n];
                }
            }
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

    /// <summary>What a settled round says, with its evidence.</summary>
    /// <exception cref="NoSolutionException">It is not a state that the path can be in.</exception>
    /// <exception cref="OutsideTableException">A pump runs outside its data.</exception>
    internal FuelPathSolution Solution(NetworkWork<Real> work) =>
        new(NetworkVerdict.State(work, true), system.Plan, nodes, seats);

    private string Free(string name)
    {
        while (system.Plan.Nodes.Any(n => n.Name == name))
        {
            name += "'";
        }

        return name;
    }
}

using FuelMath.Internal;
using FuelMath.Networks;
using FuelMath.Regulators;
using FuelMath.Scalars;

namespace FuelMath.Systems;

/// <summary>
/// A plan and its injectors as a network: prepared once, solved for the draws, voltages and pressures of each round.
/// </summary>
/// <remarks>Parts become link laws in <see cref="LineLinks"/>. Immutable and safe to share between threads.</remarks>
internal sealed class FuelPath
{
    private readonly FuelSystem system;
    private readonly NetworkPlan network;
    private readonly int[] nodes;
    private readonly int[] lines;
    private readonly int[] seats;
    private readonly int manifold;
    private readonly int ambient;
    private readonly int[] regulators;

    internal FuelPath(FuelSystem system)
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
        var allLinks = system.Plan.Lines.Select(LineLinks.Of).ToList();
        foreach (InjectorStage stage in system.Stages)
        {
            for (int i = 0; i < stage.Seats.Length; i++)
            {
                InjectorSeat seat = stage.Seats[i];
                string space = stage.Discharge == InjectorDischarge.Manifold ? manifoldName : ambientName;
                allLinks.Add(
                    new NetworkLink(
                        $"{stage.Name} injector {i + 1} of chamber {seat.Chamber}",
                        seat.Node,
                        space,
                        LinkKind.CappedOrifice,
                        new CappedPart(PerRootPressure(seat), 0)
                    )
                );
            }
        }

        NetworkLink[] links = [.. allLinks];
        NetworkChecks.All(
            [.. allNodes.Where(n => n.Name != manifoldName && n.Name != ambientName)],
            [.. links.Take(system.Plan.Lines.Length)]
        );
        double anyDensity = 750;
        double anyViscosity = 5e-4;
        network = new NetworkPlan(anyDensity, anyViscosity, allNodes, links);
        nodes = [.. system.Plan.Nodes.Select(n => network.Node(n.Name))];
        lines = [.. Enumerable.Range(0, system.Plan.Lines.Length)];
        seats = [.. Enumerable.Range(lines.Length, links.Length - lines.Length)];
        manifold = network.Node(manifoldName);
        ambient = network.Node(ambientName);
        regulators = [.. lines.Where(i => system.Plan.Lines[i].Reference is not null)];
        PumpLines = [.. lines.Where(i => system.Plan.Lines[i].Pump is not null)];
    }

    /// <summary>The lines that the pumps are in.</summary>
    internal int[] PumpLines { get; }

    /// <summary>The pressure on a regulator's reference port, Pa gauge.</summary>
    internal static double ReferencePressure(FuelPlan plan, FuelLine line, SolverState state) =>
        line.Reference switch
        {
            RegulatorReference.Manifold => state.ManifoldGauge,
            RegulatorReference.Tank => plan.TankOf(line).TankPressure.Si,
            _ => 0,
        };

    /// <summary>A workspace; give it back by disposing of it.</summary>
    internal NetworkWork<T> Rent<T>()
        where T : struct, ILane<T> => network.Rent<T>();

    /// <summary>Sets what stays the same in all rounds of some points, one for each number of the scalar.</summary>
    internal void Prepare<T>(NetworkWork<T> work, ReadOnlySpan<SolverState> points)
        where T : struct, ILane<T>
    {
        work.SetFluid(Pack<T>(points, static (s, _) => s.Density, 0), Pack<T>(points, static (s, _) => s.Viscosity, 0));
        work.SetPressure(manifold, Pack<T>(points, static (s, _) => s.ManifoldGauge, 0));
        work.SetPressure(ambient, T.Of(0));
        Span<double> references = stackalloc double[T.Count];
        foreach (int line in regulators)
        {
            FuelLine held = system.Plan.Lines[line];

            // What is held moves with the reference by the share of the diaphragm.
            double weight = 1 + held.SeatInfluence;
            for (int n = 0; n < T.Count; n++)
            {
                double higher = points[n].Shifts?.SetPoint ?? 0;
                references[n] =
                    (held.ReferenceRatio * ReferencePressure(system.Plan, held, points[n])) + (higher / weight);
            }

            work.SetReference(line, T.Load(references));
        }
    }

    /// <summary>Sets pump curves and draws of a round.</summary>
    internal void Ask<T>(NetworkWork<T> work, ReadOnlySpan<SolverState> points)
        where T : struct, ILane<T>
    {
        for (int p = 0; p < PumpLines.Length; p++)
        {
            int pump = p;
            work.SetPump(PumpLines[p], points, s => s.PumpPieces(pump));
        }

        for (int i = 0; i < seats.Length; i++)
        {
            work.SetInjector(
                seats[i],
                Pack<T>(points, static (s, seat) => s.Coefficients[seat], i),
                Pack<T>(points, static (s, seat) => s.Commanded[seat], i)
            );
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

    /// <summary>A first value of static flow over root of pressure; every solve sets its own.</summary>
    private static double PerRootPressure(InjectorSeat seat) =>
        seat.Injector.Rating.StaticVolumeFlow.InSi() / Math.Sqrt(seat.Injector.Rating.DifferentialPressure.InSi());

    private string Free(string name)
    {
        while (system.Plan.Nodes.Any(n => n.Name == name))
        {
            name += "'";
        }

        return name;
    }
}

using FuelMath.Fittings;
using FuelMath.Hoses;
using FuelMath.Internal;
using FuelMath.Networks;
using FuelMath.Pumps;
using FuelMath.Regulators;
using FuelMath.Scalars;
using FuelMath.Tables;

namespace FuelMath.Systems;

/// <summary>
/// A plan and its injectors as a network: prepared once, solved for the draws, voltages and pressures of each round.
/// </summary>
/// <remarks>The one place where parts become link laws. Immutable and safe to share between threads.</remarks>
internal sealed class FuelPath
{
    private readonly FuelSystem system;
    private readonly NetworkPlan network;
    private readonly int[] nodes;
    private readonly int[] lines;
    private readonly int[] seats;
    private readonly int manifold;
    private readonly int ambient;

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
        var allLinks = system.Plan.Lines.Select(Link).ToList();
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
        PumpLines = [.. lines.Where(i => system.Plan.Lines[i].Pump is not null)];
        Pumps = [.. PumpLines.Select(i => system.Plan.Lines[i].Pump!)];
    }

    /// <summary>The pumps, in the order of the lines.</summary>
    internal Pump[] Pumps { get; }

    /// <summary>The lines that the pumps are in.</summary>
    internal int[] PumpLines { get; }

    /// <summary>The pressure on a regulator's reference port, Pa gauge.</summary>
    internal static double ReferencePressure(FuelPlan plan, FuelLine line, SolverState state) =>
        line.Regulator!.Reference switch
        {
            RegulatorReference.Manifold => state.ManifoldGauge,
            RegulatorReference.Tank => plan.TankOf(line).TankPressure.Si,
            _ => 0,
        };

    /// <summary>A workspace for one solve; give it back by disposing of it.</summary>
    internal NetworkWork<Real> Rent() => network.Rent<Real>();

    /// <summary>Sets what stays the same in all rounds of a solve.</summary>
    internal void Prepare(NetworkWork<Real> work, SolverState state)
    {
        work.SetFluid(new Real(state.Density), new Real(state.Viscosity));
        work.SetPressure(manifold, new Real(state.ManifoldGauge));
        work.SetPressure(ambient, new Real(0));
        for (int i = 0; i < lines.Length; i++)
        {
            if (system.Plan.Lines[i].Regulator is not null)
            {
                work.SetReference(i, new Real(ReferencePressure(system.Plan, system.Plan.Lines[i], state)));
            }
        }
    }

    /// <summary>Solves one round.</summary>
    /// <param name="work">The workspace.</param>
    /// <param name="state">Pump curves and draws of the round.</param>
    /// <param name="warm">Whether to start from the last round.</param>
    /// <returns>Newton iterations.</returns>
    /// <exception cref="NoSolutionException">No state satisfies the equations.</exception>
    internal int Solve(NetworkWork<Real> work, SolverState state, bool warm)
    {
        for (int p = 0; p < PumpLines.Length; p++)
        {
            work.SetPump(PumpLines[p], state.PumpCurves[p].RiseOverFlow);
        }

        for (int i = 0; i < seats.Length; i++)
        {
            work.SetInjector(seats[i], new Real(state.Coefficients[i]), new Real(state.Commanded[i]));
        }

        Mask<Real> solved = work.Solve(warm);
        if (!Real.All(solved) || !Real.All(work.Sound()))
        {
            // Says why, with its numbers.
            _ = NetworkVerdict.State(work, Real.All(solved));
        }

        return (int)work.Iterations.Value;
    }

    /// <summary>The gauge pressure at a node of the plan, Pa.</summary>
    internal double PressureAt(NetworkWork<Real> work, int node) => work.PressureAt(nodes[node]).Value;

    /// <summary>Outlet less inlet pressure of a pump, both at its own height, Pa.</summary>
    internal double PumpRise(NetworkWork<Real> work, int pump) =>
        work.Pressure[network.To[PumpLines[pump]]].Value - work.Pressure[network.From[PumpLines[pump]]].Value;

    /// <summary>What a settled round says, with its evidence.</summary>
    /// <exception cref="NoSolutionException">It is not a state that the path can be in.</exception>
    /// <exception cref="OutsideTableException">A pump runs outside its data.</exception>
    internal FuelPathSolution Solution(NetworkWork<Real> work) =>
        new(NetworkVerdict.State(work, true), system.Plan, nodes, seats);

    private static NetworkLink Link(FuelLine line)
    {
        if (line.Hose is { } hose)
        {
            return new(line.Name, line.From, line.To, LinkKind.Pipe, Pipe(hose, new FittingSeries(line.Fittings)));
        }

        if (line.Fitting is { } fitting)
        {
            double square = PartMath.PerDensity(fitting.LossCoefficient.InSi(), fitting.Bore.InSi());
            return new(line.Name, line.From, line.To, LinkKind.Fitting, new SquarePart { SquarePerDensity = square });
        }

        if (line.Filter is { } filter)
        {
            var part = new SquarePart { LinearPerViscosity = filter.LinearSi, SquarePerDensity = filter.QuadraticSi };
            return new(line.Name, line.From, line.To, LinkKind.Filter, part);
        }

        if (line.Pump is { } pump)
        {
            return new(
                line.Name,
                line.From,
                line.To,
                LinkKind.Pump,
                new PumpTablePart(pump.Name, Longest(pump), false)
            );
        }

        BypassRegulator regulator = line.Regulator!;
        var valve = new RegulatorPart
        {
            Bypass = true,
            Setting = regulator.OpeningDifferentialPressure.InSi(),
            Slope = regulator.SlopeSi,
            Influence = regulator.ReturnInfluence.InSi(),
            SquarePerDensity = regulator.FullyOpenCoefficientSi,
        };
        return new(line.Name, line.From, line.To, LinkKind.BypassRegulator, valve);
    }

    private static PipePart Pipe(Hose hose, FittingSeries fittings) =>
        new(
            hose.Length.InSi(),
            hose.Bore.InSi(),
            hose.Roughness.InSi(),
            hose.LossCoefficient.InSi() + fittings.CoefficientFor(hose.Bore).InSi(),
            FrictionLaw.ColebrookStraightPassage,
            false
        );

    /// <summary>The most pieces that the pump's curve has at any voltage.</summary>
    private static Piece[] Longest(Pump pump)
    {
        double[] volts = [.. pump.Curves.Select(c => c.Voltage.InSi())];
        return volts
            .Concat(volts.Zip(volts.Skip(1), (low, high) => (low + high) / 2))
            .Select(v => pump.CurveAt(SiUnits.ElectricPotential(v)).RiseOverFlow.Pieces.ToArray())
            .MaxBy(pieces => pieces.Length)!;
    }

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

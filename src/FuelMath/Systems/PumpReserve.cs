using FuelMath.Formulas;

namespace FuelMath;

/// <summary>What the pumps of a solved state could still give at the pressure that must hold, beyond their demand.</summary>
/// <remarks>
/// Behind a bypass regulator that is what it sends back. Ahead of a reducing regulator, or without any, the pumps run up
/// their curves to whatever pressure is left over: that surplus is given up, losses grown with the square of the flow, and
/// the curves read again at the voltage of the state.
/// </remarks>
internal sealed class PumpReserve
{
    private const double Near = 1e-6;
    private readonly FuelSystem system;
    private readonly SystemParts parts;
    private readonly PumpCurve[] curves;
    private readonly double drawn;
    private readonly double surplus;
    private readonly double losses;

    private PumpReserve(
        FuelSystem system,
        OperatingPoint point,
        SystemParts parts,
        double surplus,
        double losses,
        double drawn
    )
    {
        (this.system, this.parts, this.surplus, this.losses, this.drawn) = (system, parts, surplus, losses, drawn);
        curves =
        [
            .. parts.Pumps.Select(match =>
                ((Pump)system.Network.Lines.Single(l => l.Name == match.Line).Part).CurveAt(
                    match.Voltage,
                    system.Fuel.DensityAt(point.Fuel)
                )
            ),
        ];
    }

    /// <summary>The reserve, m³/s; null where there is no pump or nothing says what pressure must hold.</summary>
    internal static double? Of(ReportedSolve solve, SystemParts all)
    {
        (FuelSystem system, OperatingPoint point) = (solve.System, solve.Point);
        SystemParts parts = AtTheRails(system, all);
        if (parts.Pumps.IsEmpty)
        {
            return null;
        }

        if (parts.Regulators.Any(r => !r.IsReducing))
        {
            return parts.Regulators.Sum(r => r.BypassedFlow.InSi());
        }

        double drawn = PumpOutlets.Demand(solve);
        return Surplus(system, point, parts) is { } surplus
            ? new PumpReserve(system, point, parts, surplus, drawn > 0 ? Dissipated(solve) / drawn : 0, drawn).Value()
            : null;
    }

    /// <summary>Whether it is read from the curves of pumps, whose data may not reach there: no bypass regulator sends it back.</summary>
    internal static bool NeedsCurves(FuelSystem system)
    {
        HashSet<string> rails = RailLines(system);
        Line[] regulated =
        [
            .. system.Network.Lines.Where(l => system.Layout.LiftPumps.IsEmpty || rails.Contains(l.Name)),
        ];
        return !Array.Exists(regulated, l => l.Part is IRegulator { IsReducing: false });
    }

    /// <summary>
    /// The parts without those of a lift circuit: it ends in its surge tank, so that what its pumps could give more, and what
    /// its regulator sends back, does not reach a rail.
    /// </summary>
    internal static SystemParts AtTheRails(FuelSystem system, SystemParts parts)
    {
        if (system.Layout.LiftPumps.IsEmpty)
        {
            return parts;
        }

        HashSet<string> rails = RailLines(system);
        return parts.With(
            [.. parts.Pumps.Where(p => rails.Contains(p.Line))],
            [.. parts.Regulators.Where(r => rails.Contains(r.Line))]
        );
    }

    private static HashSet<string> RailLines(FuelSystem system) => RailLines(system, _ => true);

    /// <summary>The lines that lead to an injector without passing a tank, or a line that is left out.</summary>
    internal static HashSet<string> RailLines(FuelSystem system, Func<Line, bool> passes)
    {
        Line[] all = [.. system.Network.Lines.Where(passes)];
        HashSet<string> tanks = [.. system.Network.Nodes.Where(n => n.IsFixed).Select(n => n.Name)];
        HashSet<string> nodes = [.. system.Stages.SelectMany(s => s.Seats).Select(s => s.Node)];
        HashSet<string> lines = [];
        int known = -1;
        while (known < lines.Count)
        {
            known = lines.Count;
            foreach (Line line in all.Where(l => nodes.Contains(l.From) || nodes.Contains(l.To)))
            {
                lines.Add(line.Name);
                nodes.UnionWith(new[] { line.From, line.To }.Where(n => !tanks.Contains(n)));
            }
        }

        return lines;
    }

    /// <summary>
    /// Whether some pumps are in series and others in parallel, or fuel circulates between them: what one gives more then
    /// hangs on the others, and nothing simpler than another solve says how much that is.
    /// </summary>
    internal static bool IsMixed(SystemParts parts, double drawn) =>
        parts.Pumps.Length > 1
        && drawn > 0
        && !IsSeries(parts, drawn)
        && !IsShare(parts.Pumps.Sum(p => p.Flow.InSi()), drawn);

    private static bool IsSeries(SystemParts parts, double drawn) =>
        parts.Pumps.All(p => IsShare(p.Flow.InSi(), drawn));

    private static bool IsShare(double flow, double drawn) => Math.Abs(flow - drawn) <= Near * drawn;

    /// <summary>The pressure that may be given up before something that must hold does not, Pa.</summary>
    private static double? Surplus(FuelSystem system, OperatingPoint point, SystemParts parts)
    {
        if (!parts.Regulators.IsEmpty)
        {
            return parts.Regulators.Min(r => r.Inlet?.Si - r.Outlet?.Si);
        }

        double? least = null;
        foreach (SystemState.InjectorResult injector in parts.Injectors)
        {
            InjectorStage stage = system.Stages.First(s => s.Name == injector.Stage);
            if (stage.Belief?.ToldSi(stage.DischargeGaugeSi(point)) is { } told)
            {
                double over = injector.DifferentialPressure.InSi() - told;
                least = Math.Min(over, least ?? over);
            }
        }

        return least;
    }

    /// <summary>What hoses, fittings and filters take on the way to the injectors, W.</summary>
    private static double Dissipated(ReportedSolve solve)
    {
        (FuelSystem system, OperatingPoint point) = (solve.System, solve.Point);
        double weight = system.Fuel.DensityAt(point.Fuel).InSi() * Hydrostatics.StandardGravity;
        double sum = 0;
        HashSet<string> rails = RailLines(system);
        HashSet<int> aside = PumpOutlets.BranchesIn(solve);
        for (int i = 0; i < system.Network.Lines.Length; i++)
        {
            Line line = system.Network.Lines[i];
            if (line.Part.IsPassage && rails.Contains(line.Name) && !aside.Contains(i))
            {
                (int from, int to) = (system.Network.PlaceOf(line.From), system.Network.PlaceOf(line.To));
                double head =
                    weight
                    * (
                        point.Acceleration.HeightOf(system.Network.Nodes[from])
                        - point.Acceleration.HeightOf(system.Network.Nodes[to])
                    );
                sum += solve.LineFlows[i] * (solve.NodePressures[from] - solve.NodePressures[to] + head);
            }
        }

        return Math.Max(sum, 0);
    }

    private double? Value()
    {
        bool inSeries = curves.Length > 1 && IsSeries(parts, drawn);
        if (curves.Length > 1 && (drawn == 0 || IsMixed(parts, drawn)))
        {
            return null;
        }

        double most = inSeries ? curves.Min(c => c.GreatestFlow.InSi()) : curves.Sum(c => c.GreatestFlow.InSi());
        return Spare(drawn, inSeries) < 0
            ? 0
            : (Spare(most, inSeries) >= 0 ? most : Rising.Root(q => -Spare(q, inSeries), 0, drawn, most)) - drawn;
    }

    /// <summary>Pressure or flow left when so much is drawn, as a share of what there is: falls through zero.</summary>
    private double Spare(double flow, bool inSeries)
    {
        double growth = drawn > 0 ? losses * ((flow / drawn * (flow / drawn)) - 1) : 0;
        double give = surplus - OpenLoss(flow) - growth;
        if (inSeries)
        {
            double rise = curves.Sum(c => c.RiseAt(SiUnits.VolumeFlow(Math.Max(flow, c.LeastFlow.InSi()))).InSi());
            double needed = parts.Pumps.Sum(p => p.PressureRise.InSi()) - give;
            return (rise - needed) / Math.Max(needed, rise);
        }

        double brought = 0;
        for (int i = 0; i < curves.Length; i++)
        {
            brought += FlowAt(curves[i], parts.Pumps[i].PressureRise.InSi() - give);
        }

        return (brought - flow) / Math.Max(brought, flow);
    }

    /// <summary>A curve that ends at a flow gives no more than that is known of; beyond its greatest rise it gives nothing.</summary>
    private static double FlowAt(PumpCurve curve, double rise) =>
        rise > curve.GreatestPressureRise.InSi()
            ? 0
            : curve.FlowAt(SiUnits.Pressure(Math.Max(rise, curve.LeastPressureRise.InSi()))).InSi();

    /// <summary>What the reducing regulators take when they are open to their stop, the worst of them carrying all.</summary>
    private double OpenLoss(double flow)
    {
        double worst = 0;
        foreach (Line line in system.Network.Lines)
        {
            if (line.Part is IRegulator { IsReducing: true, Mechanics.FullyOpen: { } open })
            {
                double share = flow / open.Flow.InSi();
                worst = Math.Max(worst, open.PressureLoss.InSi() * share * share);
            }
        }

        return worst;
    }
}

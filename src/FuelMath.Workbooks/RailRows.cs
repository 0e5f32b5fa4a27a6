using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>The pressures that regulators hold, and the pressure at each node of injectors.</summary>
internal sealed class RailRows
{
    private readonly StateRows rows;
    private readonly FuelSystem system;
    private readonly SystemState state;
    private readonly SpreadsheetText manifold;
    private readonly SpreadsheetText ambient;
    private readonly Dictionary<string, string> nodes = [];

    internal RailRows(
        StateRows rows,
        FuelSystem system,
        SystemState state,
        SpreadsheetText manifold,
        SpreadsheetText ambient
    )
    {
        (this.rows, this.system, this.state) = (rows, system, state);
        (this.manifold, this.ambient) = (manifold, ambient);
        var held = new Dictionary<string, SpreadsheetText>();
        foreach (
            SystemState.RegulatorResult regulator in state.Regulators.Where(r =>
                r.State == RegulatorCondition.Regulating
            )
        )
        {
            held[regulator.Line] = Held(regulator);
        }

        rows.Head("Rail");
        foreach (string node in state.Injectors.Select(i => i.Seat.Node).Distinct())
        {
            nodes[node] = At(node, held);
        }
    }

    /// <summary>The cell of the gauge pressure at a node.</summary>
    internal string this[string node] => nodes[node];

    /// <summary>The cell of the lowest pressure at the nodes of some injectors.</summary>
    internal string Least(IEnumerable<SystemState.InjectorResult> injectors) =>
        nodes[injectors.Select(i => i.Seat.Node).MinBy(n => state.PressureAt(n).Si())!];

    private string At(string node, Dictionary<string, SpreadsheetText> held)
    {
        double solved = state.PressureAt(node).Si();
        SystemState.RegulatorResult[] near =
        [
            .. state.Regulators.Where(r => held.ContainsKey(r.Line) && IsNear(node, r)),
        ];
        if (near is not [var regulator])
        {
            return rows.SolvedResult(
                $"pressure at '{node}'",
                solved,
                SheetUnit.Gauge,
                near.Length == 0 ? "no regulator holds it: pump and lines meet there" : "several regulators hold it"
            );
        }

        SpreadsheetText lost = rows.Solved(
            $"pressure at '{node}' less that at regulator '{regulator.Line}'",
            solved - HeldBy(regulator),
            SheetUnit.Difference,
            "lines between them, at the flows of this state"
        );
        return rows.Result($"pressure at '{node}'", held[regulator.Line] + lost, SheetUnit.Gauge, "held, and lines");
    }

    private static double HeldBy(SystemState.RegulatorResult regulator) =>
        (regulator.IsReducing ? regulator.Outlet : regulator.Inlet)!.Value.Si();

    /// <summary>Whether there is no pump and no regulator between a node and the node that a regulator holds.</summary>
    private bool IsNear(string node, SystemState.RegulatorResult regulator)
    {
        var closed = state.Pumps.Select(p => p.Line).Concat(state.Regulators.Select(r => r.Line)).ToHashSet();
        Line own = system.Network.Lines.First(l => l.Name == regulator.Line);
        string start = regulator.IsReducing ? own.To : own.From;
        var seen = new HashSet<string> { start };
        var open = new Queue<string>(seen);
        while (open.TryDequeue(out string? at))
        {
            foreach (
                Line line in system.Network.Lines.Where(l => !closed.Contains(l.Name) && (l.From == at || l.To == at))
            )
            {
                string next = line.From == at ? line.To : line.From;
                if (!system.Network.Nodes.First(n => n.Name == next).IsFixed && seen.Add(next))
                {
                    open.Enqueue(next);
                }
            }
        }

        return seen.Contains(node);
    }

    private SpreadsheetText Held(SystemState.RegulatorResult result)
    {
        rows.Head($"Regulator '{result.Line}'");
        FlowPart part = system.Network.Lines.First(l => l.Name == result.Line).Part;
        return part switch
        {
            BypassRegulator bypass => OfBypass(bypass, result),
            ReducingRegulator reducing => OfReducing(reducing, result),
            _ => rows.Solved("pressure held", HeldBy(result), SheetUnit.Gauge, "its law has no steps"),
        };
    }

    private SpreadsheetText OfBypass(BypassRegulator part, SystemState.RegulatorResult result)
    {
        SpreadsheetText set = rows.Given(
            "set difference",
            part.SetPoint.DifferentialPressure.Si(),
            SheetUnit.Difference,
            part.Source.ToString()
        );
        (double setFlow, double secondFlow) = (part.SetPoint.BypassedFlow.Si(), part.SecondReading.BypassedFlow.Si());
        double slope =
            (part.SecondReading.DifferentialPressure.Si() - part.SetPoint.DifferentialPressure.Si())
            / (secondFlow - setFlow);
        (double diaphragm, double seat) = (part.Mechanics.Diaphragm.Si(), part.Mechanics.Seat.Si());
        SpreadsheetText force = rows.Live(
            "spring force",
            BypassValve.SpringForce(set, Number(setFlow), Number(slope), Number(diaphragm), Number(seat)),
            SheetUnit.Newtons,
            "from the set point"
        );
        SpreadsheetText ratio = Number(part.ReferenceRatio.Si());
        SpreadsheetText reference = ratio * Reference(part.Reference, result);
        SpreadsheetText back = rows.Solved(
            "pressure in the return line",
            result.Outlet!.Value.Si(),
            SheetUnit.Gauge,
            "at the flow of this state"
        );
        SpreadsheetText flow = rows.Solved(
            "flow sent back",
            result.Flow.Si(),
            SheetUnit.LitersPerHour,
            "what the pump gives beyond what is drawn"
        );
        return rows.Live(
            "pressure held",
            BypassValve.HeldPressure(force, reference, back, Number(diaphragm), Number(seat), Number(slope), flow),
            SheetUnit.Gauge,
            "balance of forces on the diaphragm"
        );
    }

    private SpreadsheetText OfReducing(ReducingRegulator part, SystemState.RegulatorResult result)
    {
        ReducingRegulator.BenchReading first = part.SetPoint;
        ReducingRegulator.BenchReading second = part.SecondReading;
        SpreadsheetText set = rows.Given(
            "set difference",
            first.DifferentialPressure.Si(),
            SheetUnit.Difference,
            part.Source.ToString()
        );
        (double diaphragm, double seat) = (part.Mechanics.Diaphragm.Si(), part.Mechanics.Seat.Si());

        // Each reading corrected for the supply pressure, as the part computes its droop.
        double influence = seat / (diaphragm - seat);
        double droop =
            (
                first.DifferentialPressure.Si()
                + (influence * first.Supply.Si())
                - second.DifferentialPressure.Si()
                - (influence * second.Supply.Si())
            ) / (second.Flow.Si() - first.Flow.Si());
        SpreadsheetText force = rows.Live(
            "spring force",
            ReducingValve.SpringForce(
                set,
                Number(first.Flow.Si()),
                Number(first.Supply.Si()),
                Number(droop),
                Number(diaphragm),
                Number(seat)
            ),
            SheetUnit.Newtons,
            "from the set point"
        );
        SpreadsheetText reference = Reference(part.Reference, result);
        SpreadsheetText supply = rows.Solved(
            "pressure that supplies it",
            result.Inlet!.Value.Si(),
            SheetUnit.Gauge,
            "pump and lines, at the flow of this state"
        );
        SpreadsheetText flow = rows.Solved(
            "flow through it",
            result.Flow.Si(),
            SheetUnit.LitersPerHour,
            "what is drawn"
        );
        return rows.Live(
            "pressure held",
            ReducingValve.HeldPressure(force, reference, supply, Number(diaphragm), Number(seat), Number(droop), flow),
            SheetUnit.Gauge,
            "balance of forces on the diaphragm"
        );
    }

    private SpreadsheetText Reference(RegulatorReference reference, SystemState.RegulatorResult result) =>
        reference switch
        {
            RegulatorReference.Manifold => rows.Live(
                "pressure on the reference port",
                manifold - ambient,
                SheetUnit.Gauge,
                "manifold less ambient"
            ),
            RegulatorReference.Ambient => Number(0),
            _ => rows.Solved("pressure on the reference port", result.Reference.Si(), SheetUnit.Gauge, "in the tank"),
        };

    private static SpreadsheetText Number(double value) => SpreadsheetText.Of(value);
}

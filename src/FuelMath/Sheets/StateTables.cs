using System.Globalization;

namespace FuelMath;

/// <summary>The tables of states: what was given at each operating point, and what came out along the path.</summary>
internal static class StateTables
{
    private const double Bar = 1e5;
    private const double LitersPerHour = 3.6e6;

    internal static IEnumerable<SheetTable> All(SystemAssessment assessment)
    {
        Solved[] solved =
        [
            .. assessment
                .Points.Select(p => (p.Point, p.Of(SystemAssessment.StateBasis.AsDescribed)?.State))
                .Where(p => p.State is not null)
                .Select(p => new Solved(p.Point, p.State!)),
        ];
        yield return Conditions(assessment);
        if (solved.Length > 0)
        {
            yield return PathPressures(assessment.System, solved);
            yield return PartFlows(assessment.System, solved);
        }

        yield return PumpTables.Pumps(assessment.System, solved);
        yield return Pulsing(solved);
        yield return PumpTables.SurgeTanks(solved);
        yield return PumpTables.Switches(assessment.System, solved);
        yield return ChamberTable.Of(assessment);
        yield return Estimates(solved);
        yield return Evidence(solved);
    }

    /// <summary>An operating point with its state.</summary>
    internal readonly record struct Solved(OperatingPoint Point, SystemState State);

    internal static string Words(SystemAssessment.StateBasis basis) =>
        basis switch
        {
            SystemAssessment.StateBasis.AsDescribed => "as described",
            SystemAssessment.StateBasis.AsDescribedUncorrected => "as described, if the sensor fails",
            SystemAssessment.StateBasis.AsMeasured => "as measured",
            _ => "as measured, if the sensor fails",
        };

    private static SheetTable Conditions(SystemAssessment assessment) =>
        SheetTable.Of(
            "conditions",
            "Operating points as given, and what the regulator does there",
            "Held: a sensor corrects the mean mixture. Open: nobody corrects, lambda follows from what the controller was told. Rail: gauge pressure at the injector with the least pressure across it.",
            [
                SheetTable.Column.Words("point"),
                SheetTable.Column.Numbers("speed", "rpm", 0),
                SheetTable.Column.Numbers("manifold", "kPa absolute", 1),
                SheetTable.Column.Numbers("ambient", "kPa absolute", 1),
                SheetTable.Column.Numbers("charge", "degC", 1),
                SheetTable.Column.Numbers("fuel", "degC", 1),
                SheetTable.Column.Numbers("supply", "V", 2),
                SheetTable.Column.Words("command"),
                SheetTable.Column.Numbers("rail", "bar gauge", 2),
                SheetTable.Column.Words("regulator"),
            ],
            assessment.Points.Select(Conditions)
        );

    private static object?[] Conditions(SystemAssessment.PointAssessment point)
    {
        OperatingPoint at = point.Point;
        SystemState? state = point.Of(SystemAssessment.StateBasis.AsDescribed)?.State;
        return
        [
            at.Name,
            at.Speed.InSi() * 30 / Math.PI,
            at.Air.Manifold.Si / 1e3,
            at.Air.Ambient.Si / 1e3,
            SiUnits.CelsiusFromKelvins(at.Air.Charge.InSi()),
            SiUnits.CelsiusFromKelvins(at.Fuel.InSi()),
            at.Supply.InSi(),
            Words(at.Command),
            state is null ? null : Rail(state),
            state is null ? "no state" : string.Join(", ", state.Regulators.Select(r => Words(r.State)).Distinct()),
        ];
    }

    /// <summary>In bar gauge; null where every way to it is shut.</summary>
    private static double? Rail(SystemState state) =>
        state.Network.TryPressureAt(
            state.Injectors.MinBy(i => i.DifferentialPressure.InSi())!.Seat.Node,
            out GaugePressure rail
        )
            ? rail.Si / Bar
            : null;

    private static string Words(FuelCommand command) =>
        command.Kind switch
        {
            FuelCommand.CommandKind.HoldLambda => $"lambda {command.Lambda} held",
            FuelCommand.CommandKind.OpenLoop => $"lambda {command.Lambda} open",
            FuelCommand.CommandKind.PulseWidths => "widths",
            FuelCommand.CommandKind.AllOpen => "all open",
            _ => "cut",
        };

    private static string Words(RegulatorCondition condition) =>
        condition switch
        {
            RegulatorCondition.Seated => "seated",
            RegulatorCondition.Regulating => "regulating",
            _ => "fully open",
        };

    private static SheetTable PathPressures(FuelSystem system, Solved[] solved) =>
        SheetTable.Of(
            "path-pressures",
            "Pressure along the path",
            "Gauge. Empty: cut off by what is shut. Nodes may stand at different heights: a lower one shows more than the one before it, a higher one less, down to below zero.",
            [SheetTable.Column.Words("node"), .. Columns(solved, "bar", 2)],
            system.Network.Nodes.Select(
                object?[] (n) =>
                    [
                        n.Name,
                        .. solved.Select(s =>
                            s.State.Network.CutOffNodeNames.Contains(n.Name)
                                ? null
                                : (object?)(s.State.PressureAt(n.Name).Si / Bar)
                        ),
                    ]
            )
        );

    private static SheetTable PartFlows(FuelSystem system, Solved[] solved) =>
        SheetTable.Of(
            "part-flows",
            "Flow through each part",
            "",
            [SheetTable.Column.Words("part"), .. Columns(solved, "L/h", 1)],
            system.Network.Lines.Select(
                object?[] (l) =>
                    [l.Name, .. solved.Select(s => (object?)(s.State.FlowThrough(l.Name).InSi() * LitersPerHour))]
            )
        );

    /// <summary>A column for each point: without brackets, which hold units in a file, and counted where names repeat.</summary>
    private static IEnumerable<SheetTable.Column> Columns(Solved[] solved, string unit, int decimals)
    {
        var used = new HashSet<string> { "node", "part" };
        foreach (Solved one in solved)
        {
            string name = one.Point.Name.Replace('[', '(').Replace(']', ')').Replace('\r', ' ').Replace('\n', ' ');
            string own = name;
            for (int i = 2; !used.Add(own); i++)
            {
                own = string.Create(CultureInfo.InvariantCulture, $"{name}, {i}");
            }

            yield return SheetTable.Column.Numbers(own, unit, decimals);
        }
    }

    private static SheetTable Pulsing(Solved[] solved) =>
        SheetTable.Of(
            "pulsing",
            "Pulsing: factor on losses with the square of the flow",
            "Averaged over time and over flow, in a line that carries the stage alone and follows at once. Damping lowers it, a line that resonates may exceed it. At most: the firing order is not known.",
            [
                SheetTable.Column.Words("point"),
                SheetTable.Column.Words("stage"),
                SheetTable.Column.Numbers("over time", "-", 2),
                SheetTable.Column.Numbers("over flow", "-", 2),
                SheetTable.Column.Words("is"),
            ],
            solved.SelectMany(s =>
                s.State.Stages.Where(g => !g.IsShut)
                    .Select(
                        object?[] (g) =>
                            [
                                s.Point.Name,
                                g.Name,
                                g.QuadraticLossFactor.InSi(),
                                g.FlowWeightedLossFactor.InSi(),
                                g.FiringGroups is null ? "at most" : "computed",
                            ]
                    )
            )
        );

    private static SheetTable Evidence(Solved[] solved) =>
        SheetTable.Of(
            "evidence",
            "Evidence of the solver",
            "What is left over where the balance is worst: flow at a node, pressure over a part.",
            [
                SheetTable.Column.Words("point"),
                SheetTable.Column.Numbers("rounds", "-", 0),
                SheetTable.Column.Numbers("iterations", "-", 0),
                SheetTable.Column.Numbers("flow left over", "L/h", 6),
                SheetTable.Column.Numbers("pressure left over", "Pa", 6),
            ],
            solved.Select(
                object?[] (s) =>
                    [
                        s.Point.Name,
                        s.State.Evidence.Rounds,
                        s.State.Evidence.Iterations,
                        s.State.Evidence.WorstImbalance.InSi() * LitersPerHour,
                        s.State.Evidence.WorstPressureResidual.InSi(),
                    ]
            )
        );

    private static SheetTable Estimates(Solved[] solved) =>
        SheetTable.Of(
            "estimates",
            "What rests on an estimate or a rule of thumb",
            "",
            [SheetTable.Column.Words("estimate"), SheetTable.Column.Words("at")],
            solved
                .SelectMany(s => s.State.Evidence.Estimates.Select(e => (s.Point.Name, Words: e)))
                .GroupBy(e => e.Words)
                .Select(
                    object?[] (g) =>
                        [
                            g.Key,
                            g.Distinct().Count() == solved.Length && solved.Length > 1
                                ? "every point"
                                : string.Join("; ", g.Select(e => e.Name).Distinct()),
                        ]
                )
        );
}

namespace FuelMath;

/// <summary>The tables of pumps, surge tanks and switches.</summary>
internal static class PumpTables
{
    private const double Bar = 1e5;
    private const double LitersPerHour = 3.6e6;

    internal static SheetTable Pumps(FuelSystem system, IEnumerable<StateTables.Solved> solved) =>
        SheetTable.Of(
            "pumps",
            "Pumps",
            "Voltage at the pump itself. Rise: of the pressure from its inlet to its outlet.",
            [
                SheetTable.Column.Words("point"),
                SheetTable.Column.Words("pump"),
                SheetTable.Column.Numbers("voltage", "V", 2),
                SheetTable.Column.Numbers("current", "A", 1),
                SheetTable.Column.Numbers("flow", "L/h", 1),
                SheetTable.Column.Numbers("rise", "bar", 2),
                SheetTable.Column.Words("is"),
            ],
            solved.SelectMany(s => system.Network.Lines.SelectMany(l => Pump(s, l)))
        );

    private static IEnumerable<object?[]> Pump(StateTables.Solved solved, Line line)
    {
        SystemState.PumpResult? pump = solved.State.Pumps.FirstOrDefault(p => p.Line == line.Name);
        return pump is not null
                ?
                [
                    [
                        solved.Point.Name,
                        line.Name,
                        pump.Voltage.InSi(),
                        pump.Current.InSi(),
                        pump.Flow.InSi() * LitersPerHour,
                        pump.PressureRise.InSi() / Bar,
                        pump.IsStalled ? "stalled" : "running",
                    ],
                ]
            : line.Switch is not null
                ?
                [
                    [solved.Point.Name, line.Name, null, null, null, null, "switched off"],
                ]
            : [];
    }

    internal static SheetTable SurgeTanks(IEnumerable<StateTables.Solved> solved) =>
        SheetTable.Of(
            "surge-tanks",
            "Surge tanks",
            "Lasts: until a full one is empty, with what is lifted; and when the lift pump sucks air. Empty: without end.",
            [
                SheetTable.Column.Words("point"),
                SheetTable.Column.Words("surge tank"),
                SheetTable.Column.Numbers("lifted", "L/h", 1),
                SheetTable.Column.Numbers("returned", "L/h", 1),
                SheetTable.Column.Numbers("drawn", "L/h", 1),
                SheetTable.Column.Numbers("overflow", "L/h", 1),
                SheetTable.Column.Numbers("lasts", "s", 0),
                SheetTable.Column.Numbers("lasts without lift", "s", 0),
            ],
            solved.SelectMany(s =>
                s.State.SurgeTanks.Select(
                    object?[] (t) =>
                        [
                            s.Point.Name,
                            t.Node,
                            t.LiftFlow.InSi() * LitersPerHour,
                            t.ReturnFlow.InSi() * LitersPerHour,
                            t.DrawnFlow.InSi() * LitersPerHour,
                            t.OverflowFlow.InSi() * LitersPerHour,
                            t.DrainsWithLift ? t.LastsWithLift().InSi() : null,
                            t.DrainsWithoutLift ? t.LastsWithoutLift().InSi() : null,
                        ]
                )
            )
        );

    internal static SheetTable Switches(FuelSystem system, IEnumerable<StateTables.Solved> solved) =>
        SheetTable.Of(
            "pump-switches",
            "Pumps on a switch",
            "",
            [SheetTable.Column.Words("point"), SheetTable.Column.Words("what they do")],
            system.Network.Lines.Any(l => l.Switch is not null)
                ? solved.Select(object?[] (s) => [s.Point.Name, string.Join(" ", s.State.Remarks)])
                : []
        );
}

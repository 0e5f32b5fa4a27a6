using System.Globalization;
using FuelMath.Tests.Assessments;
using FuelMath.Tests.Documents;
using FuelMath.Tests.Systems;
using FuelMath.Workbooks;
using UnitsNet;

namespace FuelMath.Tests.Workbooks;

/// <summary>The live cells of an assessment give what the solver found, and follow what is typed.</summary>
public sealed class AssessmentWorkbookTests
{
    /// <summary>Newton and the search for widths stop within about a billionth.</summary>
    private const double Solved = 1e-7;

    public static TheoryData<string> Systems => ["time-trial-car", "training-stand"];

    [Theory]
    [MemberData(nameof(Systems))]
    public void Bundled_AtEveryPoint_ShowsTheSolvedState(string name) =>
        ShowsTheStates(
            new SystemAssessment(
                SystemDocument.Read(TestFiles.System(name)),
                OperatingListDocument.Read(TestFiles.Points(name))
            )
        );

    [Fact]
    public void Measured_AtEveryState_ShowsTheSolvedState()
    {
        FuelSystem system = VerdictCases.Healthy;
        Injector weak = system
            .Stages[0]
            .Seats[0]
            .Injector.WithFlowScale("weak", Ratio.FromPercent(93), Workshop.Invented);
        ShowsTheStates(
            SystemAssessment.FromBench(
                system,
                [Point(FuelCommand.HoldLambda(Lambda.FromRatio(0.9)))],
                system.WithInjectors(system.Stages[0].Name, [weak, weak, weak, weak]),
                []
            )
        );
    }

    [Fact]
    public void Commands_AllKinds_ShowTheSolvedState()
    {
        FuelCommand[] commands =
        [
            FuelCommand.Cut,
            FuelCommand.AllOpen,
            FuelCommand.OpenLoop(Lambda.FromRatio(1)),
            FuelCommand.FromPulseWidths([Duration.FromMilliseconds(4)]),
        ];
        ShowsTheStates(new SystemAssessment(VerdictCases.Healthy, commands.Select((c, i) => Point(c, $"point {i}"))));
    }

    /// <summary>Half a bar more on the screw is half a bar more in the rail, and flow goes with the root: by hand.</summary>
    [Fact]
    public void SetDifference_Raised_RaisesTheRailAndShortensThePulse()
    {
        var book = new Live(Point(FuelCommand.HoldLambda(Lambda.FromRatio(0.9))));
        double rail = book.Number("pressure at 'rail start'");
        double across = book.Column('E');
        double flow = book.Column('I');
        double effective = book.Column('M');

        book.Type("set difference", book.Number("set difference") + 0.5);

        Close.Within(1e-12, rail + 0.5, book.Number("pressure at 'rail start'"));
        Close.Within(1e-12, flow * Math.Sqrt((across + 0.5) / across), book.Column('I'));
        // One width for all: the injectors at the other end of the rail shift it by what the rail loses.
        Close.Within(1e-3, effective / Math.Sqrt((across + 0.5) / across), book.Column('M'));
        Close.Within(1e-9, 0.9, book.Number("lambda of all chambers together"));
        Assert.StartsWith("CHANGED", (string)book.At("A", 5), StringComparison.Ordinal);
    }

    [Fact]
    public void Lambda_Typed_IsWhatTheChambersGet()
    {
        var book = new Live(Point(FuelCommand.HoldLambda(Lambda.FromRatio(0.9))));
        Assert.StartsWith("The shaded", (string)book.At("A", 5), StringComparison.Ordinal);
        double fuel = book.Fuel();

        book.Type("lambda asked for", 0.81);

        Close.Within(1e-9, 0.81, book.Number("lambda of all chambers together"));
        Close.Within(1e-9, fuel * 0.9 / 0.81, book.Fuel());
    }

    /// <summary>Without a sensor, twice the fuel is twice the width after dead time, by hand; lambda follows the injectors.</summary>
    [Fact]
    public void OpenLoop_LambdaHalved_DoublesTheEffectiveWidth()
    {
        var book = new Live(Point(FuelCommand.OpenLoop(Lambda.FromRatio(1))));
        double dead = book.Number("dead time as told");
        double width = book.Number("pulse width");
        double flow = book.Column('I');

        book.Type("lambda asked for", 0.5);

        Close.Within(1e-12, (2 * (width - dead)) + dead, book.Number("pulse width"));
        Close.Within(1e-12, flow * (book.Number("pulse width") - book.Column('J')), book.Column('N'));
    }

    /// <summary>Nine tenths of the pressure as told, by hand: a width longer by the root of ten ninths.</summary>
    [Fact]
    public void OpenLoop_ToldLessPressure_LengthensThePulse()
    {
        var book = new Live(Point(FuelCommand.OpenLoop(Lambda.FromRatio(1))));
        double dead = book.Number("dead time as told");
        double width = book.Number("pulse width");

        const string Told = "pressure across the injectors as told";
        book.Type(Told, 0.9 * book.Number(Told));

        Close.Within(1e-12, ((width - dead) * Math.Sqrt(10 / 9.0)) + dead, book.Number("pulse width"));
    }

    /// <summary>A point nearby, solved anew, against the sheet of the first: what stays solved makes little of it.</summary>
    [Fact]
    public void Manifold_Typed_ComesNearTheStateSolvedAnew()
    {
        FuelCommand command = FuelCommand.HoldLambda(Lambda.FromRatio(0.9));
        OperatingPoint point = Point(command);
        var book = new Live(point);
        OperatingPoint other = point.At(point.Speed, Workshop.Kilopascals(85));

        book.Type("manifold pressure", 0.85);

        SystemState state = VerdictCases.Healthy.Solve(other);
        Close.Within(0.01, state.PressureAt("rail start").AboveAmbient.Bars, book.Number("pressure at 'rail start'"));
        Close.Within(0.02, state.Stages[0].PulseWidth.Milliseconds, book.Column('L'));
    }

    [Fact]
    public void FromAssessment_Refused_StandsAsNotKnown()
    {
        OperatingPoint cold = Point(Hold()).WithSupply(ElectricPotential.FromVolts(3));
        var cells = WorkbookCells.Read(Workbook.FromAssessment(new SystemAssessment(VerdictCases.Healthy, [cold])));

        Assert.DoesNotContain(cells, c => c.Value.StartsWith('='));
        Assert.Contains(cells, c => c.Key is ("Findings", "A5") && c.Value == "not known");
        Assert.Throws<ArgumentNullException>(() => Workbook.FromAssessment(null!));
    }

    /// <summary>Writes what <c>tests/spreadsheets</c> calculates, when asked.</summary>
    [Fact]
    public void Files_AskedFor_AreWritten()
    {
        if (Environment.GetEnvironmentVariable("WRITE_SHEETS") is not { Length: > 0 } folder)
        {
            return;
        }

        foreach (string name in (string[])["time-trial-car", "training-stand"])
        {
            var book = Workbook.FromAssessment(
                new SystemAssessment(
                    SystemDocument.Read(TestFiles.System(name)),
                    OperatingListDocument.Read(TestFiles.Points(name))
                )
            );
            SheetFiles.Write(book, folder, $"assessment-{name}");
        }
    }

    private static FuelCommand Hold() => FuelCommand.HoldLambda(Lambda.FromRatio(0.9));

    private static OperatingPoint Point(FuelCommand command) => Point(command, "point");

    private static OperatingPoint Point(FuelCommand command, string name) =>
        new(
            name,
            Workshop.Rpm(4000),
            new IntakeAir(Workshop.Kilopascals(90), Workshop.Kilopascals(100), Workshop.Celsius(30)),
            Workshop.Celsius(25),
            ElectricPotential.FromVolts(13.8),
            command
        );

    private static void ShowsTheStates(SystemAssessment assessment)
    {
        var cells = WorkbookCells.Read(Workbook.FromAssessment(assessment));
        var engine = new SheetEngine(cells);
        int row = 7;
        int live = 0;
        foreach (SystemAssessment.AssessedState assessed in assessment.Points.SelectMany(p => p.States))
        {
            if (assessed.State is not { } state)
            {
                row++;
                continue;
            }

            for (int i = 0; i < state.Stages.Length; i++, row++)
            {
                if (i == 0)
                {
                    double rail = state
                        .Injectors.Where(s =>
                            state.Injectors.All(o => o.Pulse.Mass <= default(Mass)) || s.Pulse.Mass > default(Mass)
                        )
                        .Min(s => state.PressureAt(s.Seat.Node).AboveAmbient.Bars);
                    Close.WithinOf(1, Solved, rail, engine.Number("Assessment", At('D', row)));
                    live++;
                    if (state.Lambda is { } lambda)
                    {
                        Close.Within(Solved, lambda.ToRatio(), engine.Number("Assessment", At('G', row)));
                    }
                }

                SystemState.StageResult stage = state.Stages[i];
                if (stage.Period > default(Duration))
                {
                    Close.WithinOf(
                        10,
                        Solved,
                        stage.PulseWidth.Milliseconds,
                        engine.Number("Assessment", At('E', row))
                    );
                    Close.WithinOf(100, Solved, stage.DutyCycle.Percent, engine.Number("Assessment", At('F', row)));
                }
            }
        }

        Assert.True(live > 0);

        // Each injector's fuel, live in P, beside the solver's in Q.
        foreach (
            var key in cells.Keys.Where(k => k.Cell.StartsWith('Q') && cells.ContainsKey((k.Sheet, $"B{k.Cell[1..]}")))
        )
        {
            if (engine[key.Sheet, key.Cell] is double solved)
            {
                Close.WithinOf(Math.Max(solved, 1), Solved, solved, engine.Number(key.Sheet, $"P{key.Cell[1..]}"));
            }
        }
    }

    private static string At(char column, int row) => string.Create(CultureInfo.InvariantCulture, $"{column}{row}");

    /// <summary>The sheet of one point, into which numbers are typed.</summary>
    private sealed class Live
    {
        private const string Name = "point";
        private readonly Dictionary<(string Sheet, string Cell), string> cells;

        internal Live(OperatingPoint point) =>
            cells = WorkbookCells.Read(Workbook.FromAssessment(new SystemAssessment(VerdictCases.Healthy, [point])));

        internal double Number(string what) => new SheetEngine(cells).Number(Name, $"B{Row(what)}");

        internal object At(string column, int row) =>
            new SheetEngine(cells)[Name, string.Create(CultureInfo.InvariantCulture, $"{column}{row}")];

        /// <summary>A number of the first injector.</summary>
        internal double Column(char column) => Column(column, 0);

        /// <summary>What the four get in a cycle.</summary>
        internal double Fuel() => Enumerable.Range(0, 4).Sum(i => Column('P', i));

        private double Column(char column, int injector)
        {
            int head = int.Parse(Row("Injector"), CultureInfo.InvariantCulture);
            return new SheetEngine(cells).Number(Name, AssessmentWorkbookTests.At(column, head + 2 + injector));
        }

        internal void Type(string what, double number) =>
            cells[(Name, $"B{Row(what)}")] = number.ToString("R", CultureInfo.InvariantCulture);

        private string Row(string what) =>
            cells.Single(c => c.Key.Sheet == Name && c.Key.Cell.StartsWith('A') && c.Value == what).Key.Cell[1..];
    }
}

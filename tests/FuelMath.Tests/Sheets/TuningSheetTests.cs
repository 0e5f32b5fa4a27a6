using FuelMath.Bench;
using FuelMath.Tests.Assessments;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Sheets;

/// <summary>What a tuner types: under its verdict, with its conditions, and the same in every form.</summary>
public sealed class TuningSheetTests
{
    private static readonly Injector Rated = Workshop.Injector("rated", 500);

    private static readonly OperatingPoint[] Points =
    [
        VerdictCases.At(Workshop.Hold(1), 2500, 55),
        VerdictCases.At(Workshop.Open(0.9), 4000, 98),
    ];

    /// <summary>No sheet of a system that must not run says "enter" without "do not" before it.</summary>
    [Fact]
    public void Sheet_OfEachVerdict_SaysItInPlaceOfEnter() =>
        Assert.All(
            VerdictCases.All.Values,
            c =>
            {
                var sheet = new TuningSheet(new SystemAssessment(c.System, [c.Point]));

                Assert.Equal(
                    c.Kind == Verdict.Outcome.Holds,
                    sheet.Instruction.StartsWith("Enter", StringComparison.Ordinal)
                );
                Assert.Equal(
                    c.Kind == Verdict.Outcome.DoNotRun,
                    sheet.Instruction.StartsWith("DO NOT RUN", StringComparison.Ordinal)
                );
                Assert.All(sheet.Stages, s => Assert.Equal(c.Kind, s.Kind));
                Assert.All(
                    sheet.ToLines(TuningSheet.PageWidth),
                    l => Assert.InRange(l.Length, 0, TuningSheet.PageWidth)
                );
            }
        );

    /// <summary>A set that is not accepted says so on its own stage, though every point holds.</summary>
    [Fact]
    public void Sheet_SetNotAccepted_ActsFirst()
    {
        TuningSheet sheet = new(
            SystemAssessment.FromBench(
                VerdictCases.Healthy,
                Points,
                VerdictCases.Healthy,
                [new SystemAssessment.StageSet("primary", MeasuredTests.Report(500, 500, 500, 440))]
            )
        );

        Assert.Equal(Verdict.Outcome.ActFirst, sheet.Stages[0].Kind);
        Assert.StartsWith("Act first", sheet.Stages[0].Instruction, StringComparison.Ordinal);
    }

    [Fact]
    public void Head_Dated_CarriesTheDate()
    {
        SystemAssessment assessment = new(VerdictCases.Healthy, Points);

        Assert.Contains(
            "Date of the data: 2026-11-20",
            Text(TuningSheet.FromDated(assessment, new(2026, 11, 20))),
            StringComparison.Ordinal
        );
        Assert.Contains("Date of the data: not stated", Text(new(assessment)), StringComparison.Ordinal);
    }

    /// <summary>
    /// Source: the square-root law between two states, White 2003 section 6.12, worked by hand: mass with the root of pressure
    /// and density, volume with the root of pressure over density.
    /// </summary>
    [Fact]
    public void StaticFlow_AsTold_FollowsTheSquareRoot()
    {
        var sheet = new TuningSheet(new SystemAssessment(VerdictCases.Healthy, Points));
        InjectorStage stage = VerdictCases.Healthy.Stages[0];
        FlowRating rating = stage.Belief!.Injector.Rating;
        double rated = rating.StaticVolumeFlow.CubicCentimetersPerMinute;
        double density = stage.Belief!.Fuel.DensityAt(stage.Belief!.FuelTemperature).KilogramsPerCubicMeter;
        double pressures = stage.Belief!.DifferentialPressure.Pascals / rating.DifferentialPressure.Pascals;
        double densities = rating.FluidDensity.KilogramsPerCubicMeter / density;

        SheetTable table = Table(sheet, "static-flow");

        // A number is rounded to its last digit: it may be off by half of that.
        Assert.Equal(rated * Math.Sqrt(pressures * densities), Number(table, 1, 4), 0.051);
        Assert.Equal(rated * Math.Sqrt(pressures * densities) * density / 6e4, Number(table, 1, 5), 0.00051);
        Assert.Equal("none stated", table.Rows[1][7].Text);
    }

    /// <summary>
    /// Flows of 100, 100, 100 and 92 % with one dead time: against their mean of 98 % each asks for 98/100 or 98/92 of the fuel,
    /// at every width alike, so that nothing is left.
    /// </summary>
    [Fact]
    public void Trims_OfFlowsAlone_AreTheRatiosToTheMean()
    {
        SheetTable table = Table(Measured(500, 500, 500, 460), "injectors");

        Assert.All([0, 1, 2], i => Assert.Equal(100 * ((490.0 / 500) - 1), Number(table, i, 6), 0.051));
        Assert.Equal(100 * ((490.0 / 460) - 1), Number(table, 3, 6), 0.051);
        Assert.All([0, 1, 2, 3], i => Assert.Equal(0, Number(table, i, 8), 0.051));
        Assert.Equal("rejected", table.Rows[3][9].Text);
    }

    /// <summary>
    /// One injector opens 0.2 ms later, the others as told: it lacks 0.2 ms of each pulse, a share that is the larger the shorter
    /// the pulse. The trim stands between what the points ask for, and leaves half of the difference.
    /// </summary>
    [Fact]
    public void Trims_OfADeadTime_LeaveHalfOfWhatThePointsDifferBy()
    {
        Injector late = Workshop.Injector("late", 500, extraDeadMilliseconds: 0.2);
        SystemState[] states = [.. Points.Select(VerdictCases.Healthy.Solve)];
        double[] shares = [.. states.Select(s => 0.2 / s.Injectors[3].Pulse.EffectiveWidth.Milliseconds)];

        var trim = InjectorTrim.Of(
            Rated,
            late,
            states.Select(s => InjectorUse.Of(VerdictCases.Healthy, s, "primary", 3)!)
        )!;

        Assert.Equal(shares.Average(), trim.Trim, 0.002);
        Assert.Equal((shares.Max() - shares.Min()) / 2, Math.Abs(trim.Remains), 0.002);
        Assert.Equal(-shares.Max(), trim.Before, 0.002);
    }

    /// <summary>What lies outside the data, as a point that was refused, is empty, and never a number.</summary>
    [Fact]
    public void Points_Refused_HaveNoNumbers()
    {
        VerdictCase refused = VerdictCases.All["supply below the pump's data"];
        SheetTable table = Table(new(new SystemAssessment(refused.System, [refused.Point])), "points");

        Assert.Equal("not known", table.Rows[0][1].Text);
        Assert.All(table.Rows[0].Skip(3), c => Assert.True(c.IsEmpty));
    }

    [Fact]
    public void Tables_OfASheet_HaveNamesOfTheirOwnAndReadBack()
    {
        TuningSheet sheet = Measured(500, 498, 503, 499);

        Assert.Equal(sheet.Tables.Length, sheet.Tables.Select(t => t.Name).Distinct().Count());
        Assert.All(
            sheet.Tables,
            t =>
                Assert.Equal(
                    t.Rows.SelectMany(r => r).Select(c => c.Text),
                    SheetTable.FromJson(t.ToJson()).Rows.SelectMany(r => r).Select(c => c.Text)
                )
        );
    }

    private static double Number(SheetTable table, int row, int column) =>
        (double)table.Rows[row][column].Number!.Value;

    private static string Text(TuningSheet sheet) => string.Join(' ', sheet.Head(100));

    private static SheetTable Table(TuningSheet sheet, string name) =>
        sheet.Tables.First(t => t.Name.EndsWith(name, StringComparison.Ordinal));

    private static TuningSheet Measured(params double[] flows)
    {
        Injector[] fitted =
        [
            .. flows.Select(
                (f, i) => Rated.WithFlowScale($"number {i + 1}", Ratio.FromDecimalFractions(f / 500), Workshop.Invented)
            ),
        ];
        return new(
            SystemAssessment.FromBench(
                VerdictCases.Healthy,
                Points,
                VerdictCases.Healthy.WithInjectors("primary", fitted),
                [new SystemAssessment.StageSet("primary", MeasuredTests.Report(flows))]
            )
        );
    }
}

using FsCheck.Xunit;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>Two solves for each input, against random trials of that input alone.</summary>
[Properties(Arbitrary = [typeof(SystemArbitraries)], MaxTest = 20)]
public sealed class SystemSharesTests
{
    /// <summary>A standard deviation of 8,000 trials is known to 0.8 %: the agreement asked for is six times that.</summary>
    private const int Trials = 8_000;

    private const double Agreement = 0.05;

    /// <summary>Three solves don't follow a sharp bend all the way: such a part says so.</summary>
    private const double BentAgreement = 0.1;

    private static readonly DataSource Stated = new("Workshop-class", "invented scatter");

    private static readonly UncertainInput[] All =
    [
        UncertainInput.InjectorFlow(Ratio.FromPercent(2), SpreadShape.Normal, Stated),
        UncertainInput.EachInjectorFlow(Ratio.FromPercent(1.5), SpreadShape.Rectangular, Stated),
        UncertainInput.DeadTime(Duration.FromMilliseconds(0.04), SpreadShape.Triangular, Stated),
        UncertainInput.PumpFlow(Ratio.FromPercent(4), SpreadShape.Normal, Stated),
        UncertainInput.RegulatorSetPoint(Pressure.FromKilopascals(6), SpreadShape.ArcSine, Stated),
        UncertainInput.FuelDensity(Ratio.FromPercent(1), SpreadShape.Rectangular, Stated),
    ];

    private static readonly OperatingPoint Cruise = Workshop.Point(3000, 60, Workshop.Open(1));
    private static readonly OperatingPoint Hard = Workshop.Point(6000, 100, Workshop.Open(0.9));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Trait("Source", "JCGM-101")]
    public void Shares_OfEachInput_AreThoseOfTrialsOfItAlone(bool hard)
    {
        FuelSystem system = Workshop.Four();
        OperatingPoint point = hard ? Hard : Cruise;
        var shares = new SystemShares(system, point, All);
        (double Pressure, double Lambda, double Mean, double Duty)[] expected =
        [
            .. All.Select(input => Alone(system, point, input)),
        ];

        Hold(shares.PressureAt("rail start"), [.. expected.Select(e => e.Pressure)], p => p.Pascals);
        Hold(shares.LambdaOf(2), [.. expected.Select(e => e.Lambda)], r => r.DecimalFractions);
        Hold(shares.MeanLambda(), [.. expected.Select(e => e.Mean)], r => r.DecimalFractions);
        Assert.Equal(0, shares.DutyCycleOf("primary").StandardDeviation.DecimalFractions);
        Assert.Equal(1 + (2 * (All.Length + 3)), shares.SolveCount);
    }

    /// <summary>A controller that holds lambda moves the width instead.</summary>
    [Fact]
    [Trait("Source", "JCGM-101")]
    public void Shares_OfADutyCycle_AreThoseOfTrialsOfEachInputAlone()
    {
        FuelSystem system = Workshop.Four();
        OperatingPoint point = Workshop.Point(5000, 90, Workshop.Hold(0.9));

        Hold(
            new SystemShares(system, point, All).DutyCycleOf("primary"),
            [.. All.Select(input => Alone(system, point, input).Duty)],
            r => r.DecimalFractions
        );
    }

    [Property]
    public void Shares_OfAnyPoint_AddUpToAll(RigPoint point)
    {
        var shares = new SystemShares(Workshop.Four(), point.Open, All);
        ScatterShares<GaugePressure, Pressure> rail = shares.PressureAt("rail end");

        Close.Within(1e-12, 100, rail.Lines.Sum(l => l.Share.Percent));
        Close.Within(
            1e-12,
            rail.StandardDeviation.Pascals,
            Math.Sqrt(rail.Lines.Sum(l => l.StandardDeviation.Pascals * l.StandardDeviation.Pascals))
        );
        Assert.Equal(rail.Lines.OrderByDescending(l => l.Share.Percent), rail.Lines);
    }

    /// <summary>Two inputs of one kind add up as their squares.</summary>
    [Property]
    public void Shares_OfTheSameInputTwice_AreHalves(RigPoint point)
    {
        UncertainInput flow = All[0];
        var once = new SystemShares(Workshop.Four(), point.Open, [flow]);
        var twice = new SystemShares(Workshop.Four(), point.Open, [flow, flow]);

        Assert.All(twice.MeanLambda().Lines, l => Close.Within(1e-12, 50, l.Share.Percent));
        Close.Within(
            1e-12,
            Math.Sqrt(2) * once.MeanLambda().StandardDeviation.DecimalFractions,
            twice.MeanLambda().StandardDeviation.DecimalFractions
        );
    }

    /// <summary>Where nothing moves, nothing has a share.</summary>
    [Fact]
    public void Shares_WhereTheMixtureIsHeld_AreNone()
    {
        var shares = new SystemShares(
            Workshop.Four(),
            Workshop.Point(3000, 60, Workshop.Hold(1)),
            [UncertainInput.RegulatorSetPoint(Pressure.FromKilopascals(6), SpreadShape.Normal, Stated)]
        );

        Assert.InRange(shares.MeanLambda().StandardDeviation.DecimalFractions, 0, 1e-9);
        Assert.Equal(100, shares.PressureAt("rail end").Lines[0].Share.Percent);
    }

    [Fact]
    public void Shares_Refused_SayWhichInput()
    {
        FuelSystem system = Workshop.Four();
        UncertainInput dead = UncertainInput.DeadTime(Duration.FromMilliseconds(5), SpreadShape.Normal, Stated);

        NoSolutionException refused = Assert.Throws<NoSolutionException>(() => new SystemShares(system, Hard, [dead]));

        Refusal refusal = Refusal.Of(refused)!;
        Assert.Equal(RefusalCode.StateRefused, refusal.Code);
        Assert.Contains("dead time", refusal.Facts.Single(f => f.Name == "input").Text, StringComparison.Ordinal);
        Assert.True(refusal.Facts.Single(f => f.Name == "deviations").Value < 0);
        Assert.NotNull(refusal.Cause);
        Assert.Contains(refusal.Cause.Message, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Shares_OfWhatIsNotThere_Refuse()
    {
        FuelSystem system = Workshop.Four();
        var shares = new SystemShares(system, Hard, All);

        Assert.Throws<ArgumentException>("inputs", () => new SystemShares(system, Hard, []));
        Assert.Throws<ArgumentException>("node", () => shares.PressureAt("nowhere"));
        Assert.Throws<ArgumentOutOfRangeException>("chamber", () => shares.LambdaOf(5));
        Assert.Throws<ArgumentException>("stage", () => shares.DutyCycleOf("third"));
        Assert.Throws<ArgumentException>("inputs", () => new SystemAssessment(system, [Hard]).WithUncertainInputs([]));
    }

    [Fact]
    public void TuningSheet_OfAnAssessmentWithUncertainInputs_HoldsTheShares()
    {
        SystemAssessment plain = new(Workshop.Four(), [Cruise, Hard]);
        SystemAssessment assessment = plain.WithUncertainInputs(All);

        SheetTable table = new TuningSheet(assessment).Tables.Single(t => t.Name == "scatter");

        Assert.Equal(plain.Verdict.Kind, assessment.Verdict.Kind);
        SystemShares shares = assessment.Shares[0].Shares!;
        ScatterShares<Lambda, Ratio> lambda = shares
            .BestEstimate.Chambers.Select(c => shares.LambdaOf(c.Chamber))
            .MaxBy(s => s.StandardDeviation.DecimalFractions)!;
        ScatterShares<GaugePressure, Pressure> rail = shares.PressureAt("rail start");
        UncertainInput[] shown =
        [
            .. lambda
                .Lines.Where(l => l.Share.Percent >= 0.5 || ShareIn(rail, l.Input).Percent >= 0.5)
                .Select(l => l.Input),
        ];
        Assert.InRange(shown.Length, 1, All.Length);
        SheetTable.Cell[][] rows = [.. table.Rows.Take(shown.Length + 1).Select(r => r.ToArray())];
        Assert.Equal(
            [.. shown.Select(i => i.Kind), "all together"],
            rows.Select(r => r[1].Text.Replace(" (bent)", "", StringComparison.Ordinal))
        );
        Assert.All(
            shown.Zip(rows),
            pair =>
            {
                Assert.Equal(
                    Math.Round(ShareIn(lambda, pair.First).Percent),
                    (double)pair.Second[4].Number!.Value,
                    1e-9
                );
                Assert.Equal(Math.Round(ShareIn(rail, pair.First).Percent), (double)pair.Second[6].Number!.Value, 1e-9);
            }
        );
        Assert.DoesNotContain(new TuningSheet(plain).Tables, t => t.Name == "scatter");
        Assert.All(new TuningSheet(assessment).ToLines(92), line => Assert.True(line.Length <= 92));
    }

    private static Ratio ShareIn(ScatterShares<GaugePressure, Pressure> of, UncertainInput input) =>
        of.Lines.First(l => l.Input == input).Share;

    private static Ratio ShareIn(ScatterShares<Lambda, Ratio> of, UncertainInput input) =>
        of.Lines.First(l => l.Input == input).Share;

    private static (double Pressure, double Lambda, double Mean, double Duty) Alone(
        FuelSystem system,
        OperatingPoint point,
        UncertainInput input
    )
    {
        var run = new SystemMonteCarlo(system, point, [input], Trials, 7, null, CancellationToken.None);
        return (
            run.PressureAt("rail start").StandardDeviation.Pascals,
            run.LambdaOf(2).StandardDeviation.DecimalFractions,
            run.MeanLambda().StandardDeviation.DecimalFractions,
            run.DutyCycleOf("primary").StandardDeviation.DecimalFractions
        );
    }

    /// <summary>Holds what counts: parts of less than a thousandth of the scatter are rounding of the solver.</summary>
    private static void Hold<TValue, T>(ScatterShares<TValue, T> shares, double[] alone, Func<T, double> number)
    {
        double all = Math.Sqrt(alone.Sum(a => a * a));
        Close.WithinOf(all, Agreement, all, number(shares.StandardDeviation));
        foreach (ScatterShare<T> line in shares.Lines)
        {
            double expected = alone[Array.IndexOf(All, line.Input)];
            double tolerance = line.IsBent ? BentAgreement : Agreement;
            Close.WithinOf(Math.Max(expected, 1e-3 * all), tolerance, expected, number(line.StandardDeviation));
            Close.WithinOf(1, Agreement, expected * expected / (all * all), line.Share.DecimalFractions);
        }
    }
}

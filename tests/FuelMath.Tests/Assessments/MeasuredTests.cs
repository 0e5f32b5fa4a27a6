using System.Globalization;
using FuelMath.Bench;
using FuelMath.Tests.Documents;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>Injectors as measured: what the bench found, and what the engine makes of it.</summary>
public sealed class MeasuredTests
{
    private static readonly Injector Rated = Workshop.Injector("rated", 500);

    /// <summary>
    /// Dead times from 11 to 14 V: the state at cranking is refused as measured, though it holds as described. Nothing holds
    /// for want of data.
    /// </summary>
    [Fact]
    public void Assess_DeadTimesThatDoNotReachCranking_IsNotKnown()
    {
        Injector narrow = Rated.WithDeadTime(
            "narrow",
            DeadTimeTable.FromVoltage(
                [ElectricPotential.FromVolts(11), ElectricPotential.FromVolts(15)],
                Pressure.FromBars(3),
                [Duration.FromMilliseconds(1.1), Duration.FromMilliseconds(0.7)],
                OutsideRange.Refuse,
                Workshop.Invented
            )
        );
        OperatingPoint cranking = VerdictCases.At(Workshop.Open(0.7), 250, 98, 9.5, 15);

        SystemAssessment.PointAssessment point = Assess(
            VerdictCases.Healthy,
            [narrow, narrow, narrow, narrow],
            cranking
        ).Points[0];

        Assert.Equal(Verdict.Outcome.Holds, point.Of(SystemAssessment.StateBasis.AsDescribed)!.Verdict.Kind);
        Assert.IsType<OutsideTableException>(point.Of(SystemAssessment.StateBasis.AsMeasured)!.Refusal);
        Assert.Equal(Verdict.Outcome.NotKnown, point.Verdict.Kind);
        Assert.Equal(FindingCode.StateRefused, Assert.Single(point.Verdict.Reasons).Code);
        Assert.Equal(SystemAssessment.StateBasis.AsMeasured, point.Deciding.Basis);
    }

    /// <summary>A refusal is shown in our words, without the name of a parameter.</summary>
    [Fact]
    public void Assess_InAnotherCulture_SaysTheSame()
    {
        // A culture with the comma and a minus of its own, made here: the runtime carries no others.
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        (comma.NumberFormat.NumberDecimalSeparator, comma.NumberFormat.NegativeSign) = (",", "~");
        string[] plain = Texts();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(plain, Texts());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.All(plain, t => Assert.DoesNotContain("(Parameter", t, StringComparison.Ordinal));
    }

    /// <summary>All 7 % weak: a sensor takes that away, and without it the engine runs lean. Act first; it does not stop.</summary>
    [Fact]
    public void Assess_WeakSetUnderASensor_ActsFirst()
    {
        Injector weak = Rated.WithFlowScale("weak", Ratio.FromPercent(93), Workshop.Invented);

        SystemAssessment.PointAssessment point = Assess(
            VerdictCases.Healthy,
            [weak, weak, weak, weak],
            VerdictCases.At(Workshop.Hold(1))
        ).Points[0];

        Assert.Equal(Verdict.Outcome.Holds, point.Of(SystemAssessment.StateBasis.AsMeasured)!.Verdict.Kind);
        Assert.Equal(
            Verdict.Outcome.DoNotRun,
            point.Of(SystemAssessment.StateBasis.AsMeasuredUncorrected)!.Verdict.Kind
        );
        Assert.Equal(Verdict.Outcome.ActFirst, point.Verdict.Kind);
        Assert.Equal(SystemAssessment.StateBasis.AsMeasuredUncorrected, point.Deciding.Basis);
    }

    /// <summary>One reads 12 % low: not accepted, and in the verdict of the whole, whatever the points say.</summary>
    [Fact]
    public void StageSet_OneFarOff_IsNotAcceptedAndStandsInTheWhole()
    {
        var set = new SystemAssessment.StageSet("primary", Report(500, 500, 500, 440));

        SystemAssessment assessment = SystemAssessment.FromBench(
            VerdictCases.Healthy,
            [VerdictCases.At(Workshop.Hold(1))],
            VerdictCases.Healthy,
            [set]
        );

        Assert.Equal(Verdict.Outcome.Holds, assessment.Points[0].Verdict.Kind);
        Assert.Equal(
            (Verdict.Outcome.ActFirst, FindingCode.SetNotAccepted),
            (set.Verdict.Kind, set.Verdict.Reasons[0].Code)
        );
        Assert.Equal(Verdict.Outcome.ActFirst, assessment.Verdict.Kind);
    }

    [Fact]
    public void StageSet_AllAlike_Holds() =>
        Assert.Equal(
            Verdict.Outcome.Holds,
            new SystemAssessment.StageSet("primary", Report(500, 501, 499, 500)).Verdict.Kind
        );

    [Fact]
    public void Assess_AStageWithoutASet_SaysThatItWasNotJudged()
    {
        Verdict verdict = Assess(
            VerdictCases.Healthy,
            [Rated, Rated, Rated, Rated],
            VerdictCases.At(Workshop.Hold(1))
        ).Verdict;

        Assert.Equal(Verdict.Outcome.Holds, verdict.Kind);
        Assert.Equal(FindingCode.SetNotMeasured, Assert.Single(verdict.NotJudged).Code);
    }

    [Fact]
    public void FromBench_AStageThatIsNotThere_IsRefused() =>
        Words.Refused<ArgumentException>(
            "sets",
            "'tertiary'",
            () =>
                SystemAssessment.FromBench(
                    VerdictCases.Healthy,
                    [],
                    VerdictCases.Healthy,
                    [new SystemAssessment.StageSet("tertiary", Report(500, 500))]
                )
        );

    /// <summary>The bundled stand has two chambers and the bundled circuit car six; both call their stage the same.</summary>
    [Fact]
    public void FromBench_AnotherEngine_IsRefused()
    {
        FuelSystem two = SystemDocument.Read(TestFiles.System("training-stand"));
        FuelSystem six = SystemDocument.Read(TestFiles.System("circuit-car"));

        Assert.Equal(two.Stages.Select(s => s.Name), six.Stages.Select(s => s.Name));
        Words.Refused<ArgumentException>("measured", "2, 6", () => SystemAssessment.FromBench(two, [], six, []));
        Words.Refused<ArgumentException>("measured", "6, 2", () => SystemAssessment.FromBench(six, [], two, []));
    }

    [Fact]
    public void FromBench_InjectorsAtOtherPlaces_IsRefused()
    {
        FuelSystem four = Workshop.Four();
        InjectorStage stage = four.Stages[0];
        FuelSystem other = new(
            four.Name,
            four.Fuel,
            four.Engine,
            four.Network,
            [new InjectorStage(stage.Name, stage.Discharge, stage.PulsesPerCycle, stage.Seats.Reverse())],
            four.Power,
            four.Source
        );

        Words.Refused<ArgumentException>("measured", () => SystemAssessment.FromBench(four, [], other, []));
    }

    private static SystemAssessment Assess(FuelSystem system, Injector[] measured, OperatingPoint point) =>
        SystemAssessment.FromBench(system, [point], system.WithInjectors("primary", measured), []);

    private static string[] Texts() =>
        [
            .. VerdictCases.All.Values.SelectMany(c =>
                new SystemAssessment(c.System, [c.Point]).Verdict.Findings.Select(f => f.ToString())
            ),
        ];

    internal static SetReport Report(params double[] cubicCentimetersPerMinute) =>
        new(
            Rated.Rating,
            cubicCentimetersPerMinute.Select(
                (flow, i) =>
                    BenchedInjector.FromSeries(
                        $"number {i + 1}",
                        new BenchedInjector.Series([Reading(flow * 0.9995), Reading(flow * 1.0005)], [], [], [], [])
                    )
            ),
            AcceptanceLimits.CommonPractice,
            Ratio.FromPercent(95)
        );

    private static StaticFlowReading Reading(double cubicCentimeters) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromMicroliters(100)),
            Duration.FromMinutes(1),
            new BenchConditions(
                Rated.Rating.DifferentialPressure,
                Rated.Rating.Fluid,
                Rated.Rating.FluidTemperature,
                Workshop.Invented
            )
        );
}

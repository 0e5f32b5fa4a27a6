using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>A point where a sensor holds the mixture is judged with it and without it, whatever the injectors.</summary>
public sealed class SensorFailureTests
{
    private static readonly OperatingPoint Held = VerdictCases.At(Workshop.Hold(1));

    public static TheoryData<string> HeldCases =>
        [
            .. VerdictCases
                .All.Where(c => c.Value.Point.Command.Kind == FuelCommand.CommandKind.HoldLambda)
                .Select(c => c.Key),
        ];

    public static TheoryData<string> OtherCases =>
        [
            .. VerdictCases
                .All.Where(c => c.Value.Point.Command.Kind != FuelCommand.CommandKind.HoldLambda)
                .Select(c => c.Key),
        ];

    /// <summary>All 7 % weak, 1/0.93 is 7.5 % lean: nothing is wrong while the sensor works.</summary>
    [Fact]
    public void Assess_DescribedWeakInjectorsUnderASensor_ActsFirst()
    {
        var assessment = new SystemAssessment(VerdictCases.Fitted(0.93, 0.93, 0.93, 0.93), [Held]);
        SystemAssessment.PointAssessment point = assessment.Points[0];

        Assert.Equal(Verdict.Outcome.Holds, point.Of(SystemAssessment.StateBasis.AsDescribed)!.Verdict.Kind);
        Assert.Equal(
            Verdict.Outcome.DoNotRun,
            point.Of(SystemAssessment.StateBasis.AsDescribedUncorrected)!.Verdict.Kind
        );
        Assert.Equal(Verdict.Outcome.ActFirst, point.Verdict.Kind);
        Assert.Equal(SystemAssessment.StateBasis.AsDescribedUncorrected, point.Deciding.Basis);
        SystemAssessment.GroupedFinding lean = Assert.Single(
            assessment.Findings,
            f => f.Code == FindingCode.MixtureLean
        );
        Assert.Equal(Severity.Warning, lean.Severity);
        Assert.StartsWith("If the sensor fails: ", lean.What, StringComparison.Ordinal);
        Assert.InRange(
            point.Of(SystemAssessment.StateBasis.AsDescribedUncorrected)!.State!.Lambda!.Value.ToRatio(),
            1.0,
            1 / 0.93 * 1.01
        );
    }

    /// <summary>The state is the one of the same point in open loop, finding by finding.</summary>
    [Theory]
    [MemberData(nameof(HeldCases))]
    public void Assess_HeldPoint_HoldsTheStateOfOpenLoop(string name)
    {
        VerdictCase given = VerdictCases.All[name];
        OperatingPoint open = given.Point.WithCommand(FuelCommand.OpenLoop(given.Point.Command.Lambda!.Value));

        SystemAssessment.PointAssessment held = new SystemAssessment(given.System, [given.Point]).Points[0];
        SystemAssessment.PointAssessment alone = new SystemAssessment(given.System, [open]).Points[0];

        Assert.Equal(
            [SystemAssessment.StateBasis.AsDescribed, SystemAssessment.StateBasis.AsDescribedUncorrected],
            held.States.Select(s => s.Basis)
        );
        Assert.Equal(Lines(alone.States[0].Verdict), Lines(held.States[1].Verdict));
    }

    /// <summary>One state, and so one solve, where no sensor holds anything.</summary>
    [Theory]
    [MemberData(nameof(OtherCases))]
    public void Assess_NoSensor_HoldsOneState(string name)
    {
        VerdictCase given = VerdictCases.All[name];

        Assert.Equal(
            SystemAssessment.StateBasis.AsDescribed,
            Assert.Single(new SystemAssessment(given.System, [given.Point]).Points[0].States).Basis
        );
    }

    /// <summary>Nobody said what the controller was told: what it would give is not known, and a note says so.</summary>
    [Fact]
    public void Assess_WithoutBelief_SaysThatTheSensorsFailureIsNotJudged()
    {
        FuelSystem untold = WithoutBelief(VerdictCases.Healthy);

        SystemAssessment.PointAssessment point = new SystemAssessment(untold, [Held]).Points[0];

        SystemAssessment.AssessedState open = point.Of(SystemAssessment.StateBasis.AsDescribedUncorrected)!;
        Assert.Null(open.State);
        Assert.Equal(RefusalCode.Missing, Refusal.Of(open.Refusal!)!.Code);
        Assert.Equal(Verdict.Outcome.Holds, point.Verdict.Kind);
        Assert.Equal(FindingCode.SensorFailureNotJudged, Assert.Single(point.Verdict.NotJudged).Code);
    }

    /// <summary>Measured injectors, and nobody said what the controller was told: an answer, where an exception was.</summary>
    [Fact]
    public void FromBench_WithoutBelief_SaysThatTheSensorsFailureIsNotJudged()
    {
        FuelSystem untold = WithoutBelief(VerdictCases.Healthy);

        SystemAssessment.PointAssessment point = SystemAssessment.FromBench(untold, [Held], untold, []).Points[0];

        Assert.Equal(Verdict.Outcome.Holds, point.Verdict.Kind);
        Assert.Equal(4, point.States.Length);
        Assert.Equal(FindingCode.SensorFailureNotJudged, Assert.Single(point.Verdict.NotJudged).Code);
    }

    /// <summary>The weaker all injectors, the graver the verdict: 25 % more fuel is the limit of common practice, 5 % lean that of a mixture.</summary>
    [Property]
    public Property Assess_InjectorsEverWeaker_IsNeverBetter() =>
        Prop.ForAll(
            Gen.Zip(Gen.Choose(700, 1050), Gen.Choose(0, 100)).ToArbitrary(),
            pair =>
            {
                (double strong, double less) = (pair.Item1 / 1000.0, pair.Item2 / 1000.0);
                return Graver(Verdicts(strong - less)) >= Graver(Verdicts(strong));

                static int Graver(Verdict verdict) => (int)verdict.Kind;
                static Verdict Verdicts(double share) =>
                    new SystemAssessment(VerdictCases.Fitted(share, share, share, share), [Held]).Verdict;
            }
        );

    /// <summary>The wet air of a hot day lets the engine run rich without a sensor: what the sensor took away shows.</summary>
    [Fact]
    public void Assess_HumidAirUnderASensor_IsRichIfItFails()
    {
        IntakeAir air = new IntakeAir(Held.Air.Manifold, Held.Air.Ambient, Workshop.Celsius(40)).WithHumidity(
            new Humidity(Ratio.FromPercent(100), Workshop.Celsius(35))
        );

        SystemAssessment.PointAssessment point = new SystemAssessment(VerdictCases.Healthy, [Held.WithAir(air)]).Points[
            0
        ];

        // Water boils at 35 °C under 5.63 kPa (a table of steam, value from memory): 5.6 % of 100 kPa of air are no air.
        Finding rich = Assert.Single(point.Verdict.Reasons);
        Assert.Equal((FindingCode.MixtureRich, Severity.Warning), (rich.Code, rich.Severity));
    }

    private static string[] Lines(Verdict verdict) => [.. verdict.Findings.Select(f => f.ToString())];

    private static FuelSystem WithoutBelief(FuelSystem system) =>
        new(
            system.Name,
            system.Fuel,
            system.Engine,
            system.Network,
            system.Stages.Select(s => new InjectorStage(s.Name, s.Discharge, s.PulsesPerCycle, s.Seats)),
            system.Power,
            system.Source
        );
}

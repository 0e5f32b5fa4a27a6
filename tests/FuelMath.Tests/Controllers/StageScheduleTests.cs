using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Controllers;

/// <summary>A schedule of two or three stages: sizes in cm3/min, dead times and smallest widths in ms, transitions.</summary>
public sealed record Staging(double[] Flows, double[] Dead, double[] Smallest, double[] Transitions, int[] PerChamber)
{
    internal StageSchedule ToSchedule() =>
        new(
            Flows.Select(
                (flow, i) =>
                    new StageSchedule.Stage(
                        $"stage {i + 1}",
                        Trade.Injector(flow, Dead[i], Smallest[i]),
                        PerChamber[i],
                        Pressure.FromBars(3),
                        Trade.Density,
                        ElectricPotential.FromVolts(14)
                    )
            ),
            Transitions.Select(t => new StageSchedule.Transition(Trade.Share(t))),
            Trade.Milliseconds(20)
        );
}

public static class StagingArbitraries
{
    public static Arbitrary<Staging> Stagings() =>
        (
            from count in Gen.Choose(2, 3)
            from flows in Gen.Choose(20, 150).ArrayOf(count)
            from dead in Gen.Choose(5, 20).ArrayOf(count)
            from smallest in Gen.Choose(1, 8).ArrayOf(count)
            from first in Gen.Choose(50, 70)
            from second in Gen.Choose(0, 15)
            from per in Gen.Choose(1, 2).ArrayOf(count)
            select new Staging(
                [.. flows.Select(f => f * 10.0)],
                [.. dead.Select(d => d / 10.0)],
                [.. smallest.Select(s => s / 10.0)],
                count == 2 ? [first / 100.0] : [first / 100.0, (first + second) / 100.0],
                per
            )
        ).ToArbitrary();
}

/// <summary>Stages that share a demand: the laws, and what is refused.</summary>
public sealed class StageScheduleTests
{
    private const int Rows = 150;

    private static readonly Pressure Bar3 = Pressure.FromBars(3);

    private static readonly ElectricPotential Volts14 = ElectricPotential.FromVolts(14);

    private static StageSchedule Two(double transition = 0.6, double second = 700, double smallest = 0.3) =>
        new Staging([500, second], [1, 1.2], [0.3, smallest], [transition], [1, 1]).ToSchedule();

    /// <summary>
    /// Over the whole range: total is demand (so it is continuous and rises), and each stage is shut or at least at its
    /// smallest width. A width is found to 1e-14 of its span and a mass is a width times a flow: 1e-11.
    /// </summary>
    [Property(Arbitrary = [typeof(StagingArbitraries)])]
    public void At_AnyDemand_GivesItWithPulsesThatRepeat(Staging staging)
    {
        if (TryMake(staging) is not { } schedule)
        {
            return;
        }

        foreach (StageSchedule.StagedPulses row in schedule.Over(schedule.LeastMass, schedule.MostMass, Rows))
        {
            Close.Within(1e-11, row.Demand.Kilograms, row.Total.Kilograms);
            for (int i = 0; i < row.Stages.Length; i++)
            {
                StageSchedule.StagePulse stage = row.Stages[i];
                Assert.True(
                    stage.IsShut || stage.Pulse.EffectiveWidth.Milliseconds >= staging.Smallest[i] * (1 - 1e-9),
                    $"{stage.Name}: {stage.Pulse.EffectiveWidth.Milliseconds} ms"
                );
                Assert.False(stage.Pulse.IsHeldOpen);
            }
        }
    }

    /// <summary>The last stage never gives back: once open, more demand never means less of it.</summary>
    [Property(Arbitrary = [typeof(StagingArbitraries)])]
    public void Over_RisingDemand_TheLastStageNeverShrinks(Staging staging)
    {
        if (TryMake(staging) is not { } schedule)
        {
            return;
        }

        double before = 0;
        foreach (StageSchedule.StagedPulses row in schedule.Over(schedule.LeastMass, schedule.MostMass, Rows))
        {
            double mass = row.Stages[^1].MassPerCycle.Kilograms;
            Assert.True(mass >= before * (1 - 1e-9));
            before = mass;
        }
    }

    /// <summary>Alone up to 60 % of 20 ms; joined at the smallest pulse; alone again; then both with one duty cycle.</summary>
    [Fact]
    public void At_AroundTheTransition_JoinsAsStated()
    {
        StageSchedule schedule = Two();
        Mass joins = schedule.JoinsBeyond(2);
        double first = Trade.Injector(500).Rating.StaticMassFlow.KilogramsPerSecond;
        double second = Trade.Injector(700).Rating.StaticMassFlow.KilogramsPerSecond;

        Close.Within(1e-12, first * 0.011, joins.Kilograms);
        StageSchedule.StagedPulses alone = schedule.At(joins);
        Close.Within(1e-12, 12, alone.Stages[0].Pulse.PulseWidth.Milliseconds);
        Assert.True(alone.Stages[1].IsShut);
        Assert.Equal(0, alone.Stages[1].MassPerCycle.Kilograms);

        StageSchedule.StagedPulses joined = schedule.At(joins + Mass.FromKilograms(second * 0.1e-3));
        Close.Within(1e-9, 0.3, joined.Stages[1].Pulse.EffectiveWidth.Milliseconds);
        Close.Within(1e-9, 11 - (0.2 * 700 / 500), joined.Stages[0].Pulse.EffectiveWidth.Milliseconds);

        StageSchedule.StagedPulses filling = schedule.At(joins + Mass.FromKilograms(second * 4e-3));
        Close.Within(1e-9, 4, filling.Stages[1].Pulse.EffectiveWidth.Milliseconds);
        Close.Within(1e-9, 12, filling.Stages[0].Pulse.PulseWidth.Milliseconds);

        StageSchedule.StagedPulses together = schedule.At(
            Mass.FromKilograms((first * (16 - 1) * 1e-3) + (second * (16 - 1.2) * 1e-3))
        );
        Close.Within(1e-9, 16, together.Stages[0].Pulse.PulseWidth.Milliseconds);
        Close.Within(1e-9, 16, together.Stages[1].Pulse.PulseWidth.Milliseconds);
    }

    /// <summary>Just below and just above each join the total differs by no more than the demand does.</summary>
    [Fact]
    public void At_ThreeStages_IsContinuousAtBothJoins()
    {
        StageSchedule schedule = new Staging(
            [400, 600, 1000],
            [1, 1.1, 1.3],
            [0.3, 0.4, 0.5],
            [0.5, 0.7],
            [1, 1, 1]
        ).ToSchedule();
        foreach (int stage in new[] { 2, 3 })
        {
            Mass joins = schedule.JoinsBeyond(stage);
            StageSchedule.StagedPulses below = schedule.At(joins * (1 - 1e-9));
            StageSchedule.StagedPulses above = schedule.At(joins * (1 + 1e-9));

            Assert.True(below.Stages[stage - 1].IsShut);
            Assert.False(above.Stages[stage - 1].IsShut);
            Close.Within(3e-9, below.Total.Kilograms, above.Total.Kilograms);
        }

        // At the very end all three close in 0.4 ms of 20 ms.
        StageSchedule.StagedPulses most = schedule.At(schedule.MostMass);
        Assert.All(most.Stages, s => Close.Within(1e-9, 19.6, s.Pulse.PulseWidth.Milliseconds));
    }

    /// <summary>
    /// A slow secondary in a short cycle: its smallest pulse of 3.5 ms is longer than the transition's 3 ms of 6 ms. It stays
    /// at 3.5 ms until the primaries have come so far.
    /// </summary>
    [Theory]
    [InlineData(0.01)]
    [InlineData(0.4)]
    [InlineData(1.2)]
    public void At_SmallestPulseBeyondTheTransition_IsKept(double milligramsMore)
    {
        StageSchedule schedule = new(
            [
                new StageSchedule.Stage("first", Trade.Injector(500), 1, Bar3, Trade.Density, Volts14),
                new StageSchedule.Stage("slow", Trade.Injector(250, 1.5, 2), 1, Bar3, Trade.Density, Volts14),
            ],
            [new StageSchedule.Transition(Trade.Share(0.5))],
            Trade.Milliseconds(6)
        );
        Mass least = Trade.Injector(250, 1.5, 2).LeastMass(Bar3, Trade.Density);
        Mass demand = schedule.JoinsBeyond(2) + least + Mass.FromMilligrams(milligramsMore);
        StageSchedule.StagedPulses shared = schedule.At(demand);

        Close.Within(1e-11, demand.Kilograms, shared.Total.Kilograms);
        Assert.True(shared.Stages[1].Pulse.PulseWidth.Milliseconds >= 3.5 * (1 - 1e-12));
        Assert.True(shared.Stages[0].Pulse.PulseWidth.Milliseconds > 3);
    }

    [Fact]
    public void At_OneStage_IsItsOwnPulse()
    {
        StageSchedule schedule = new Staging([500], [1], [0.3], [], [2]).ToSchedule();

        // Two injectors a chamber share 20 mg.
        Close.Within(1e-12, 10, schedule.At(Mass.FromMilligrams(20)).Stages[0].Pulse.Mass.Milligrams);
    }

    /// <summary>A secondary whose smallest pulse is more than the primaries can give back has to join later, and it says when.</summary>
    [Fact]
    public void New_NoRoomToJoin_SaysFromWhichDutyCycleOn()
    {
        ArgumentException error = Words.Refused<ArgumentException>(
            "transitions",
            "'stage 2', 10.0 %",
            () => Two(transition: 0.1, smallest: 1)
        );

        // Primary 0.3 ms and secondary 1 ms x 7/5 at 500 cm3/min: 1.7 ms after 1 ms of dead time is 13.5 % of 20 ms.
        Words.Says("13.5 %", error);
        _ = Two(transition: 0.1351, smallest: 1);
    }

    [Fact]
    public void New_SecondaryFarTooLarge_SaysSo()
    {
        ArgumentException error = Words.Refused<ArgumentException>(
            "transitions",
            "'stage 2', 60.0 %",
            () => new Staging([100, 3000], [1, 1], [0.3, 2], [0.6], [1, 2]).ToSchedule()
        );
        Assert.Contains("no transition has room for it", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void New_TransitionWithoutTimeToClose_IsRefused() =>
        Words.Refused<ArgumentException>(
            "transitions",
            "1, 80.0 %, 85.0 %",
            () =>
                _ = new StageSchedule(
                    [Scheduled("a", 4), Scheduled("b", 4)],
                    [new StageSchedule.Transition(Trade.Share(0.85))],
                    Trade.Milliseconds(20)
                )
        );

    [Fact]
    public void New_CycleTooShort_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "cycle",
            "'a', 5.300 ms, 5.000 ms, 5 ms",
            () => _ = new StageSchedule([Scheduled("a", 4)], [], Trade.Milliseconds(5))
        );

    [Fact]
    public void New_FallingTransitions_IsRefused() =>
        Words.Refused<ArgumentException>(
            "transitions",
            "1",
            () => new Staging([500, 500, 500], [1, 1, 1], [0.3, 0.3, 0.3], [0.6, 0.5], [1, 1, 1]).ToSchedule()
        );

    [Fact]
    public void New_SameNameTwice_IsRefused() =>
        Words.Refused<ArgumentException>(
            "stages",
            "'a'",
            () =>
                _ = new StageSchedule(
                    [Scheduled("a", 0.4), Scheduled("a", 0.4)],
                    [new StageSchedule.Transition(Trade.Share(0.5))],
                    Trade.Milliseconds(20)
                )
        );

    /// <summary>
    /// Both held on for 20 ms less 0.4 ms to close, less 1 ms and 1.2 ms dead:
    /// 0.6838 mg/mm³ × (8.3333 × 18.6 + 11.6667 × 18.4) mm³ = 252.8 mg.
    /// </summary>
    [Fact]
    public void At_MoreThanAllGive_SaysHowMuchTheyDo() =>
        Words.Refused<ArgumentOutOfRangeException>("demand", "252.8, 1000", () => Two().At(Mass.FromMilligrams(1000)));

    [Fact]
    public void Over_LastBelowFirst_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "to",
            "20 mg, 10 mg",
            () => Two().Over(Mass.FromMilligrams(20), Mass.FromMilligrams(10), 5)
        );

    [Fact]
    public void JoinsBeyond_TheFirst_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("stage", "2, 1", () => Two().JoinsBeyond(1));

    private static StageSchedule.Stage Scheduled(string name, double closingMilliseconds) =>
        new(
            name,
            Trade.Injector(500, closingMilliseconds: closingMilliseconds),
            1,
            Pressure.FromBars(3),
            Trade.Density,
            ElectricPotential.FromVolts(14)
        );

    /// <summary>The schedule; null where a stage has no room to join, which is a refusal with words of its own.</summary>
    private static StageSchedule? TryMake(Staging staging)
    {
        try
        {
            return staging.ToSchedule();
        }
        catch (ArgumentException error) when (error.Message.Contains("cannot join", StringComparison.Ordinal))
        {
            return null;
        }
    }
}

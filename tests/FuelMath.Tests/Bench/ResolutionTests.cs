using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>
/// Readings that agree were rounded alike: wherever a reading has a step, its scatter is at least the step over sqrt 12.
/// </summary>
[Trait("Source", "JCGM-100")]
public sealed class ResolutionTests
{
    /// <summary>
    /// By hand: of 500 read twice in steps of 5, s = 5 / sqrt 12 = 1.443; t(3) = 3.182 and q(3, 3) = 5.91. Repeats that agree
    /// do not average their rounding out.
    /// </summary>
    [Fact]
    public void Report_RepeatsThatAgree_ScatterByTheStep()
    {
        SetReport report = Set(5, 3, [500, 500]);

        Close.Within(1e-12, 5 / Math.Sqrt(12) / 500, report.Repeatability!.Value.DecimalFractions);
        Close.Within(2e-4, 3.182 * 1.4434, report.Members[0].FlowHalfWidth!.Value.CubicCentimetersPerMinute);
        Close.WithinOf(1, 1e-5, 3.182 * Math.Sqrt(2) * 1.4434 / 500, report.LeastDifference!.Value.DecimalFractions);
        Close.WithinOf(1, 1e-5, 5.91 * 1.4434 / 500, report.LeastSpread.DecimalFractions);
        Assert.Equal(0, report.Spread.DecimalFractions);
        Assert.True(report.IsAccepted);
    }

    /// <summary>The same in a glass half as full: steps of 5 in 250 may hide a spread of more than 2 %.</summary>
    [Fact]
    public void Report_StepTooCoarseForTheSpread_IsUndecided()
    {
        SetReport report = Set(5, 3, [250, 250]);

        Assert.Equal(BenchVerdict.Undecided, report.SpreadVerdict);
        Assert.False(report.IsAccepted);
        Assert.Null(report.IsMatched);
        Assert.Equal([FindingCode.BenchTooCoarse, FindingCode.LeakageNotRead], report.Findings.Select(f => f.Code));
    }

    /// <summary>By hand: read once, equal flows may stand one step apart: 5 of 240 is more than 2 %, 5 of 260 less.</summary>
    [Theory]
    [InlineData(240, BenchVerdict.Undecided)]
    [InlineData(260, BenchVerdict.Accepted)]
    public void Report_ReadOnce_IsJudgedByOneStep(double flow, BenchVerdict expected) =>
        Assert.Equal(expected, Set(5, 4, [flow]).SpreadVerdict);

    /// <summary>4.6 % below the rating, by a glass whose half step is 0.5 %: it may lie beyond the limit of 5 %.</summary>
    [Fact]
    public void Report_ReadOnceWithinHalfAStepOfTheLimit_IsUndecided()
    {
        SetReport report = new(
            Read(500, 5, 300).ToRating(),
            [new("A", [Read(477, 5, 300)]), new("B", [Read(477, 5, 300)])],
            AcceptanceLimits.CommonPractice,
            TestBench.NinetyFive
        );

        Assert.Equal([false, false], report.Members.Select(m => m.IsFlowClear));
        Assert.Equal(BenchVerdict.Undecided, report.Verdict);
    }

    /// <summary>Readings exactly on a line: its interval is that of the step, which grows with it.</summary>
    [Fact]
    public void Characterization_ReadingsOnALine_ScatterByTheStep()
    {
        // By hand: 4 g over 1000 pulses in steps of 0.4 g: a pulse is known to 0.4 / sqrt 12 mg; slope 4 g/s from 3 to 11 ms.
        PulseCharacterization found = new(
            new[] { 3.0, 5, 7, 9, 11 }.Select(w => Pulse(w, 4 * (w - 1.2), 0.4)),
            Ratio.FromPercent(2),
            TestBench.NinetyFive
        );
        double deviation = 0.4 / Math.Sqrt(12);

        Close.Within(1e-9, deviation / Math.Sqrt(40), found.StaticMassFlowStandardError.GramsPerSecond);
        Close.Within(
            1e-9,
            deviation / 4 * Math.Sqrt((1 / 5.0) + (5.8 * 5.8 / 40)),
            found.DeadTimeStandardError.Milliseconds
        );
    }

    /// <summary>Repeats that agree measure no scatter, but the step does: means off by less than it are no bend.</summary>
    [Fact]
    public void LinearityTest_RepeatsThatAgree_TakesTheStep()
    {
        double[] off = [0.1, -0.1, -0.1, 0.1];
        PulseCharacterization found = new(
            new[] { 3.0, 5, 7, 9 }.SelectMany((w, i) => Enumerable.Repeat(Pulse(w, (4 * (w - 1.2)) + off[i], 0.4), 2)),
            Ratio.FromPercent(2),
            TestBench.NinetyFive
        );

        // By hand: eight readings leave 0.08 with two degrees of freedom, over 0.4 squared / 12.
        Close.Within(1e-6, 0.04 / (0.16 / 12), found.LinearityTest!.F);
        Assert.Empty(found.Findings);
    }

    /// <summary>Flows exactly on the root: their scatter is that of the step, and nothing speaks against the root.</summary>
    [Fact]
    public void Exponent_ReadingsOnTheRoot_ScatterByTheStep()
    {
        PressureExponentFit fit = new(
            new[] { 200.0, 300, 400, 500 }.Select(p => Read(500 * Math.Sqrt(p / 300), 5 * Math.Sqrt(p / 300), p)),
            TestBench.NinetyFive
        );

        Close.Within(1e-9, 0.01 / Math.Sqrt(12), fit.FittedScatter.DecimalFractions);
        Close.Within(1e-9, 0.01 / Math.Sqrt(12), fit.RootScatter.DecimalFractions);
        Assert.False(fit.IsRootRejected);
        Assert.True(fit.ToRating(Pressure.FromKilopascals(300), OutsideRange.Refuse).Exponent is null);
    }

    /// <summary>Slots one step apart are alike as far as such a glass can tell.</summary>
    [Fact]
    public void Slots_OneStepApart_AreAlike()
    {
        SlotComparison found = new(
            from injector in new[] { "A", "B", "C" }
            from slot in new[] { (Name: "1", Flow: 500.0), (Name: "2", Flow: 505.0) }
            select new SlotComparison.SlotReading(injector, slot.Name, Read(slot.Flow, 5, 300)),
            Read(500, 5, 300).ToRating(),
            Ratio.FromPercent(99)
        );

        Close.WithinOf(1, 5e-5, 0.01 / Math.Sqrt(12), found.Repeatability.DecimalFractions);
        Assert.True(found.AreSlotsAlike);
    }

    /// <summary>Dead times that follow a pattern exactly are known to their step.</summary>
    [Fact]
    public void Filled_ReadingsOnThePattern_ScatterByTheStep()
    {
        var readings =
            from volts in new[] { 12.0, 13, 14 }
            from bar in new[] { 3.0, 4 }
            where volts < 14 || bar < 4
            select new DeadTimeReading(
                ElectricPotential.FromVolts(volts),
                Duration.FromMilliseconds(1.5 - (0.1 * (volts - 12)) + (0.1 * (bar - 3))),
                Duration.FromMilliseconds(0.01),
                TestBench.At(100 * bar)
            );

        FilledDeadTimes filled = DeadTimeSeries.Fill(
            readings,
            FilledDeadTimes.FillPattern.Additive,
            OutsideRange.Refuse,
            TestBench.Source
        );

        Close.Within(1e-9, 0.01 / Math.Sqrt(12), filled.Scatter!.Value.Milliseconds);
    }

    /// <summary>No report claims to repeat better than its step, whatever was read.</summary>
    [Property]
    public Property Report_OfAnySet_RepeatsNoBetterThanItsStep() =>
        Prop.ForAll(
            Gen.Choose(100, 120).Select(i => 5.0 * i).ArrayOf(3).ArrayOf(4).ToArbitrary(),
            flows =>
            {
                SetReport report = new(
                    Read(500, 5, 300).ToRating(),
                    flows.Select((f, i) => new BenchedInjector($"injector {i}", f.Select(v => Read(v, 5, 300)))),
                    AcceptanceLimits.CommonPractice,
                    TestBench.NinetyFive
                );
                double least = 5 / Math.Sqrt(12);
                Assert.True(
                    report.Repeatability!.Value.DecimalFractions * report.MeanFlow.CubicCentimetersPerMinute
                        >= least * (1 - 1e-12)
                );
                Assert.All(
                    report.Members,
                    m => Assert.True(m.FlowHalfWidth!.Value.CubicCentimetersPerMinute >= 2 * least)
                );
                Assert.True(report.LeastSpread >= report.LeastDifference!.Value);
            }
        );

    private static SetReport Set(double step, int count, double[] flows) =>
        new(
            Read(flows[0], step, 300).ToRating(),
            Enumerable
                .Range(0, count)
                .Select(i => new BenchedInjector($"injector {i}", flows.Select(f => Read(f, step, 300)))),
            AcceptanceLimits.CommonPractice,
            TestBench.NinetyFive
        );

    private static DynamicFlowReading Pulse(double milliseconds, double milligrams, double stepGrams) =>
        new(
            Duration.FromMilliseconds(milliseconds),
            Duration.FromMilliseconds(20),
            1000,
            CollectedFuel.FromMass(Mass.FromGrams(milligrams), Mass.FromGrams(stepGrams)),
            ElectricPotential.FromVolts(13.5),
            TestBench.Conditions
        );

    private static StaticFlowReading Read(double cubicCentimeters, double step, double kilopascals) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromCubicCentimeters(step)),
            Duration.FromMinutes(1),
            TestBench.At(kilopascals)
        );
}

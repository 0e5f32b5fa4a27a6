using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

public sealed class LeakageTests
{
    /// <summary>
    /// One drop a minute, sure to 95 %. By the one-sided limits of the Poisson table: 0 drops are at most 2.996, 1 at most
    /// 4.744, 2 from 0.355 to 6.296, 4 from 1.366, 5 from 1.970 and 10 from 5.425 to 16.962, whatever the time.
    /// </summary>
    [Theory]
    [Trait("Source", "Garwood-1936")]
    [InlineData(0, 179, BenchVerdict.Undecided)]
    [InlineData(0, 180, BenchVerdict.Accepted)]
    [InlineData(1, 60, BenchVerdict.Undecided)]
    [InlineData(1, 284, BenchVerdict.Undecided)]
    [InlineData(1, 285, BenchVerdict.Accepted)]
    [InlineData(1, 3, BenchVerdict.Rejected)]
    [InlineData(1, 4, BenchVerdict.Undecided)]
    [InlineData(2, 60, BenchVerdict.Undecided)]
    [InlineData(2, 377, BenchVerdict.Undecided)]
    [InlineData(2, 378, BenchVerdict.Accepted)]
    [InlineData(5, 118, BenchVerdict.Rejected)]
    [InlineData(5, 119, BenchVerdict.Undecided)]
    [InlineData(5, 630, BenchVerdict.Undecided)]
    [InlineData(5, 631, BenchVerdict.Accepted)]
    [InlineData(2, 21, BenchVerdict.Rejected)]
    [InlineData(2, 22, BenchVerdict.Undecided)]
    [InlineData(5, 60, BenchVerdict.Rejected)]
    [InlineData(10, 325, BenchVerdict.Rejected)]
    [InlineData(10, 326, BenchVerdict.Undecided)]
    [InlineData(10, 1017, BenchVerdict.Undecided)]
    [InlineData(10, 1018, BenchVerdict.Accepted)]
    [InlineData(0, 2, BenchVerdict.Undecided)]
    public void Verdict_DropsOverATime_IsThatOfTheExactLimits(int drops, double seconds, BenchVerdict expected)
    {
        LeakageVerdict verdict = Of(Drops(drops, seconds));

        Assert.Equal(expected, verdict.Verdict);
        Close.WithinOf(1, 1e-12, drops / seconds * 60, verdict.ShareOfLimit.DecimalFractions);
        Assert.False(verdict.RestsOnDropVolume);
    }

    /// <summary>Readings at one pressure count together: 0 and 1 in 150 seconds each are 1 in 300.</summary>
    [Fact]
    public void Verdict_RepeatsAtOnePressure_CountTogether()
    {
        LeakageVerdict verdict = Of(Drops(0, 150), Drops(1, 150));

        Assert.Equal(BenchVerdict.Accepted, verdict.Verdict);
        Assert.Single(verdict.Conditions);
        Assert.Equal("0.2 drops/min at 3.00 bar", verdict.ToString());
    }

    /// <summary>Tight for ten minutes at 1 bar hides nothing of five drops a minute at 3 bar.</summary>
    [Fact]
    public void Verdict_TwoPressures_TheWorstDecides()
    {
        LeakageVerdict verdict = Of(At(1, 0, 600), Drops(5, 60));

        Assert.Equal(BenchVerdict.Rejected, verdict.Verdict);
        Assert.Equal(
            [(3.0, BenchVerdict.Rejected), (1.0, BenchVerdict.Accepted)],
            verdict.Conditions.Select(c => (Math.Round(c.DifferentialPressure.Bars, 9), c.Verdict))
        );
        Close.Within(1e-12, 5, verdict.ShareOfLimit.DecimalFractions);
        Close.Within(1e-12, 3, verdict.HighestDifferentialPressure.Bars);
    }

    /// <summary>Undecided at one pressure is undecided, though the other is accepted.</summary>
    [Fact]
    public void Verdict_OnePressureUndecided_IsUndecided() =>
        Assert.Equal(BenchVerdict.Undecided, Of(At(1, 0, 600), Drops(0, 60)).Verdict);

    /// <summary>Counts and volumes of one condition: long enough by one of them is enough.</summary>
    [Fact]
    public void Verdict_AShortVolumeBesideALongCount_IsThatOfTheCount() =>
        Assert.Equal(BenchVerdict.Accepted, Of(Drops(0, 600), Collected(0, 0.1, 10)).Verdict);

    /// <summary>
    /// By hand: a limit of 0.05 cm3/min in 4 minutes is 0.2 cm3, read in steps of 0.05: 0.15 is at most 0.2, 0.2 may be 0.25,
    /// 0.3 is at least 0.25.
    /// </summary>
    [Theory]
    [InlineData(0.15, BenchVerdict.Accepted)]
    [InlineData(0.2, BenchVerdict.Undecided)]
    [InlineData(0.25, BenchVerdict.Undecided)]
    [InlineData(0.3, BenchVerdict.Rejected)]
    public void Verdict_Volume_HasAStepToEitherSide(double cubicCentimeters, BenchVerdict expected)
    {
        var limit = AcceptanceLimits.LeakageLimit.FromVolume(
            VolumeFlow.FromCubicCentimetersPerMinute(0.05),
            TestBench.Source
        );
        var verdict = new LeakageVerdict(
            [Collected(cubicCentimeters, 0.05, 240)],
            limit,
            LeakageVerdict.DropVolume.Estimate,
            TestBench.NinetyFive
        );

        Assert.Equal(expected, verdict.Verdict);
        Assert.False(verdict.RestsOnDropVolume);
    }

    /// <summary>By hand: 0.1 cm3 in two minutes are 2.5 drops of 0.02 cm3 a minute; a measured drop of 0.06 gives 0.833.</summary>
    [Fact]
    public void Verdict_VolumeAgainstDrops_RestsOnTheDrop()
    {
        LeakageVerdict.Reading volume = Collected(0.1, 0.01, 120);
        LeakageVerdict estimated = Of(volume);
        var measured = new LeakageVerdict(
            [volume],
            AcceptanceLimits.LeakageLimit.CommonPractice,
            LeakageVerdict.DropVolume.FromVolume(Volume.FromCubicCentimeters(0.06), TestBench.Source),
            TestBench.NinetyFive
        );

        Assert.True(estimated.RestsOnDropVolume);
        Assert.True(estimated.Drop.IsEstimate);
        Assert.Equal(BenchVerdict.Rejected, estimated.Verdict);
        Close.Within(1e-12, 2.5, estimated.ShareOfLimit.DecimalFractions);
        Assert.False(measured.Drop.IsEstimate);
        Assert.Equal(BenchVerdict.Accepted, measured.Verdict);
        Close.Within(1e-12, 0.05 / 0.06, measured.ShareOfLimit.DecimalFractions);
    }

    /// <summary>
    /// By hand: three drops of 0.02 cm3 in four minutes are 0.015 cm3/min; 0.05 allows ten drops in that time, and three are
    /// at most 7.754.
    /// </summary>
    [Fact]
    public void Verdict_DropsAgainstVolume_RestsOnTheDrop()
    {
        var limit = AcceptanceLimits.LeakageLimit.FromVolume(
            VolumeFlow.FromCubicCentimetersPerMinute(0.05),
            TestBench.Source
        );
        var verdict = new LeakageVerdict(
            [Drops(3, 240)],
            limit,
            LeakageVerdict.DropVolume.Estimate,
            TestBench.NinetyFive
        );

        Assert.True(verdict.RestsOnDropVolume);
        Close.Within(1e-12, 0.3, verdict.ShareOfLimit.DecimalFractions);
        Assert.Equal(BenchVerdict.Accepted, verdict.Verdict);
        Assert.Equal("0.05 cm³/min", limit.ToString());
        Assert.Equal("0.015 cm³/min at 3.00 bar", verdict.ToString());
    }

    /// <summary>
    /// The share of wrong verdicts, by summing the distribution: at the limit itself so few drops that it is accepted, or so
    /// many that it is rejected, each come about in 5 % of cases or fewer.
    /// </summary>
    [Property]
    public Property Verdict_AtTheLimit_IsWrongInFivePercentOrFewer() =>
        Prop.ForAll(
            Gen.Choose(5, 3000).ToArbitrary(),
            seconds =>
            {
                double mean = seconds / 60.0;
                (double accepted, double rejected, double log) = (0, 0, -mean);
                for (int drops = 0; drops < 200; drops++)
                {
                    BenchVerdict verdict = Of(Drops(drops, seconds)).Verdict;
                    accepted += verdict == BenchVerdict.Accepted ? Math.Exp(log) : 0;
                    rejected += verdict == BenchVerdict.Rejected ? Math.Exp(log) : 0;
                    log += Math.Log(mean / (drops + 1));
                }

                return accepted <= 0.05 + 1e-12 && rejected <= 0.05 + 1e-12;
            }
        );

    /// <summary>A reading at another pressure never makes a verdict better.</summary>
    [Property]
    public Property Verdict_AnotherPressure_IsNoBetter() =>
        Prop.ForAll(
            (
                from drops in Gen.Choose(0, 30)
                from seconds in Gen.Choose(5, 600)
                from others in Gen.Choose(0, 30)
                from time in Gen.Choose(5, 600)
                select (drops, seconds, others, time)
            ).ToArbitrary(),
            given =>
            {
                LeakageVerdict.Reading reading = Drops(given.drops, given.seconds);
                BenchVerdict one = Of(reading).Verdict;
                BenchVerdict both = Of(reading, At(4, given.others, given.time)).Verdict;
                return one switch
                {
                    BenchVerdict.Rejected => both == BenchVerdict.Rejected,
                    BenchVerdict.Undecided => both != BenchVerdict.Accepted,
                    _ => true,
                };
            }
        );

    /// <summary>More drops in the same time never turn a rejection into anything else.</summary>
    [Property]
    public Property Verdict_MoreDrops_IsNoBetter() =>
        Prop.ForAll(
            (from drops in Gen.Choose(0, 30) from seconds in Gen.Choose(5, 600) select (drops, seconds)).ToArbitrary(),
            given =>
            {
                BenchVerdict one = Of(Drops(given.drops, given.seconds)).Verdict;
                BenchVerdict more = Of(Drops(given.drops + 1, given.seconds)).Verdict;
                return (one != BenchVerdict.Rejected || more == BenchVerdict.Rejected)
                    && (more != BenchVerdict.Accepted || one == BenchVerdict.Accepted);
            }
        );

    /// <summary>Readings at one condition add up: three drops in a minute come by chance in 8 % of cases, six in two minutes in 1.7 %.</summary>
    [Fact]
    public void Verdict_OfTwoCounts_IsThatOfTheirSum()
    {
        Assert.Equal(BenchVerdict.Undecided, Of(Drops(3, 60)).Verdict);
        Assert.Equal(BenchVerdict.Rejected, Of(Drops(3, 60), Drops(3, 60)).Verdict);
        Close.Within(1e-12, 3, Of(Drops(3, 60), Drops(3, 60)).ShareOfLimit.DecimalFractions);
    }

    /// <summary>Of two conditions that are rejected, the worst is the one that leaks most, whichever comes first.</summary>
    [Theory]
    [InlineData(3, 4)]
    [InlineData(4, 3)]
    public void Worst_OfTwoRejected_IsTheOneThatLeaksMost(double little, double much)
    {
        LeakageVerdict verdict = Of(At(little, 20, 60), At(much, 30, 60));

        Assert.Equal([BenchVerdict.Rejected, BenchVerdict.Rejected], verdict.Conditions.Select(c => c.Verdict));
        Close.Within(1e-12, 30, verdict.ShareOfLimit.DecimalFractions);
        Assert.Equal(much, verdict.Worst.DifferentialPressure.Bars, 1e-12);
        Close.Within(1e-12, 4, verdict.HighestDifferentialPressure.Bars);
    }

    /// <summary>One volume among counts of drops is enough to rest on the volume of a drop.</summary>
    [Fact]
    public void RestsOnDropVolume_OfBothKinds_IsTrue()
    {
        Assert.True(Of(Drops(0, 300), Collected(0.01, 0.01, 300)).RestsOnDropVolume);
        Assert.False(Of(Drops(0, 300), Drops(0, 200)).RestsOnDropVolume);
    }

    [Fact]
    public void Reading_Text_SaysWhatWasRead()
    {
        Assert.Equal("3 drops in 60 s", Drops(3, 60).ToString());
        Assert.Equal("100 mm3 in 120 s", Collected(0.1, 0.01, 120).ToString());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.01)]
    public void Volume_WithoutResolution_IsRefused(double step) =>
        Words.Refused<ArgumentOutOfRangeException>("resolution", () => Collected(0.1, step, 60));

    [Fact]
    public void Reading_KeepsItsUnits()
    {
        LeakageVerdict.Reading reading = Collected(0.1, 0.01, 120);

        Assert.Equal("0.1 cm³", reading.Collected?.ToString(CultureInfo.InvariantCulture));
        Assert.Equal("0.01 cm³", reading.Resolution?.ToString(CultureInfo.InvariantCulture));
        Assert.Equal("120 s", reading.Over.ToString(CultureInfo.InvariantCulture));
        Assert.Null(reading.Drops);
    }

    [Fact]
    public void Verdict_NoReading_IsRefused() => Words.Refused<ArgumentException>("readings", "1, 0", () => Of());

    [Fact]
    public void Drops_Negative_AreRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("drops", "0, 1000000, -1", () => Drops(-1, 60));

    [Fact]
    public void Drops_NoTime_AreRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("over", "0 s", () => Drops(1, 0));

    [Fact]
    public void Volume_Negative_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("collected", "-1 cm³", () => Collected(-1, 0.1, 60));

    private static LeakageVerdict Of(params LeakageVerdict.Reading[] readings) =>
        new(
            readings,
            AcceptanceLimits.LeakageLimit.CommonPractice,
            LeakageVerdict.DropVolume.Estimate,
            TestBench.NinetyFive
        );

    private static LeakageVerdict.Reading At(double bar, int drops, double seconds) =>
        LeakageVerdict.Reading.FromDrops(
            drops,
            Duration.FromSeconds(seconds),
            new BenchConditions(
                Pressure.FromBars(bar),
                TestBench.Conditions.Fluid,
                TestBench.Conditions.FluidTemperature,
                TestBench.Source
            )
        );

    private static LeakageVerdict.Reading Drops(int drops, double seconds) =>
        LeakageVerdict.Reading.FromDrops(drops, Duration.FromSeconds(seconds), TestBench.Conditions);

    private static LeakageVerdict.Reading Collected(double cubicCentimeters, double step, double seconds) =>
        LeakageVerdict.Reading.FromVolume(
            Volume.FromCubicCentimeters(cubicCentimeters),
            Volume.FromCubicCentimeters(step),
            Duration.FromSeconds(seconds),
            TestBench.Conditions
        );
}

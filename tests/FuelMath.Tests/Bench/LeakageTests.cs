using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

public sealed class LeakageTests
{
    /// <summary>The trade's limit: at most one drop a minute.</summary>
    [Theory]
    [Trait("Source", "Common-practice")]
    [InlineData(0, 60, BenchVerdict.Accepted)]
    [InlineData(1, 60, BenchVerdict.Accepted)]
    [InlineData(2, 60, BenchVerdict.Rejected)]
    [InlineData(5, 300, BenchVerdict.Accepted)]
    [InlineData(6, 300, BenchVerdict.Rejected)]
    [InlineData(0, 20, BenchVerdict.Undecided)]
    [InlineData(1, 20, BenchVerdict.Undecided)]
    [InlineData(3, 20, BenchVerdict.Rejected)]
    public void Verdict_DropsOverATime_IsThatOfTheTrade(int drops, double seconds, BenchVerdict expected)
    {
        LeakageVerdict verdict = Of(Drops(drops, seconds));

        Assert.Equal(expected, verdict.Verdict);
        Close.WithinOf(1, 1e-12, drops / seconds * 60, verdict.ShareOfLimit.DecimalFractions);
        Assert.False(verdict.RestsOnDropVolume);
    }

    /// <summary>Two readings count together: 0 and 1 in half a minute each are one a minute.</summary>
    [Fact]
    public void Verdict_Repeats_CountTogether()
    {
        LeakageVerdict verdict = Of(Drops(0, 30), Drops(1, 30));

        Assert.Equal(BenchVerdict.Accepted, verdict.Verdict);
        Assert.Equal("1 drops/min", verdict.ToString());
    }

    /// <summary>By hand: 0.1 cm3 in two minutes are 2.5 drops of 0.02 cm3 a minute; a measured drop of 0.06 gives 0.833.</summary>
    [Fact]
    public void Verdict_VolumeAgainstDrops_RestsOnTheDrop()
    {
        LeakageReading volume = Collected(0.1, 0.01, 120);
        LeakageVerdict estimated = Of(volume);
        var measured = new LeakageVerdict(
            [volume],
            LeakageLimit.CommonPractice,
            DropVolume.FromVolume(Volume.FromCubicCentimeters(0.06), TestBench.Source)
        );

        Assert.True(estimated.RestsOnDropVolume);
        Assert.True(estimated.Drop.IsEstimate);
        Assert.Equal(BenchVerdict.Rejected, estimated.Verdict);
        Close.Within(1e-12, 2.5, estimated.ShareOfLimit.DecimalFractions);
        Assert.False(measured.Drop.IsEstimate);
        Assert.Equal(BenchVerdict.Accepted, measured.Verdict);
        Close.Within(1e-12, 0.05 / 0.06, measured.ShareOfLimit.DecimalFractions);
    }

    /// <summary>By hand: three drops of 0.02 cm3 in two minutes are 0.03 cm3/min; the limit is 0.05.</summary>
    [Fact]
    public void Verdict_DropsAgainstVolume_RestsOnTheDrop()
    {
        var limit = LeakageLimit.FromVolume(VolumeFlow.FromCubicCentimetersPerMinute(0.05), TestBench.Source);
        var verdict = new LeakageVerdict([Drops(3, 120)], limit, DropVolume.Estimate);

        Assert.True(verdict.RestsOnDropVolume);
        Close.Within(1e-12, 0.6, verdict.ShareOfLimit.DecimalFractions);
        Assert.Equal(BenchVerdict.Accepted, verdict.Verdict);
        Assert.Equal("0.05 cm³/min", limit.ToString());
        Assert.Equal("0.03 cm³/min", verdict.ToString());
    }

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

    [Fact]
    public void Reading_KeepsItsUnits()
    {
        LeakageReading reading = Collected(0.1, 0.01, 120);

        Assert.Equal("0.1 cm³", reading.Collected.ToString());
        Assert.Equal("0.01 cm³", reading.Resolution.ToString());
        Assert.Equal("120 s", reading.Over.ToString());
        Assert.Null(reading.Drops);
    }

    [Fact]
    public void Verdict_NoReading_IsRefused() =>
        Words.Refused<ArgumentException>(
            "readings",
            "A verdict on leakage needs 1 or more points; 0 given.",
            () => Of()
        );

    [Fact]
    public void Drops_Negative_AreRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "drops",
            "Must be from 0 to 1000000; it was -1.",
            () => Drops(-1, 60)
        );

    [Fact]
    public void Drops_NoTime_AreRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "over",
            "Must be finite and greater than zero; it was 0 s.",
            () => Drops(1, 0)
        );

    [Fact]
    public void Volume_Negative_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "collected",
            "Must be finite and not negative; it was -1 cm³.",
            () => Collected(-1, 0.1, 60)
        );

    private static LeakageVerdict Of(params LeakageReading[] readings) =>
        new(readings, LeakageLimit.CommonPractice, DropVolume.Estimate);

    private static LeakageReading Drops(int drops, double seconds) =>
        LeakageReading.FromDrops(drops, Duration.FromSeconds(seconds), TestBench.Conditions);

    private static LeakageReading Collected(double cubicCentimeters, double step, double seconds) =>
        LeakageReading.FromVolume(
            Volume.FromCubicCentimeters(cubicCentimeters),
            Volume.FromCubicCentimeters(step),
            Duration.FromSeconds(seconds),
            TestBench.Conditions
        );
}

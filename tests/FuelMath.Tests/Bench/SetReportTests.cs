using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

public sealed class SetReportTests
{
    /// <summary>
    /// Rated 1000 cm3/min, read 700, 850 and 940. By hand: mean 830, spread 240 / mean = 28.92 %, deviations -130, 20 and
    /// 110, coefficient of variation with n - 1 sqrt(14 700) / 830 = 14.61 %; the weakest has 70 % of the rating.
    /// </summary>
    [Fact]
    [Trait("Source", "Common-practice")]
    public void Report_OfAWeakSet_RejectsIt()
    {
        SetReport report = Of(700, 850, 940);

        Close.WithinOf(1, 5e-5, 0.28916, report.Spread.DecimalFractions);
        Close.WithinOf(1, 5e-5, 0.14608, report.CoefficientOfVariation.DecimalFractions);
        Close.Within(1e-12, 830, report.MeanFlow.CubicCentimetersPerMinute);
        Close.Within(1e-11, (700 / 1000.0) - 1, report.Members[0].FromRating.DecimalFractions);
        Close.Within(1e-11, (700 / 830.0) - 1, report.Members[0].FromMean.DecimalFractions);
        Assert.Equal([3, 2, 1], report.Members.Select(m => m.Rank));
        Assert.False(report.IsAccepted);
        Assert.Equal(false, report.IsMatched);
        Assert.DoesNotContain(report.Members, m => m.IsAccepted);
    }

    [Fact]
    public void Report_OfAMatchedSet_AcceptsIt() => Assert.True(Of(1000, 994, 1006, 1010).IsAccepted);

    /// <summary>Matched among each other, but one lies beyond the limit about the rating.</summary>
    [Fact]
    public void Report_MatchedButWeak_IsNotAccepted()
    {
        SetReport report = Of(953, 947, 951);

        Assert.Equal(true, report.IsMatched);
        Assert.Equal([true, false, true], report.Members.Select(m => m.IsAccepted));
        Assert.False(report.IsAccepted);
    }

    /// <summary>The theorem: one apart from all others, which agree, has the largest score that is possible.</summary>
    [Theory]
    [Trait("Source", "Shiffler-1988")]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(10)]
    public void StandardScore_OneApart_IsTheLargestPossible(int count)
    {
        SetReport report = Of([.. Enumerable.Repeat(1000.0, count - 1), 10]);

        Close.Within(1e-9, (count - 1) / Math.Sqrt(count), report.LargestPossibleScore.DecimalFractions);
        Close.Within(
            1e-9,
            -report.LargestPossibleScore.DecimalFractions,
            report.Members[^1].StandardScore.DecimalFractions
        );
        Assert.True(report.LargestPossibleScore.DecimalFractions < 3);
    }

    /// <summary>
    /// By hand: from 800 to 1000 is a quarter more; repeats 990 and 1010 reach t(1) x 10 = 127.06 to either side. They are the
    /// only repeats of the set, so that a single reading scatters by their standard deviation, sqrt 2 times as much.
    /// </summary>
    [Fact]
    public void Report_CleaningAndRepeats_AreShown()
    {
        SetReport report = new(
            Rating,
            [
                BenchedInjector.FromCleaning("A", [Reading(800)], [Reading(990), Reading(1010)]),
                new("B", [Reading(1000)]),
            ],
            AcceptanceLimits.CommonPractice,
            TestBench.NinetyFive
        );

        Close.Within(1e-11, 0.25, report.Members[0].CleaningGain!.Value.DecimalFractions);
        Close.Within(1e-4, 127.06, report.Members[0].FlowHalfWidth!.Value.CubicCentimetersPerMinute);
        Assert.Null(report.Members[1].CleaningGain);
        Close.Within(1e-4, 179.69, report.Members[1].FlowHalfWidth!.Value.CubicCentimetersPerMinute);
    }

    /// <summary>A set read at 4/3 of the rated pressure flows sqrt(4/3) as much, and is carried back.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void Report_ReadAtAnotherPressure_IsCarriedToTheRating()
    {
        SetReport report = new(
            Rating,
            [
                new("A", [Reading(1000 * 1.154700538, TestBench.At(400))]),
                new("B", [Reading(1000, TestBench.Conditions)]),
            ],
            AcceptanceLimits.CommonPractice,
            TestBench.NinetyFive
        );

        Close.Within(1e-9, 1000, report.Members[0].Flow.CubicCentimetersPerMinute);
    }

    [Fact]
    public void Report_OneInjector_IsRefused() => Words.Refused<ArgumentException>("injectors", "2, 1", () => Of(1000));

    [Fact]
    public void BenchedInjector_NoReading_IsRefused() =>
        Words.Refused<ArgumentException>("readings", "1, 0", () => _ = new BenchedInjector("A", []));

    [Fact]
    public void Limits_Zero_AreRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "spread",
            "0 %",
            () => _ = new AcceptanceLimits(Ratio.FromPercent(0), Ratio.FromPercent(5), TestBench.Source)
        );

    private static FlowRating Rating { get; } =
        FlowRating.FromVolume(
            VolumeFlow.FromCubicCentimetersPerMinute(1000),
            TestBench.Conditions.DifferentialPressure,
            TestBench.Conditions.Fluid,
            TestBench.Conditions.FluidTemperature,
            TestBench.Source
        );

    private static SetReport Of(params double[] flows) =>
        new(
            Rating,
            flows.Select((f, i) => new BenchedInjector($"injector {i + 1}", [Reading(f)])),
            AcceptanceLimits.CommonPractice,
            TestBench.NinetyFive
        );

    private static StaticFlowReading Reading(double cubicCentimeters) =>
        Reading(cubicCentimeters, TestBench.Conditions);

    private static StaticFlowReading Reading(double cubicCentimeters, BenchConditions conditions) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromCubicCentimeters(1)),
            Duration.FromMinutes(1),
            conditions
        );
}

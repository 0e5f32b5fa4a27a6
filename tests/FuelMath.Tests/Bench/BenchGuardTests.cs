using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>What readings of a bench refuse, and how several of a kind go together.</summary>
public sealed class BenchGuardTests
{
    /// <summary>A dead time may be negative, as a fitted one is; its resolution is above zero.</summary>
    [Fact]
    public void DeadTimeReading_WithoutResolution_IsRefused()
    {
        static DeadTimeReading Of(double dead, double resolution) =>
            new(
                ElectricPotential.FromVolts(14),
                Duration.FromMilliseconds(dead),
                Duration.FromMilliseconds(resolution),
                TestBench.Conditions
            );

        Assert.Equal(-0.1, Of(-0.1, 0.01).DeadTime.Milliseconds, 1e-12);
        Words.Refused<ArgumentOutOfRangeException>("resolution", () => Of(1, 0));
        Words.Refused<ArgumentOutOfRangeException>("resolution", () => Of(1, -0.01));
    }

    /// <summary>
    /// Readings at one condition add up, by hand: 0.05 cm³/min in two times two minutes are 0.2 cm³; each step of 0.02 may be
    /// missing once in each reading.
    /// </summary>
    [Theory]
    [InlineData(0.08, 0.08, BenchVerdict.Accepted)]
    [InlineData(0.07, 0.11, BenchVerdict.Undecided)]
    [InlineData(0.12, 0.12, BenchVerdict.Undecided)]
    [InlineData(0.12, 0.13, BenchVerdict.Rejected)]
    public void Leakage_OfTwoReadings_IsJudgedByTheirSum(double first, double second, BenchVerdict expected)
    {
        LeakageVerdict.Reading Collected(double cubicCentimeters) =>
            LeakageVerdict.Reading.FromVolume(
                Volume.FromCubicCentimeters(cubicCentimeters),
                Volume.FromCubicCentimeters(0.02),
                Duration.FromMinutes(2),
                TestBench.Conditions
            );
        var verdict = new LeakageVerdict(
            [Collected(first), Collected(second)],
            AcceptanceLimits.LeakageLimit.FromVolume(VolumeFlow.FromCubicCentimetersPerMinute(0.05), TestBench.Source),
            LeakageVerdict.DropVolume.Estimate,
            TestBench.NinetyFive
        );

        Assert.Equal(expected, verdict.Verdict);
        Close.Within(1e-12, (first + second) / 0.2, verdict.ShareOfLimit.DecimalFractions);
    }

    /// <summary>A tolerance of half is taken, and nothing above, nor zero.</summary>
    [Theory]
    [InlineData(0.5, true)]
    [InlineData(0.501, false)]
    [InlineData(2, false)]
    [InlineData(0, false)]
    public void Characterization_Tolerance_EndsAtAHalf(double tolerance, bool taken)
    {
        PulseCharacterization Of() =>
            new(
                [.. new[] { 2.0, 3, 4, 5 }.Select(w => TestBench.Pulse(w, 5 * (w - 1)))],
                Ratio.FromDecimalFractions(tolerance),
                TestBench.NinetyFive
            );

        if (taken)
        {
            Assert.Equal(tolerance, Of().LinearityTolerance.DecimalFractions);
        }
        else
        {
            Words.Refused<ArgumentOutOfRangeException>("linearityTolerance", () => Of());
        }
    }

    /// <summary>A placement needs a point, and a point a stage.</summary>
    [Fact]
    public void Placement_WithoutPoints_IsRefused()
    {
        Injector[] two = [Systems.Workshop.Injector("a", 500), Systems.Workshop.Injector("b", 510)];
        Ratio[] air = [Ratio.FromDecimalFractions(1), Ratio.FromDecimalFractions(1)];

        Words.Refused<RefusedArgumentException>("points", () => _ = new Placement(two, air, []));
        Words.Refused<RefusedArgumentException>("pulseWidths", () => Point([]));
    }

    /// <summary>Every order is equal only with one stage, equal air, and as many injectors as chambers.</summary>
    [Theory]
    [InlineData(2, 1, 1, true)]
    [InlineData(2, 1, 1.1, false)]
    [InlineData(3, 1, 1, false)]
    [InlineData(4, 2, 1, false)]
    public void EveryOrderIsEqual_OnlyWhereNothingCanDiffer(int injectors, int stages, double otherAir, bool expected)
    {
        var placement = new Placement(
            [.. Enumerable.Range(0, injectors).Select(i => Systems.Workshop.Injector($"i{i}", 500 + (5 * i)))],
            [Ratio.FromDecimalFractions(1), Ratio.FromDecimalFractions(otherAir)],
            [Point([.. Enumerable.Repeat(Duration.FromMilliseconds(5), stages)])]
        );

        Assert.Equal(expected, placement.EveryOrderIsEqual);
    }

    private static Placement.Point Point(Duration[] widths) =>
        new(
            "hard",
            widths,
            Duration.FromMilliseconds(20),
            Pressure.FromBars(3),
            Density.FromKilogramsPerCubicMeter(745),
            ElectricPotential.FromVolts(13.5)
        );
}

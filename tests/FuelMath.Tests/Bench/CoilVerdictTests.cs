using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>A coil against its band: half a step of the meter to either side decides nothing.</summary>
public sealed class CoilVerdictTests
{
    /// <summary>A step of 0.2 may hide 0.1 to either side of a band from 12 to 13 Ω.</summary>
    [Theory]
    [InlineData(12.05, BenchVerdict.Undecided)]
    [InlineData(12.11, BenchVerdict.Accepted)]
    [InlineData(12.89, BenchVerdict.Accepted)]
    [InlineData(12.95, BenchVerdict.Undecided)]
    [InlineData(13.09, BenchVerdict.Undecided)]
    [InlineData(13.11, BenchVerdict.Rejected)]
    [InlineData(11.91, BenchVerdict.Undecided)]
    [InlineData(11.89, BenchVerdict.Rejected)]
    public void Verdict_NearTheBand_IsUndecidedByHalfAStep(double ohms, BenchVerdict expected) =>
        Assert.Equal(expected, Of(12, 13, Read(ohms, 0.2)).Verdict);

    /// <summary>In numbers that a binary fraction holds: 8 Ω in steps of 2 lie half a step from 9, and from 7.</summary>
    [Theory]
    [InlineData(4, 9, BenchVerdict.Accepted)]
    [InlineData(7, 16, BenchVerdict.Accepted)]
    [InlineData(4, 7, BenchVerdict.Rejected)]
    [InlineData(9, 16, BenchVerdict.Rejected)]
    public void Verdict_JustHalfAStepAway_IsDecided(double least, double most, BenchVerdict expected) =>
        Assert.Equal(expected, Of(least, most, Read(8, 2)).Verdict);

    /// <summary>Several readings count by their mean, and by the coarsest of their steps.</summary>
    [Theory]
    [InlineData(12.7, 12.9, 0.1, 0.3, BenchVerdict.Accepted)]
    [InlineData(12.7, 12.9, 0.1, 0.5, BenchVerdict.Undecided)]
    [InlineData(12.7, 12.9, 0.5, 0.1, BenchVerdict.Undecided)]
    [InlineData(12.9, 13.5, 0.1, 0.1, BenchVerdict.Rejected)]
    public void Verdict_OfTwoReadings_IsThatOfTheirMean(
        double one,
        double other,
        double step,
        double otherStep,
        BenchVerdict expected
    )
    {
        CoilVerdict verdict = Of(12, 13, Read(one, step), Read(other, otherStep));

        Assert.Equal(expected, verdict.Verdict);
        Close.Within(1e-12, (one + other) / 2, verdict.AtTwentyCelsius.Ohms);
    }

    [Fact]
    public void Verdict_OfNothing_IsRefused() =>
        Words.Refused<RefusedArgumentException>("readings", "1, 0", () => Of(12, 13));

    /// <summary>A meter that reads in steps above what it reads says nothing.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(12.51)]
    public void Reading_WithoutResolution_IsRefused(double step) =>
        Words.Refused<ArgumentOutOfRangeException>("resolution", () => Read(12.5, step));

    /// <summary>A band has a width.</summary>
    [Theory]
    [InlineData(12, 12, "most")]
    [InlineData(0, 12, "least")]
    [InlineData(-1, 12, "least")]
    public void Band_WithoutWidth_IsRefused(double least, double most, string name) =>
        Words.Refused<ArgumentOutOfRangeException>(name, () => Band(least, most));

    private static CoilVerdict Of(double least, double most, params CoilVerdict.Reading[] readings) =>
        new(readings, Band(least, most));

    private static AcceptanceLimits.CoilBand Band(double least, double most) =>
        new(ElectricResistance.FromOhms(least), ElectricResistance.FromOhms(most), TestBench.Source);

    private static CoilVerdict.Reading Read(double ohms, double step) =>
        new(
            new CoilResistance(ElectricResistance.FromOhms(ohms), Temperature.FromDegreesCelsius(20)),
            ElectricResistance.FromOhms(step)
        );
}

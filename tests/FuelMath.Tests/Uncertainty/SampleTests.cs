using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Uncertainty;

public sealed class SampleTests
{
    /// <summary>
    /// Certified mean and standard deviation. The readings are decimal fractions that doubles round: at 300 by 3e-14, which
    /// is 4e-13 of the deviation; at ten million by 9e-10, which is 1e-8 of a deviation of 0.1; at a million a tenth of that.
    /// </summary>
    [Theory]
    [Trait("Source", "NIST-StRD")]
    [InlineData("Michelso", 299.8524, 0.0790105478190518, 1e-12)]
    [InlineData("NumAcc1", 10000002, 1, 1e-15)]
    [InlineData("NumAcc2", 1.2, 0.1, 1e-14)]
    [InlineData("NumAcc3", 1000000.2, 0.1, 1e-9)]
    [InlineData("NumAcc4", 10000000.2, 0.1, 1e-8)]
    public void Sample_ReferenceData_GivesTheCertifiedValues(
        string set,
        double mean,
        double deviation,
        double tolerance
    )
    {
        var sample = new Sample(Data(set));

        Close.Within(1e-15, mean, sample.Mean);
        Close.Within(tolerance, deviation, sample.StandardDeviation);
    }

    /// <summary>Table G.2, half a unit of the last printed digit.</summary>
    [Theory]
    [Trait("Source", "JCGM-100")]
    [InlineData(16, 95, 2.12)]
    [InlineData(16, 95.45, 2.17)]
    [InlineData(16, 99, 2.92)]
    [InlineData(1_000_000, 95.45, 2.00)]
    public void TwoSided_TableOfStudent_GivesThePublishedFactor(int degrees, double percent, double factor) =>
        Assert.InRange(Student.TwoSided(degrees, Ratio.FromPercent(percent)), factor - 0.005, factor + 0.005);

    /// <summary>Closed forms: one degree of freedom is Cauchy's distribution, two give t = p' sqrt(2 / (1 - p'^2)).</summary>
    [Theory]
    [Trait("Source", "Definition")]
    [InlineData(50)]
    [InlineData(90)]
    [InlineData(95)]
    [InlineData(99.99)]
    public void TwoSided_OneAndTwoDegrees_MatchTheClosedForm(double percent)
    {
        Ratio confidence = Ratio.FromPercent(percent);
        double share = percent / 100;

        Close.Within(1e-10, Math.Tan(Math.PI / 2 * share), Student.TwoSided(1, confidence));
        Close.Within(1e-10, share * Math.Sqrt(2 / (1 - (share * share))), Student.TwoSided(2, confidence));
    }

    /// <summary>By hand: 1, 2, 3 have mean 2 and deviation 1; t of two degrees at 95 % is 4.302653.</summary>
    [Fact]
    public void MeanInterval_ThreeReadings_MatchesTheHandCalculation()
    {
        Interval interval = new Sample([1, 2, 3]).MeanInterval(Ratio.FromPercent(95));

        Close.Within(1e-6, 2 - (4.302653 / Math.Sqrt(3)), interval.Low);
        Close.Within(1e-6, 2 + (4.302653 / Math.Sqrt(3)), interval.High);
    }

    [Fact]
    public void Sample_AllTheSame_HasNoScatter() => Assert.Equal(0, new Sample([0.1, 0.1, 0.1]).StandardDeviation);

    /// <summary>A scatter of these would be finite, but what squares it, such as a test of two scatters, would not.</summary>
    [Fact]
    public void Sample_BeyondWhatSquaresHold_IsRefused() =>
        Assert.Equal("values", Assert.Throws<ArgumentException>(() => new Sample([1e200, 2e200, 3e200])).ParamName);

    /// <summary>Squares of these would leave the range of doubles.</summary>
    [Theory]
    [InlineData(1e-200)]
    [InlineData(1e149)]
    public void Sample_TinyAndHuge_KeepTheirScatter(double unit) =>
        Close.Within(1e-14, unit, new Sample([unit, 2 * unit, 3 * unit]).StandardDeviation);

    [Fact]
    public void Sample_OneReading_IsRefused() =>
        Words.Refused<ArgumentException>("values", "2, 1", () => _ = new Sample([1]));

    [Fact]
    public void Sample_Infinity_IsRefused() =>
        Words.Refused<ArgumentException>("values", "1", () => _ = new Sample([1, double.PositiveInfinity]));

    [Theory]
    [InlineData(49)]
    [InlineData(100)]
    public void TwoSided_OtherConfidence_IsRefused(double percent) =>
        Words.Refused<ArgumentOutOfRangeException>(
            "confidence",
            $"50 %, 99.99 %, {percent} %",
            () => Student.TwoSided(3, Ratio.FromPercent(percent))
        );

    private static double[] Data(string set) =>
        set switch
        {
            "Michelso" => [.. CsvRows.Read("Uncertainty/Data/michelso.csv").Select(r => r.Number("y"))],
            "NumAcc1" => [10000001, 10000003, 10000002],
            "NumAcc2" => Alternating(1.2, 1.1, 1.3),
            "NumAcc3" => Alternating(1000000.2, 1000000.1, 1000000.3),
            "NumAcc4" => Alternating(10000000.2, 10000000.1, 10000000.3),
            _ => throw new ArgumentOutOfRangeException(nameof(set), set, null),
        };

    /// <summary>One reading, then five hundred pairs.</summary>
    private static double[] Alternating(double first, double low, double high) =>
        [first, .. Enumerable.Repeat(new[] { low, high }, 500).SelectMany(pair => pair)];
}

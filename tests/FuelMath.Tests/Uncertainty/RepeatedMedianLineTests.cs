using FsCheck.Xunit;
using FuelMath.Statistics;

namespace FuelMath.Tests.Uncertainty;

[Properties(Arbitrary = [typeof(UncertaintyArbitraries)])]
public sealed class RepeatedMedianLineTests
{
    /// <summary>
    /// The theorem of the work: fewer than half of the readings, moved anywhere, leave the line of the others. Seven
    /// readings on y = 3 + 2 x, three of them moved.
    /// </summary>
    [Theory]
    [Trait("Source", "Siegel-1982")]
    [InlineData(100, -50, 1e6)]
    [InlineData(1e3, 1e3, 1e3)]
    [InlineData(-1, 0, 1)]
    public void Line_ThreeOfSevenOff_IsThatOfTheOtherFour(double first, double second, double third)
    {
        double[] x = [1, 2, 3, 4, 5, 6, 7];
        var line = new RepeatedMedianLine(x, [5, first, 9, second, 13, third, 17]);

        Close.Within(1e-14, 2, line.Slope);
        Close.Within(1e-14, 3, line.Intercept);
        Assert.InRange(line.StandardDeviation, 0, 1e-13);
    }

    /// <summary>By hand: slopes 1, 2 and 3; the medians of each reading's slopes are 1.5, 2 and 2.5; their median is 2.</summary>
    [Fact]
    public void Line_ThreeReadings_MatchesTheHandCalculation()
    {
        var line = new RepeatedMedianLine([0, 1, 2], [0, 1, 4]);

        Close.Within(1e-15, 2, line.Slope);
        Close.WithinOf(1, 1e-15, 0, line.Intercept);
        Assert.Equal([0, -1, 0], line.Residuals.ToArray());
        Assert.Equal(0, line.StandardDeviation);
    }

    /// <summary>Adding a line to the readings adds it to the result; the scale is the largest number in play.</summary>
    [Property]
    public void Line_PlusALine_IsTheSumOfBoth(Scatter scatter)
    {
        var line = new RepeatedMedianLine(scatter.X, scatter.Y);
        var other = new RepeatedMedianLine(scatter.X, scatter.Y.Select((y, i) => y + 4 - (3 * scatter.X[i])));
        double scale = scatter.Y.Max(Math.Abs) + 4 + (3 * scatter.X[^1]);

        Close.WithinOf(scale * 10, 1e-12, line.Slope - 3, other.Slope);
        Close.WithinOf(scale * (10 + scatter.X[^1]), 1e-12, line.Intercept + 4, other.Intercept);
    }

    [Fact]
    public void Line_TwoReadings_IsRefused() =>
        Words.Refused<ArgumentException>("x", "3, 2", () => _ = new RepeatedMedianLine([1, 2], [1, 2]));

    [Fact]
    public void Line_TheSameAbscissa_IsRefused() =>
        Words.Refused<ArgumentException>("x", "1", () => _ = new RepeatedMedianLine([1, 1, 1], [1, 2, 3]));
}

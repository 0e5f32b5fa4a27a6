using FuelMath.Statistics;

namespace FuelMath.Tests.Uncertainty;

/// <summary>Critical shares of the largest of some variances.</summary>
public sealed class CochranTests
{
    /// <summary>The table was reckoned from tabulated quantiles: one unit of its last digit.</summary>
    private const double LastDigit = 1e-3;

    // ISO 5725-2:1994 table 4, 5 % and 1 %, three digits; values from memory.
    [Trait("Source", "ISO-5725-2")]
    [Theory]
    [InlineData(3, 2, 0.967, 0.993)]
    [InlineData(4, 2, 0.906, 0.968)]
    [InlineData(5, 2, 0.841, 0.928)]
    [InlineData(6, 2, 0.781, 0.883)]
    [InlineData(8, 2, 0.680, 0.794)]
    [InlineData(10, 2, 0.602, 0.718)]
    [InlineData(3, 3, 0.871, 0.942)]
    [InlineData(4, 3, 0.768, 0.864)]
    [InlineData(5, 3, 0.684, 0.788)]
    [InlineData(6, 3, 0.616, 0.722)]
    [InlineData(8, 3, 0.516, 0.615)]
    [InlineData(10, 3, 0.445, 0.536)]
    [InlineData(6, 4, 0.532, 0.626)]
    public void Critical_EqualNumbers_IsTheTable(int count, int repeats, double five, double one)
    {
        int own = repeats - 1;
        Assert.Equal(five, CochranTest.Critical(own, own * (count - 1), count, CochranTest.Straggler), LastDigit);
        Assert.Equal(one, CochranTest.Critical(own, own * (count - 1), count, CochranTest.Outlier), LastDigit);
    }

    /// <summary>Two and one degrees of freedom have closed forms: C = 1 - (a/p)^(1/(p-1)) for three readings each.</summary>
    [Theory]
    [InlineData(4, 0.05)]
    [InlineData(6, 0.01)]
    [InlineData(12, 0.05)]
    public void Critical_ThreeReadingsEach_IsTheClosedForm(int count, double probability) =>
        Close.Within(
            1e-9,
            1 - Math.Pow(probability / count, 1.0 / (count - 1)),
            CochranTest.Critical(2, 2 * (count - 1), count, probability)
        );

    [Fact]
    public void Test_AtTheCriticalShare_HasThatProbability()
    {
        double share = CochranTest.Critical(2, 10, 6, 0.05);
        double other = (1 - share) / 5;

        CochranTest test = new([other, other, share, other, other, other], [2, 2, 2, 2, 2, 2]);

        Assert.Equal(2, test.Place);
        Close.Within(1e-9, 0.05, test.PValue);
        Close.Within(1e-12, share, test.Share);
    }

    /// <summary>How often equal variances are rejected: no more than is promised, and not far below. 4000 sets.</summary>
    [Theory]
    [InlineData(4, 3)]
    [InlineData(6, 2)]
    [InlineData(8, 5)]
    public void Test_EqualScatter_RejectsAtMostAsOftenAsPromised(int count, int repeats)
    {
        const int Sets = 4000;
        int rejected = 0;
        var random = new Random(5725);
        int[] freedoms = [.. Enumerable.Repeat(repeats - 1, count)];
        for (int set = 0; set < Sets; set++)
        {
            double[] squares =
            [
                .. Enumerable
                    .Range(0, count)
                    .Select(_ =>
                    {
                        double[] x = [.. Enumerable.Range(0, repeats).Select(_ => Normal(random))];
                        return x.Sum(v => (v - x.Average()) * (v - x.Average()));
                    }),
            ];
            rejected += new CochranTest(squares, freedoms).PValue < CochranTest.Straggler ? 1 : 0;
        }

        // 5 % of 4000 has a standard deviation of 0.34 %: three to either side.
        Assert.InRange(rejected / (double)Sets, 0.039, 0.061);
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}

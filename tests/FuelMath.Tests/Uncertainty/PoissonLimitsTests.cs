using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Uncertainty;

[Trait("Source", "Garwood-1936")]
public sealed class PoissonLimitsTests
{
    /// <summary>Limits of 97.5 % to either side, an interval of 95 %: four decimals, by another program's chi-square quantiles.</summary>
    [Theory]
    [InlineData(0, 0, 3.6889)]
    [InlineData(1, 0.0253, 5.5716)]
    [InlineData(2, 0.2422, 7.2247)]
    [InlineData(3, 0.6187, 8.7673)]
    [InlineData(4, 1.0899, 10.2416)]
    public void Limits_OfAnIntervalOf95Percent_AreThoseOfTheTable(int count, double low, double high) =>
        Are(97.5, count, low, high);

    [Theory]
    [InlineData(0, 0, 2.9957)]
    [InlineData(1, 0.0513, 4.7439)]
    [InlineData(2, 0.3554, 6.2958)]
    [InlineData(3, 0.8177, 7.7537)]
    [InlineData(4, 1.3663, 9.1535)]
    public void Limits_OneSided95Percent_AreThoseOfTheTable(int count, double low, double high) =>
        Are(95, count, low, high);

    /// <summary>Closed forms: none counted, -ln(1 - c) above; one counted, -ln(c) below.</summary>
    [Theory]
    [InlineData(50)]
    [InlineData(90)]
    [InlineData(99.99)]
    public void Limits_OfNoneAndOne_AreLogarithms(double percent)
    {
        Ratio confidence = Ratio.FromPercent(percent);

        Close.Within(1e-11, -Math.Log(1 - (percent / 100)), PoissonLimits.Upper(0, confidence));
        Close.Within(1e-11, -Math.Log(percent / 100), PoissonLimits.Lower(1, confidence));
    }

    /// <summary>
    /// Many counts: the cube-root law of Wilson and Hilferty, n (1 - 1/(9n) ± z/(3 sqrt n))^3, good to 1e-3 of a standard
    /// deviation there (value from memory).
    /// </summary>
    [Theory]
    [InlineData(1_000)]
    [InlineData(1_000_000)]
    public void Limits_OfManyCounts_FollowTheCubeRootLaw(int count)
    {
        const double Z = 1.6448536269514722;
        double above = count + 1.0;

        Close.WithinOf(
            Math.Sqrt(count),
            1e-3,
            count * Math.Pow(1 - (1 / (9.0 * count)) - (Z / (3 * Math.Sqrt(count))), 3),
            PoissonLimits.Lower(count, Ratio.FromPercent(95))
        );
        Close.WithinOf(
            Math.Sqrt(count),
            1e-3,
            above * Math.Pow(1 - (1 / (9 * above)) + (Z / (3 * Math.Sqrt(above))), 3),
            PoissonLimits.Upper(count, Ratio.FromPercent(95))
        );
    }

    /// <summary>
    /// What the limits promise, by summing the distribution term by term: at the upper limit so few events have the
    /// probability that the confidence leaves over.
    /// </summary>
    [Property]
    public Property Upper_LeavesOverWhatTheConfidenceDoes() =>
        Prop.ForAll(
            (from count in Gen.Choose(0, 300) from percent in Gen.Choose(50, 99) select (count, percent)).ToArbitrary(),
            given =>
            {
                double mean = PoissonLimits.Upper(given.count, Ratio.FromPercent(given.percent));
                double sum = 0;
                double log = -mean;
                for (int k = 0; k <= given.count; k++)
                {
                    sum += Math.Exp(log);
                    log += Math.Log(mean / (k + 1));
                }

                Close.WithinOf(1, 1e-9, 1 - (given.percent / 100.0), sum);
            }
        );

    [Fact]
    public void Limits_NegativeCount_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "count",
            "0, 1000000, -1",
            () => PoissonLimits.Upper(-1, Ratio.FromPercent(95))
        );

    [Fact]
    public void Limits_ConfidenceOfOne_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "confidence",
            "50 %, 99.99 %, 100 %",
            () => PoissonLimits.Lower(3, Ratio.FromPercent(100))
        );

    private static void Are(double percent, int count, double low, double high)
    {
        Close.WithinOf(1, 5.1e-5, low, PoissonLimits.Lower(count, Ratio.FromPercent(percent)));
        Close.WithinOf(1, 5.1e-5, high, PoissonLimits.Upper(count, Ratio.FromPercent(percent)));
    }
}

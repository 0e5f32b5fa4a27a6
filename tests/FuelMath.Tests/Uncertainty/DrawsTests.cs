using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Uncertainty;

public sealed class DrawsTests
{
    private const int Trials = 100_000;

    /// <summary>The first five numbers for the seed 1234567, exact.</summary>
    [Theory]
    [InlineData(0, 6457827717110365317)]
    [InlineData(1, 3203168211198807973)]
    [InlineData(2, 9817491932198370423)]
    [InlineData(3, 4593380528125082431)]
    [InlineData(4, 16408922859458223821)]
    [Trait("Source", "Steele-Lea-Flood-2014")]
    public void Bits_OfAPublishedSeed_AreThePublishedNumbers(ulong place, ulong expected) =>
        Assert.Equal(expected, Draws.Bits(1234567, place));

    /// <summary>Quantiles of the normal distribution as k factors, table G.2, row of infinitely many degrees of freedom; three digits.</summary>
    [Theory]
    [InlineData(68.27, 1.00)]
    [InlineData(90, 1.645)]
    [InlineData(95, 1.960)]
    [InlineData(95.45, 2.000)]
    [InlineData(99, 2.576)]
    [InlineData(99.73, 3.000)]
    [Trait("Source", "JCGM-100")]
    public void Deviation_Normal_IsTheTabulatedFactor(double percent, double factor)
    {
        Close.Within(5e-4, factor, Draws.Deviation(SpreadShape.Normal, (1 + (percent / 100)) / 2));
        Close.Within(5e-4, -factor, Draws.Deviation(SpreadShape.Normal, (1 - (percent / 100)) / 2));
    }

    /// <summary>The ends of shapes that have ends: half widths of the root of 3 and of 6 at a standard deviation of one.</summary>
    [Theory]
    [InlineData(SpreadShape.Rectangular, 1.7320508075688772)]
    [InlineData(SpreadShape.Triangular, 2.4494897427831781)]
    [Trait("Source", "JCGM-101")]
    public void Deviation_AtTheEnds_IsTheHalfWidth(SpreadShape shape, double half)
    {
        Close.Within(1e-15, half, Draws.Deviation(shape, 1));
        Close.Within(1e-15, -half, Draws.Deviation(shape, 0));
        Assert.Equal(0, Draws.Deviation(shape, 0.5), 15);
    }

    /// <summary>
    /// By the middles of n = 1000 equal shares. Of a rectangle they give 1 - 1/n2; of shapes that are steeper at their
    /// ends, the last shares add up to 1/n of what lies there.
    /// </summary>
    [Theory]
    [InlineData(SpreadShape.Normal, 2e-3)]
    [InlineData(SpreadShape.Rectangular, 1.001e-6)]
    [InlineData(SpreadShape.Triangular, 1e-3)]
    public void Deviation_OverAllShares_HasVarianceOne(SpreadShape shape, double tolerance)
    {
        double[] all = [.. Enumerable.Range(0, 1000).Select(i => Draws.Deviation(shape, (i + 0.5) / 1000))];

        Close.WithinOf(1, 1e-12, 0, all.Average());
        Close.Within(tolerance, 1, all.Average(z => z * z));
    }

    /// <summary>
    /// The additive model of four normal inputs of standard deviation 1 in section 9.2.2: u = 2.00, 95 % from -3.92 to
    /// 3.92. With 100 000 trials the standard deviation scatters by 0.0045 and the ends by about 0.019; four times that
    /// is allowed.
    /// </summary>
    [Fact]
    [Trait("Source", "JCGM-101")]
    public void Trials_FourNormalInputs_GiveThePublishedInterval() => IsPublished(SpreadShape.Normal, 3.92);

    /// <summary>
    /// The same of four rectangular inputs, section 9.2.3: u = 2.00, 95 % from -3.88 to 3.88, which is
    /// 2 root 3 (2 - (3/5)^(1/4)) in closed form. Scatter as above.
    /// </summary>
    [Fact]
    [Trait("Source", "JCGM-101")]
    public void Trials_FourRectangularInputs_GiveThePublishedInterval() => IsPublished(SpreadShape.Rectangular, 3.88);

    /// <summary>
    /// Calibration of a 10 kg weight, example S2: standard 45 mg at k = 2, drift 15 mg, comparator 25 mg, convection and
    /// magnetism 10 mg, air buoyancy 10 mg as half widths of rectangles; u = 29.2 mg. The published figure is rounded; the
    /// standard deviation of 100 000 trials scatters by 0.22 %, four times that is allowed.
    /// </summary>
    [Fact]
    [Trait("Source", "EA-4-02")]
    public void Trials_OfAWeighing_GiveThePublishedUncertainty()
    {
        (SpreadShape Shape, double Deviation)[] inputs =
        [
            (SpreadShape.Normal, 45 / 2.0),
            (SpreadShape.Rectangular, 15 / Math.Sqrt(3)),
            (SpreadShape.Rectangular, 25 / Math.Sqrt(3)),
            (SpreadShape.Rectangular, 10 / Math.Sqrt(3)),
            (SpreadShape.Rectangular, 10 / Math.Sqrt(3)),
        ];

        TrialNumbers sums = Sums([.. inputs.Select(i => (i.Shape, i.Deviation))]);

        Close.WithinOf(29.2, 4 * 0.0022, 29.2, sums.StandardDeviation);
    }

    [Fact]
    public void Quantile_OfFourTrials_IsStraightBetweenThem()
    {
        var trials = new TrialSpread<double, double>([4, 1, 3, 2], x => x, x => x);

        Assert.Equal(2.5, trials.Mean);
        Assert.Equal(1, trials.Quantile(Ratio.FromPercent(12.5)));
        Assert.Equal(2.5, trials.Quantile(Ratio.FromPercent(50)));
        Assert.Equal(2.75, trials.Quantile(Ratio.FromPercent(56.25)));
        Assert.Equal(4, trials.Quantile(Ratio.FromPercent(87.5)));
        Assert.Equal(1.5, trials.LowEnd(Ratio.FromPercent(50)));
        Assert.Equal(3.5, trials.HighEnd(Ratio.FromPercent(50)));
    }

    [Fact]
    public void Quantile_BeyondHalfATrial_IsRefused()
    {
        var trials = new TrialSpread<double, double>([4, 1, 3, 2], x => x, x => x);

        var error = Assert.Throws<ArgumentOutOfRangeException>("share", () => trials.Quantile(Ratio.FromPercent(95)));

        Words.Says("12.5 %, 87.5 %, 95 %", error);
    }

    private static void IsPublished(SpreadShape shape, double end)
    {
        TrialNumbers sums = Sums([.. Enumerable.Repeat((shape, 1.0), 4)]);

        Close.WithinOf(1, 4 * 0.0063, 0, sums.Mean);
        Close.WithinOf(1, 4 * 0.0045, 2, sums.StandardDeviation);
        Close.WithinOf(1, 0.005 + (4 * 0.019), -end, sums.At(Ratio.FromPercent(2.5)));
        Close.WithinOf(1, 0.005 + (4 * 0.019), end, sums.At(Ratio.FromPercent(97.5)));
    }

    private static TrialNumbers Sums((SpreadShape Shape, double Deviation)[] inputs)
    {
        double[] sums = new double[Trials];
        ulong place = 0;
        for (int trial = 0; trial < Trials; trial++)
        {
            foreach ((SpreadShape shape, double deviation) in inputs)
            {
                sums[trial] += deviation * Draws.Deviation(shape, Draws.Share(7, place++));
            }
        }

        return new TrialNumbers(sums);
    }
}

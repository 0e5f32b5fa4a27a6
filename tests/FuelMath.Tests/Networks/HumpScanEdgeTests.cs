namespace FuelMath.Tests.Networks;

/// <summary>
/// The scan of a curve where what is asked touches it: at its end, in a valley, before another crossing. Curves and what
/// asks are straight lines, so that places follow by hand; the lines of the scan fall by 100.
/// </summary>
public sealed class HumpScanEdgeTests
{
    private const double Noise = 1e-9;

    /// <summary>200 touches the peak at a flow of 1, where the line starts at 300: the end of the scan.</summary>
    [Fact]
    public void Walk_TouchedAtItsEnd_Touches()
    {
        HumpScan scan = Scan([(0, 100, 100), (1, 200, -200), (2, 0, -200)], 200, -1, 300);

        Assert.True(Assert.Single(scan.Crossings).IsStable);
        Assert.Equal(1, scan.Touching!.Value.Flow, 1e-5);
    }

    /// <summary>
    /// The first peak of 200 is touched at a flow of 1, the second one of 300 crossed at 2.5 and at 3 + 1/3: what comes after
    /// does not hide what was touched.
    /// </summary>
    [Fact]
    public void Walk_TouchedBeforeACrossing_Touches()
    {
        HumpScan scan = Scan(
            [(0, 100, 100), (1, 200, -100), (2, 100, 200), (3, 300, -300), (4, 0, -300)],
            200,
            -1,
            900
        );

        Assert.Equal([true, false, true], scan.Crossings.Select(c => c.IsStable));
        Assert.Equal(1, scan.Touching!.Value.Flow, 1e-5);
    }

    /// <summary>A valley that falls to 50 at a flow of 1 is touched from above; a little less is not, a little more crosses.</summary>
    [Theory]
    [InlineData(50, 1, true)]
    [InlineData(49.999, 1, false)]
    [InlineData(50.001, 3, false)]
    public void Walk_AValley_IsTouchedFromAbove(double asked, int crossings, bool touches)
    {
        HumpScan scan = Scan([(0, 100, -50), (1, 50, 50), (2, 100, -100), (3, 0, -100)], asked, 40, 900);

        Assert.Equal(crossings, scan.Crossings.Count);
        Assert.Equal(touches, scan.Touching is not null);
        if (touches)
        {
            Assert.Equal(1, scan.Touching!.Value.Flow, 1e-5);
        }
    }

    /// <summary>
    /// From as far below nothing as above it: a stretch is narrow by its width, and three crossings are cornered to a
    /// millionth of 900 in 20 halvings each, that is with at most 60 samples.
    /// </summary>
    [Fact]
    public void Walk_FromBelowNothing_FindsTheSame()
    {
        int samples = 0;
        HumpScan scan = Scan([(0, 100, 100), (1, 200, -200), (2, 0, -200)], 150, -450, 450, () => samples++);

        Assert.Equal([true, false, true], scan.Crossings.Select(c => c.IsStable));
        Assert.InRange(samples, 3, 30);
    }

    /// <summary>Asked for more than all of it: one crossing before it flows, and nothing later.</summary>
    [Fact]
    public void Walk_AboveTheCurve_CrossesOnce()
    {
        HumpScan scan = Scan([(0, 100, 100), (1, 200, -200), (2, 0, -200)], 250, 0, 600);

        HumpBracket only = Assert.Single(scan.Crossings);
        Assert.True(only.IsStable);
        Assert.InRange(100, only.Left.Shutoff, only.Right.Shutoff);
        Assert.Equal((0.0, 0.0), (only.Left.Flow, only.Right.Flow));
    }

    /// <summary>At a point of the curve both pieces give what the point says.</summary>
    [Fact]
    public void Between_OfOnePoint_IsThatPoint()
    {
        HumpCurve curve = Curve([(0, 100, 100), (1, 200, -200), (2, 0, -200)]);

        Assert.Equal((200.0, 200.0, true), curve.Between(1, 1));
        Assert.Equal((-100.0, 0.0, true), curve.Between(2, 2.5));
        Assert.Equal((100.0, 150.0, false), curve.Between(0, 0.5));
    }

    private static HumpCurve Curve((double Flow, double Rise, double Slope)[] points) =>
        new([.. points.Take(1).Concat(points).Select(p => new Piece(p.Flow, p.Rise, p.Slope, 0, 0))]);

    private static HumpScan Scan(
        (double Flow, double Rise, double Slope)[] points,
        double asked,
        double from,
        double to,
        Action? counting = null
    )
    {
        HumpCurve curve = Curve(points);
        HumpSample Sample(double shutoff)
        {
            counting?.Invoke();
            double flow = Math.Max(0, (shutoff - asked) / 100);
            return new HumpSample(shutoff, flow, shutoff - (100 * flow), curve.At(flow));
        }

        HumpScan scan = new(curve, Sample);
        scan.Walk(Sample(from), Sample(to), Noise);
        return scan;
    }
}

namespace FuelMath.Tests.Networks;

/// <summary>
/// The scan of a curve that rises in a straight line from (0, 100) to (1, 200) and falls by 200 from there, against what
/// asks straight lines of it: where they meet is worked out by hand. It is scanned with lines that fall by 100.
/// </summary>
public sealed class HumpScanTests
{
    private const double Noise = 1e-9;

    private static readonly HumpCurve Peak = Curve((0, 100, 100), (1, 200, -200), (2, 0, -200));

    /// <summary>
    /// What always asks for 150 meets the curve behind a check valve that stays shut until 150, where the line starts at
    /// 100; at a flow of 0.5, where the line starts at 150 + 50; and at 1.25, where it starts at 150 + 125. From -56 to 456
    /// halving hits each of them.
    /// </summary>
    [Theory]
    [InlineData(-1, 450)]
    [InlineData(-56, 456)]
    [InlineData(99, 276)]
    public void Walk_FindsEveryCrossing(double from, double to)
    {
        HumpScan scan = Scan(Asking(150, 0), from, to);

        Assert.Equal([true, false, true], scan.Crossings.Select(c => c.IsStable));
        Assert.All(
            scan.Crossings.Zip([100.0, 200.0, 275.0]),
            c => Assert.InRange(c.Second, c.First.Left.Shutoff, c.First.Right.Shutoff)
        );
        Assert.All(
            scan.Crossings.Zip(scan.Crossings.Skip(1)),
            c => Assert.True(c.First.Right.Shutoff <= c.Second.Left.Shutoff)
        );
        Assert.Null(scan.Touching);
        Assert.True(scan.IsRising);
        Assert.False(scan.RunsAlong);
    }

    /// <summary>The peak is touched at a flow of 1; a thousandth above it is missed, and a thousandth below crossed twice.</summary>
    [Theory]
    [InlineData(200.001, 1, false)]
    [InlineData(200, 1, true)]
    [InlineData(199.999, 3, false)]
    public void Walk_TellsTouchingFromCrossing(double asked, int crossings, bool touches)
    {
        HumpScan scan = Scan(Asking(asked, 0), -1, 450);

        Assert.Equal(crossings, scan.Crossings.Count);
        Assert.Equal(touches, scan.Touching is not null);
        if (scan.Touching is { } touching)
        {
            Assert.Equal(1, touching.Flow, 1e-5);
            Assert.Equal(0, touching.Surplus, 1e-3);
        }
    }

    /// <summary>What asks for 100 and 100 more for each unit of flow lies on the rising part.</summary>
    [Fact]
    public void Walk_AlongTheCurve_GivesUp() => Assert.True(Scan(Asking(100, 100), -1, 450).RunsAlong);

    /// <summary>What asks for less the more flows is none of what a scan is for; what asks for the same is.</summary>
    [Theory]
    [InlineData(-20, false)]
    [InlineData(0, true)]
    [InlineData(20, true)]
    public void Walk_NoticesWhatAsksForLess(double slope, bool rises) =>
        Assert.Equal(rises, Scan(Asking(150, slope), -1, 450).IsRising);

    [Theory]
    [InlineData(0, 100)]
    [InlineData(0.5, 150)]
    [InlineData(1, 200)]
    [InlineData(1.5, 100)]
    [InlineData(2, 0)]
    [InlineData(3, -200)]
    public void Curve_IsThatOfItsPieces(double flow, double rise) => Assert.Equal(rise, Peak.At(flow), 1e-12);

    [Fact]
    public void Curve_EndsAtItsLastPoint() => Assert.Equal(2, Peak.End);

    /// <summary>Between two flows the points between count too; a stretch without length falls.</summary>
    [Theory]
    [InlineData(0, 2, 0, 200, false)]
    [InlineData(0, 1, 100, 200, false)]
    [InlineData(0.5, 1.5, 100, 200, false)]
    [InlineData(0.5, 0.5, 150, 150, true)]
    [InlineData(1, 2, 0, 200, true)]
    [InlineData(1.5, 3, -200, 100, true)]
    public void Between_IsTheRangeOfTheCurve(double from, double to, double least, double greatest, bool falls) =>
        Assert.Equal((least, greatest, falls), Peak.Between(from, to));

    [Fact]
    public void Between_AValley_HasItsGround() =>
        Assert.Equal((0.0, 50.0, false), Curve((0, 100, -100), (1, 0, 100), (2, 100, -100)).Between(0.5, 1.5));

    [Fact]
    public void Between_OnALevel_DoesNotFall()
    {
        HumpCurve level = Curve((0, 100, 0), (1, 100, -100), (2, 0, -100));

        Assert.Equal((100.0, 100.0, false), level.Between(0, 1));
        Assert.Equal((0.0, 100.0, false), level.Between(0, 2));
        Assert.Equal((0.0, 100.0, true), level.Between(1, 2));
    }

    private static HumpCurve Curve(params (double Flow, double Rise, double Slope)[] points) =>
        new([.. points.Take(1).Concat(points).Select(p => new Piece(p.Flow, p.Rise, p.Slope, 0, 0))]);

    /// <summary>What asks for a rise that grows in a straight line with flow, behind a check valve.</summary>
    private static Func<double, HumpSample> Asking(double atNoFlow, double slope) =>
        shutoff =>
        {
            double flow = Math.Max(0, (shutoff - atNoFlow) / (slope + 100));
            return new HumpSample(shutoff, flow, shutoff - (100 * flow), Peak.At(flow));
        };

    private static HumpScan Scan(Func<double, HumpSample> sample, double from, double to)
    {
        HumpScan scan = new(Peak, sample);
        scan.Walk(sample(from), sample(to), Noise);
        return scan;
    }
}

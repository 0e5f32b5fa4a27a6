using FuelMath.Joints;
using UnitsNet;
using Bounds = FuelMath.Joints.ORingFit.Limits;

namespace FuelMath.Tests.Seals;

/// <summary>A ring just at each of its limits, and a billionth beyond.</summary>
public sealed class SealLimitTests
{
    private static readonly ORingFit Fit = new FitMeasures(20, 3, 0.02, 0.8, 0.05).ToFit();

    /// <summary>The least squeeze: kept by the worst case it is enough, by the likely one it is a warning, by neither a danger.</summary>
    [Fact]
    public void SqueezeLow_AtEachBound()
    {
        Assert.True(Fit.Squeeze.WorstLeast > Ratio.Zero && Fit.Squeeze.WorstLeast < Fit.Squeeze.LikelyLeast);

        Assert.Null(Low(Fit.Squeeze.WorstLeast));
        Assert.Equal(Severity.Warning, Low(Fit.Squeeze.WorstLeast * (1 + 1e-9)));
        Assert.Equal(Severity.Warning, Low(Fit.Squeeze.LikelyLeast));
        Assert.Equal(Severity.Danger, Low(Fit.Squeeze.LikelyLeast * (1 + 1e-9)));

        static Severity? Low(Ratio least) =>
            Of(least, Ratio.FromPercent(60), Ratio.FromPercent(25), Ratio.FromPercent(100), FindingCode.SealSqueezeLow);
    }

    /// <summary>The greatest squeeze: kept by the worst case it is allowed, by the likely one it is a note, by neither a warning.</summary>
    [Fact]
    public void SqueezeHigh_AtEachBound()
    {
        Assert.Null(High(Fit.Squeeze.WorstGreatest));
        Assert.Equal(Severity.Note, High(Fit.Squeeze.WorstGreatest * (1 - 1e-9)));
        Assert.Equal(Severity.Note, High(Fit.Squeeze.LikelyGreatest));
        Assert.Equal(Severity.Warning, High(Fit.Squeeze.LikelyGreatest * (1 - 1e-9)));

        static Severity? High(Ratio most) =>
            Of(Ratio.FromPercent(1), most, Ratio.FromPercent(25), Ratio.FromPercent(100), FindingCode.SealSqueezeHigh);
    }

    [Fact]
    public void FillAndStretch_AtEachBound()
    {
        Assert.Null(Fill(Fit.Fill.WorstGreatest));
        Assert.Equal(Severity.Warning, Fill(Fit.Fill.WorstGreatest * (1 - 1e-9)));
        Assert.Null(Stretch(Fit.Stretch.WorstGreatest));
        Assert.Equal(Severity.Warning, Stretch(Fit.Stretch.WorstGreatest * (1 - 1e-9)));

        static Severity? Fill(Ratio most) =>
            Of(Ratio.FromPercent(1), Ratio.FromPercent(60), Ratio.FromPercent(25), most, FindingCode.SealFillHigh);

        static Severity? Stretch(Ratio most) =>
            Of(Ratio.FromPercent(1), Ratio.FromPercent(60), most, Ratio.FromPercent(100), FindingCode.SealStretchHigh);
    }

    /// <summary>
    /// A ring of 2 mm in 2 mm of room, unstretched: it touches both walls and is squeezed by nothing, which does not seal; in 2.2 mm it
    /// does not touch. In 1.9 mm it is squeezed by a twentieth, too little for a tenth.
    /// </summary>
    [Theory]
    [InlineData(1.1, Severity.Danger, true)]
    [InlineData(1, Severity.Danger, true)]
    [InlineData(0.95, Severity.Danger, false)]
    [InlineData(0.8, null, false)]
    public void SqueezeOfNothing_DoesNotSeal(double room, Severity? expected, bool touchesNot)
    {
        Finding? found = new FitMeasures(16, 2, 0, room, 0)
            .ToFit()
            .Check(Bounds.RadialStatic)
            .SingleOrDefault(f => f.Code == FindingCode.SealSqueezeLow);

        Assert.Equal(expected, found?.Severity);
        Assert.Equal(touchesNot, found?.What.Contains("does not touch", StringComparison.Ordinal) ?? false);
    }

    /// <summary>More rubber than room is a danger, as with half of 3 mm deep by 4.2 mm wide; 95 % of it, with 1.86 mm, is a warning.</summary>
    [Theory]
    [InlineData(0.5, Severity.Danger)]
    [InlineData(0.62, Severity.Warning)]
    [InlineData(0.8, null)]
    public void Fill_BeyondAllRoom_IsADanger(double room, Severity? expected) =>
        Assert.Equal(
            expected,
            new FitMeasures(20, 3, 0, room, 0)
                .ToFit()
                .Check(Bounds.RadialStatic)
                .SingleOrDefault(f => f.Code == FindingCode.SealFillHigh)
                ?.Severity
        );

    /// <summary>What nobody here can know is said of every ring, last, as a note.</summary>
    [Fact]
    public void Rubber_IsNeverKnown()
    {
        Finding last = Fit.Check(Bounds.RadialStatic)[^1];

        Assert.Equal((FindingCode.SealMaterialNotKnown, Severity.Note), (last.Code, last.Severity));
        Assert.Equal(Fit.Ring.Name, last.Part);
    }

    private static Severity? Of(Ratio least, Ratio most, Ratio stretch, Ratio fill, FindingCode code) =>
        Fit.Check(new(least, most, stretch, fill, FitMeasures.Source)).SingleOrDefault(f => f.Code == code)?.Severity;
}

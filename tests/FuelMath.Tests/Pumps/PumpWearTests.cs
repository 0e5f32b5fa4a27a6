using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Pumps;

[Properties(Arbitrary = [typeof(PumpArbitraries)])]
public sealed class PumpWearTests
{
    private static readonly Pressure Bar = Pressure.FromBars(1);

    [Property]
    public void Of_NoWear_IsTheSameCurve(PumpKnots knots, Along place)
    {
        PumpCurve curve = knots.ToCurve();
        PumpCurve same = new PumpWear(Ratio.FromPercent(100), VolumeFlow.Zero, Bar).Of(curve);
        Pressure rise = Pressure.FromBars(place.Between(knots.Bar[0], knots.Bar[^1]));

        Close.WithinOf(
            curve.GreatestFlow.LitersPerHour,
            2e-6,
            curve.FlowAt(rise).LitersPerHour,
            same.FlowAt(rise).LitersPerHour
        );
        Assert.NotNull(same.EstimateBasis);
    }

    /// <summary>More wear, less flow, at every measured rise that is left.</summary>
    [Property]
    public void Of_MoreWear_GivesLessFlow(PumpKnots knots, byte less)
    {
        PumpCurve curve = knots.ToCurve();
        PumpCurve worn = new PumpWear(Ratio.FromPercent(50 + (less % 50)), VolumeFlow.Zero, Bar).Of(curve);

        for (int i = 0; i < worn.Points.Length; i++)
        {
            Assert.True(worn.Points[i].Flow.LitersPerHour <= curve.Points[i].Flow.LitersPerHour);
        }
    }

    /// <summary>4 L/h leak for each bar: at 5 bar 20 of 100 L/h; 300 at 1 bar becomes 0.9 x 300 - 4.</summary>
    [Fact]
    public void Of_ShareAndLeak_IsWorkedByHand()
    {
        PumpCurve worn = new PumpWear(Ratio.FromPercent(90), VolumeFlow.FromLitersPerHour(4), Bar).Of(Curve());

        Assert.Equal(266, worn.Points[0].Flow.LitersPerHour, 1e-9);
        Assert.Equal(70, worn.Points[1].Flow.LitersPerHour, 1e-9);
    }

    /// <summary>350 - 50 p less 25 p is none at 350/75 bar, before the curve's end at 5 bar.</summary>
    [Fact]
    public void Of_ALeakThatTakesAll_EndsWhereNothingIsDelivered()
    {
        PumpCurve worn = new PumpWear(Ratio.FromPercent(100), VolumeFlow.FromLitersPerHour(25), Bar).Of(Curve());

        Assert.Equal(350 / 75.0, worn.GreatestPressureRise.Bars, 1e-9);
        Assert.Equal(0, worn.LeastFlow.LitersPerHour);
    }

    [Fact]
    public void Of_ALeakThatLeavesNothing_IsRefused()
    {
        var refused = Assert.Throws<ArgumentException>(() =>
            new PumpWear(Ratio.FromPercent(10), VolumeFlow.FromLitersPerHour(80), Bar).Of(Curve())
        );

        Words.Says("1 bar", refused);
    }

    [Fact]
    public void Worn_KeepsTheDriveAndSaysSo()
    {
        Pump pump = new Pump("p", [Curve()], StandardFuels.NHeptane, PumpKnots.Source).WithDrive(
            "chopped",
            PumpDrive.ByDuty(Ratio.FromPercent(80))
        );

        Pump worn = pump.Worn("tired", new PumpWear(Ratio.FromPercent(80), VolumeFlow.Zero, Bar));

        Assert.Equal("tired", worn.Name);
        Assert.Same(pump.Drive, worn.Drive);
        Assert.Contains("wear: 80 % of the flow", worn.Curves[0].EstimateBasis, StringComparison.Ordinal);
    }

    private static PumpCurve Curve() => new PumpKnots([1, 5], [300, 100], [8, 12]).ToCurve();
}

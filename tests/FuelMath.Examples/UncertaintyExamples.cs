using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class UncertaintyExamples
{
    [Fact]
    public void LineThroughReadings()
    {
        #region Line
        // Milligrams delivered, over pulse width in milliseconds.
        FittedLine line = FittedLine.FromPoints([3, 5, 8, 12], [7.3, 15.1, 27.2, 42.9]);
        Ratio confidence = Ratio.FromPercent(95);

        double deadTime = line.ZeroCrossing(); // 1.165
        Interval between = line.ZeroInterval(confidence);
        Interval slope = line.SlopeInterval(confidence);

        // One of them misread: the median line shows which.
        var robust = new RepeatedMedianLine([3, 5, 8, 10, 12], [7.3, 15.1, 27.2, 53.0, 42.9]);
        int off = robust.Residuals.IndexOf(robust.Residuals.Max()); // 3
        #endregion

        // By hand: mean 7 and 23.125, Sxx 46, Sxy 182.3.
        Assert.Equal(7 - (23.125 / (182.3 / 46)), deadTime, 1e-12);
        Assert.True(between.Contains(deadTime));
        Assert.True(slope.Contains(182.3 / 46));
        Assert.Equal(3, off);
    }
}

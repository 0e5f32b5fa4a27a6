using UnitsNet;

namespace FuelMath.Tests.Pumps;

public sealed class PumpCurvePointTests
{
    [Theory]
    [InlineData(-1, 100, 5, "pressureRise", "Must be finite and not negative; it was -1 bar.")]
    [InlineData(3, -100, 5, "flow", "Must be finite and not negative; it was -100 L/h.")]
    [InlineData(3, 100, -5, "current", "Must be finite and not negative; it was -5 A.")]
    public void Constructor_NegativeValue_Refuses(double bar, double flow, double amperes, string name, string words) =>
        Words.Refused<ArgumentOutOfRangeException>(
            name,
            words,
            () =>
                _ = new PumpCurve.Point(
                    Pressure.FromBars(bar),
                    VolumeFlow.FromLitersPerHour(flow),
                    ElectricCurrent.FromAmperes(amperes)
                )
        );

    [Fact]
    public void Default_IsAPumpAtRest()
    {
        PumpCurve.Point point = default;

        Assert.Equal(0, point.PressureRise.Pascals + point.Flow.CubicMetersPerSecond + point.Current.Amperes);
    }
}

using UnitsNet;

namespace FuelMath.Tests.Pumps;

public sealed class PumpCurveRefusalTests
{
    [Theory]
    [InlineData(399, "Pump curve at 13.5 V: pressure rise (kPa) must be from 400 to 800; it was 399.")]
    [InlineData(801, "Pump curve at 13.5 V: pressure rise (kPa) must be from 400 to 800; it was 801.")]
    public void FlowAt_OutsideThePoints_SaysTheRangeInTheCallersUnit(double kilopascals, string words)
    {
        PumpCurve curve = Curve((4, 310), (6, 262), (8, 206));
        Pressure rise = Pressure.FromKilopascals(kilopascals);

        OutsideTableException error = Words.OutsideTable(words, () => curve.FlowAt(rise));

        Assert.Equal((400, 800, kilopascals), (error.Minimum, error.Maximum, error.Value));
        Words.OutsideTable(words, () => curve.CurrentAt(rise));
        Words.OutsideTable(words, () => curve.HydraulicPowerAt(rise));
        Words.OutsideTable(words, () => curve.ElectricPowerAt(rise));
    }

    [Theory]
    [InlineData(205)]
    [InlineData(311)]
    public void RiseAt_OutsideThePoints_SaysTheRange(double litersPerHour) =>
        Words.OutsideTable(
            $"13.5 V, 206, 310, {litersPerHour}",
            () => Curve((4, 310), (6, 262), (8, 206)).RiseAt(VolumeFlow.FromLitersPerHour(litersPerHour))
        );

    [Fact]
    public void Constructor_PressureNotRising_NamesTheIndex() =>
        Words.Refused<ArgumentException>("points", "2", () => Curve((4, 310), (6, 262), (6, 235)));

    [Theory]
    [InlineData(310)]
    [InlineData(320)]
    public void Constructor_HumpOrFlat_SaysWhyNot(double second) =>
        Words.Refused<ArgumentException>(
            "points",
            $"1, 310 L/h, {second} L/h",
            () => Curve((4, 310), (5, second), (6, 262))
        );

    [Fact]
    public void Constructor_OnePoint_Refuses() =>
        Words.Refused<ArgumentException>("points", "2, 1", () => Curve((4, 310)));

    /// <summary>310 L/min where 310 L/h was meant.</summary>
    [Fact]
    public void Constructor_MorePowerOutThanIn_SaysToCheckUnits() =>
        Words.Refused<ArgumentException>("points", "0, 2067 W, 135 W", () => Curve((4, 310 * 60), (6, 262 * 60)));

    [Theory]
    [InlineData(0)]
    [InlineData(-12)]
    public void Constructor_VoltageNotPositive_Refuses(double volts) =>
        Words.Refused<ArgumentOutOfRangeException>(
            "voltage",
            $"{volts} V",
            () =>
                _ = new PumpCurve(ElectricPotential.FromVolts(volts), [Point(4, 310), Point(8, 206)], PumpKnots.Source)
        );

    [Fact]
    public void Constructor_Null_SaysWhich()
    {
        ElectricPotential voltage = ElectricPotential.FromVolts(13.5);

        Assert.Throws<ArgumentNullException>("points", () => new PumpCurve(voltage, null!, PumpKnots.Source));
        Assert.Throws<ArgumentNullException>("source", () => new PumpCurve(voltage, [Point(4, 310)], null!));
    }

    [Fact]
    public void Ends_GiveTheFirstAndLastPoint()
    {
        PumpCurve curve = Curve((4, 310), (6, 262), (8, 206));

        Assert.Equal((4, 8), (curve.LeastPressureRise.Bars, curve.GreatestPressureRise.Bars));
        Assert.Equal((206, 310), (curve.LeastFlow.LitersPerHour, curve.GreatestFlow.LitersPerHour));
    }

    private static PumpCurve Curve(params (double Bar, double LitersPerHour)[] points) =>
        new(
            ElectricPotential.FromVolts(PumpKnots.Volts),
            points.Select(p => Point(p.Bar, p.LitersPerHour)),
            PumpKnots.Source
        );

    private static PumpCurve.Point Point(double bar, double litersPerHour) =>
        new(Pressure.FromBars(bar), VolumeFlow.FromLitersPerHour(litersPerHour), ElectricCurrent.FromAmperes(10));
}

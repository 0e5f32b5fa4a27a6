using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Wiring;

/// <summary>Sizes and conductors.</summary>
[Properties(Arbitrary = [typeof(WiringArbitraries)])]
public sealed class WireTests
{
    private const double FeetInAThousand = 304.8;

    // Nominal diameters in inches, rounded there to four decimals or three digits.
    [Theory]
    [InlineData(-3, 0.4600)]
    [InlineData(0, 0.3249)]
    [InlineData(4, 0.2043)]
    [InlineData(10, 0.1019)]
    [InlineData(12, 0.0808)]
    [InlineData(16, 0.0508)]
    [InlineData(22, 0.0253)]
    [InlineData(36, 0.0050)]
    [Trait("Source", "ASTM-B258")]
    public void FromAwg_Area_IsThatOfThePrintedDiameter(int gauge, double inches)
    {
        double diameter = Math.Sqrt(WireSize.FromAwg(gauge).Area.SquareInches * 4 / Math.PI);

        Assert.Equal(inches, diameter, 5e-5);
    }

    // Ohm per 1000 ft at 20 °C; the tables from rounded and from exact diameters differ in the last digit: 0.1 %.
    [Theory]
    [InlineData(-3, 0.04901)]
    [InlineData(0, 0.09827)]
    [InlineData(10, 0.9989)]
    [InlineData(12, 1.588)]
    [InlineData(14, 2.525)]
    [InlineData(16, 4.016)]
    [InlineData(18, 6.385)]
    [InlineData(20, 10.15)]
    [InlineData(22, 16.14)]
    [Trait("Source", "NBS-Handbook-100")]
    public void Resistance_SolidCopperAt20Celsius_IsThePrintedTable(int gauge, double ohms) =>
        Close.Within(0.001, ohms, ThousandFeet(gauge, 20));

    // Ohm per 1000 ft of solid copper at 75 °C, three digits: 0.5 %.
    [Theory]
    [InlineData(14, 3.07)]
    [InlineData(12, 1.93)]
    [InlineData(10, 1.21)]
    [InlineData(8, 0.764)]
    [Trait("Source", "NFPA-70")]
    public void Resistance_SolidCopperAt75Celsius_IsThePrintedTable(int gauge, double ohms) =>
        Close.Within(0.005, ohms, ThousandFeet(gauge, 75));

    // The same table, thicker sizes, which are stranded: 1 to 3 % more than solid copper of that gauge.
    [Theory]
    [InlineData(6, 0.491)]
    [InlineData(4, 0.308)]
    [InlineData(2, 0.194)]
    [InlineData(0, 0.122)]
    [InlineData(-3, 0.0608)]
    [Trait("Source", "NFPA-70")]
    public void Resistance_SolidCopper_IsAFewPercentBelowStranded(int gauge, double ohms) =>
        Assert.InRange(ohms / ThousandFeet(gauge, 75), 1.01, 1.03);

    // Greatest resistance of a metric automotive wire at 20 °C, in mΩ/m (value from memory): our solid copper of nominal
    // area must be below it; the standard allows for strands and tolerance, some 7 % to 10 %.
    [Theory]
    [InlineData(0.5, 37.1)]
    [InlineData(1.0, 18.5)]
    [InlineData(2.5, 7.60)]
    [InlineData(4, 4.71)]
    [InlineData(6, 3.14)]
    [Trait("Source", "ISO-6722")]
    public void Resistance_MetricSize_IsBelowTheStandardsGreatest(double area, double milliohms)
    {
        var meter = new Conductor(
            WireSize.FromArea(Area.FromSquareMillimeters(area)),
            Length.FromMeters(1),
            Temperature.FromDegreesCelsius(20)
        );

        Assert.InRange(milliohms / meter.Resistance.Milliohms, 1.06, 1.11);
    }

    // R(75 °C)/R(20 °C) of copper is 1.21615.
    [Fact]
    [Trait("Source", "NBS-Handbook-100")]
    public void Resistance_Warm_GrowsByThePrintedFactor() =>
        Close.Within(1e-9, 1.21615, ThousandFeet(12, 75) / ThousandFeet(12, 20));

    [Property]
    public void ToNearestAwg_OfAGauge_IsThatGauge(Wire wire) => Assert.Equal(wire.Gauge, wire.Size.ToNearestAwg());

    [Property]
    public void Resistance_GoesWithLength(Wire wire) =>
        Close.Within(
            1e-14,
            3 * wire.ToConductor().Resistance.Ohms,
            (wire with { Centimeters = 3 * wire.Centimeters }).ToConductor().Resistance.Ohms
        );

    [Property]
    public void Resistance_OfParallelWires_IsShared(Wire wire) =>
        Close.Within(
            1e-14,
            wire.ToConductor().Resistance.Ohms / 4,
            Conductor.FromParallel(4, wire.Size, wire.Length, wire.Temperature).Resistance.Ohms
        );

    // Three gauges halve the area, to 0.24 %: 92^(6/39) is 2.005.
    [Property]
    public void Resistance_ThreeGaugesThinner_IsAboutDoubled(Wire wire)
    {
        Wire thinner = wire with { Gauge = wire.Gauge + 3 };

        Close.Within(0.003, 2, thinner.ToConductor().Resistance.Ohms / wire.ToConductor().Resistance.Ohms);
    }

    [Property]
    public void Resistance_Warmer_IsMore(Wire wire)
    {
        if (wire.Degrees >= 150)
        {
            return;
        }

        Assert.True(
            (wire with { Degrees = wire.Degrees + 1 }).ToConductor().Resistance > wire.ToConductor().Resistance
        );
    }

    [Theory]
    [InlineData(-3, "4/0 AWG")]
    [InlineData(0, "1/0 AWG")]
    [InlineData(12, "12 AWG")]
    public void FromAwg_Name_IsTheTrades(int gauge, string name) =>
        Assert.Equal(name, WireSize.FromAwg(gauge).ToString());

    [Fact]
    public void FromArea_Name_IsInSquareMillimeters() =>
        Assert.Equal("2.5 mm²", WireSize.FromArea(Area.FromSquareMillimeters(2.5)).Name);

    // 2.5 mm² lies between 14 AWG (2.08 mm²) and 13 AWG (2.62 mm²), nearer to 13.
    [Fact]
    [Trait("Source", "ASTM-B258")]
    public void ToNearestAwg_OfAMetricSize_IsTheNearest() =>
        Assert.Equal(13, WireSize.FromArea(Area.FromSquareMillimeters(2.5)).ToNearestAwg());

    [Fact]
    public void ToNearestAwg_OfABusBar_Refuses()
    {
        var error = Assert.Throws<InvalidOperationException>(() =>
            WireSize.FromArea(Area.FromSquareMillimeters(500)).ToNearestAwg()
        );

        Assert.Equal("No gauge from 4/0 to 40 AWG is near 500 mm².", error.Message);
    }

    [Theory]
    [InlineData(-4)]
    [InlineData(41)]
    public void FromAwg_Outside_Refuses(int gauge)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => WireSize.FromAwg(gauge));

        Words.Says($"-3, 40, {gauge}", error);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void FromArea_NotPositive_Refuses(double area)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            WireSize.FromArea(Area.FromSquareMillimeters(area))
        );

        Words.Says($"{area} mm²", error);
    }

    [Fact]
    public void Conductor_NoLength_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new Conductor(WireSize.FromAwg(12), Length.FromMeters(0), Temperature.FromDegreesCelsius(20))
        );

        Assert.Equal("length", error.ParamName);
    }

    [Fact]
    public void Conductor_TooHot_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new Conductor(WireSize.FromAwg(12), Length.FromMeters(1), Temperature.FromDegreesCelsius(200))
        );

        Words.Says("-40 °C, 150 °C, 200 °C", error);
    }

    [Fact]
    public void FromParallel_NoWires_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Conductor.FromParallel(0, WireSize.FromAwg(12), Length.FromMeters(1), Temperature.FromDegreesCelsius(20))
        );

        Words.Says("1, 100, 0", error);
    }

    private static double ThousandFeet(int gauge, double celsius) =>
        new Conductor(
            WireSize.FromAwg(gauge),
            Length.FromMeters(FeetInAThousand),
            Temperature.FromDegreesCelsius(celsius)
        )
            .Resistance
            .Ohms;
}

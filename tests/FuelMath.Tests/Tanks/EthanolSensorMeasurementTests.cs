using FsCheck.Xunit;
using FuelMath.Tests.Fuels;
using UnitsNet;

namespace FuelMath.Tests.Tanks;

/// <summary>Ethanol content from a sensor and from a shake-out with water.</summary>
[Properties(Arbitrary = [typeof(FuelArbitraries)])]
public sealed class EthanolSensorMeasurementTests
{
    private static readonly EthanolSensor Sensor = EthanolSensor.FromUsualScale(Ratio.FromPercent(2));

    // A table of a workshop (value from memory): 60 Hz is 10 %, 100 Hz is 50 %, 135 Hz is 85 %.
    [Theory]
    [InlineData(50, 0)]
    [InlineData(60, 10)]
    [InlineData(100, 50)]
    [InlineData(135, 85)]
    [InlineData(150, 100)]
    [Trait("Source", "Common-practice")]
    public void Read_UsualSensor_IsTheUsualTable(double hertz, double percent)
    {
        EthanolSensor.Measurement measurement = Sensor.Read(Frequency.FromHertz(hertz));

        Assert.Equal(percent, measurement.Content.Percent, 1e-12);
        Assert.Equal(2, measurement.StandardUncertainty.Percent, 1e-12);
        Assert.Equal(percent - 4, measurement.Lowest.Percent, 1e-12);
        Assert.Equal(percent + 4, measurement.Highest.Percent, 1e-12);
        Assert.Contains("water and methanol", Assert.Single(measurement.Estimates), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(49)]
    [InlineData(170)]
    public void Read_BeyondTheLine_Refuses(double hertz) =>
        Words.Says(
            $"50 Hz, 150 Hz, {hertz} Hz",
            Assert.Throws<ArgumentOutOfRangeException>(() => Sensor.Read(Frequency.FromHertz(hertz)))
        );

    [Fact]
    public void Sensor_WithOneFrequency_Refuses() =>
        Words.Says(
            "50 Hz",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                new EthanolSensor(
                    Frequency.FromHertz(50),
                    Frequency.FromHertz(50),
                    Ratio.FromPercent(2),
                    TestFuels.Invented
                )
            )
        );

    [Fact]
    public void Sensor_WithoutUncertainty_Refuses() =>
        Words.Says(
            "0 %",
            Assert.Throws<ArgumentOutOfRangeException>(() => EthanolSensor.FromUsualScale(Ratio.FromPercent(0)))
        );

    [Fact]
    public void ToWorking_OfASensor_ShowsTheLine() =>
        Assert.Contains(
            "xs = (s - s0) / (s1 - s0)",
            Sensor.Read(Frequency.FromHertz(85)).ToWorking().ToString(),
            StringComparison.Ordinal
        );

    // Made with the alcohol table by itself: 50 mL of water and v of ethanol fill V; the layer is what the table says.
    // 90 mL of fuel with 10 mL of ethanol in it over 50 mL of water: masses 7.8924 and 49.910 g, 13.654 % by mass, whose
    // density at 20 °C lies between the tabulated 981.848 at 10 % and 968.607 at 20 %, near 977 kg/m³: 59.2 mL.
    [Fact]
    [Trait("Source", "OIML-R22")]
    public void Read_TenInAHundred_CorrectsTheContraction()
    {
        EthanolSensor.Measurement measurement = Read(100, 50, 59.2);

        Assert.Equal(10, measurement.Content.Percent, 0.15);
        Assert.Equal(9.2, 100 * measurement.ToWorking().Value, 1e-9);
    }

    [Property]
    public void Read_OfAKnownContent_GivesItBack(Warmth any)
    {
        double ethanol = 1 + any.Degrees;
        EthanolWater mixture = EthanolWater.FromVolumes(
            Volume.FromMilliliters(ethanol),
            Volume.FromMilliliters(100),
            Celsius.Of(20)
        );
        double layer = (ethanol + 100) * (1 - mixture.ContractionAt(Celsius.Of(20)).DecimalFractions);

        Close.Within(1e-9, ethanol, Read(100, 100, layer).Content.Percent);
    }

    // Half a milliliter on each of three readings, uncorrelated: the spread of 8 corner combinations is about the same.
    [Fact]
    [Trait("Source", "Definition")]
    public void Read_Uncertainty_IsThatOfTheThreeReadings()
    {
        EthanolSensor.Measurement middle = Read(100, 50, 59.2);
        double layer = (Read(100, 50, 59.21).Content.Percent - Read(100, 50, 59.19).Content.Percent) / 0.02;
        double water = (Read(100, 50.01, 59.2).Content.Percent - Read(100, 49.99, 59.2).Content.Percent) / 0.02;
        double fuel = (Read(100.01, 50, 59.2).Content.Percent - Read(99.99, 50, 59.2).Content.Percent) / 0.02;

        // And 1 % of the sample where the layer is half ethanol, for what parts wrongly; here it is 10 in 60.
        double parting = 1.0 * 2 * 10 / 60;
        double expected = Math.Sqrt((0.25 * ((layer * layer) + (water * water) + (fuel * fuel))) + (parting * parting));

        // Differences over 0.02 mL against exact slopes, and a content of 10 % to 0.15 %.
        Close.Within(2e-3, expected, middle.StandardUncertainty.Percent);
    }

    [Fact]
    public void Read_LayerBelowTheWater_Refuses() =>
        Words.Says("50 ml", Assert.Throws<ArgumentOutOfRangeException>(() => Read(100, 50, 49)));

    [Fact]
    public void Read_LayerOfMoreEthanolThanWater_AsksForMoreWater() =>
        Assert.StartsWith(
            "Must be at least",
            Assert.Throws<ArgumentOutOfRangeException>(() => Read(100, 20, 60)).Message
        );

    [Fact]
    public void Read_NoUncertainty_Refuses() =>
        Words.Says(
            "0 ml",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                WaterShakeOut.Read(
                    Volume.FromMilliliters(100),
                    Volume.FromMilliliters(50),
                    Volume.FromMilliliters(59),
                    Volume.FromMilliliters(0),
                    Celsius.Of(20)
                )
            )
        );

    [Fact]
    public void ToString_ShowsContentAndTwoUncertainties() =>
        Assert.Equal("10 % ± 4 %", Sensor.Read(Frequency.FromHertz(60)).ToString());

    private static EthanolSensor.Measurement Read(double fuel, double water, double layer) =>
        WaterShakeOut.Read(
            Volume.FromMilliliters(fuel),
            Volume.FromMilliliters(water),
            Volume.FromMilliliters(layer),
            Volume.FromMilliliters(0.5),
            Celsius.Of(20)
        );
}

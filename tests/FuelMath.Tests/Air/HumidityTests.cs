using FuelMath.Tests.Fuels;
using UnitsNet;

namespace FuelMath.Tests.Air;

public sealed class HumidityTests
{
    private static readonly AbsolutePressure Sea = AbsolutePressure.StandardAtmosphere;

    // Steam tables, saturation pressure in kPa (values from memory).
    [Theory]
    [InlineData(0, 0.6113)]
    [InlineData(20, 2.339)]
    [InlineData(30, 4.247)]
    [InlineData(35, 5.629)]
    [InlineData(40, 7.385)]
    [InlineData(60, 19.95)]
    public void WaterPressure_Saturated_IsThatOfSteamTables(double celsius, double kilopascals)
    {
        Humidity humidity = Saturated(celsius);

        Close.Within(1e-3, kilopascals, humidity.WaterPressure.Si / 1000);
        Close.Within(1e-3, kilopascals / 101.325, humidity.ShareOf(Sea).DecimalFractions);
    }

    // Steam tables, at 80 and 100 °C 47.41 and 101.4 kPa (from memory): the charge is full of water that condenses.
    [Theory]
    [InlineData(20, 2.339)]
    [InlineData(80, 47.41)]
    [InlineData(100, 101.4)]
    public void VaporInCharge_MoreThanItHolds_IsThatOfSaturation(double celsius, double kilopascals) =>
        Close.Within(
            1e-3,
            kilopascals,
            Saturated(60)
                .VaporInCharge(Sea, new AbsolutePressure(Pressure.FromKilopascals(1200)), Celsius.Of(celsius))
                .Si / 1000
        );

    [Fact]
    public void VaporInCharge_CompressedAndWarm_KeepsItsShare()
    {
        AbsolutePressure vapor = Saturated(35).VaporInCharge(Sea, new AbsolutePressure(2 * Sea.Si), Celsius.Of(60));

        Close.Within(1e-12, 2 * Saturated(35).WaterPressure.Si, vapor.Si);
    }

    [Fact]
    public void VaporInCharge_HotterThanKnownAndMuchVapor_IsRefused() =>
        Assert.Throws<OutsideTableException>(() =>
            Saturated(60).VaporInCharge(Sea, new AbsolutePressure(Pressure.FromKilopascals(1200)), Celsius.Of(110))
        );

    [Theory]
    [InlineData(-0.1, 20, "relative")]
    [InlineData(1.1, 20, "relative")]
    [InlineData(0.5, -1, "airTemperature")]
    [InlineData(0.5, 61, "airTemperature")]
    public void Constructor_OutsideItsRange_NamesTheArgument(double relative, double celsius, string name) =>
        Assert.Throws<ArgumentOutOfRangeException>(
            name,
            () => new Humidity(Ratio.FromDecimalFractions(relative), Celsius.Of(celsius))
        );

    [Fact]
    public void ShareOf_PressureBelowThatOfTheWater_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(
            "ambient",
            () => Saturated(60).ShareOf(new AbsolutePressure(Pressure.FromKilopascals(15)))
        );

    [Fact]
    public void VaporInCharge_BelowFreezing_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(
            "charge",
            () => Saturated(20).VaporInCharge(Sea, Sea, Celsius.Of(-1))
        );

    private static Humidity Saturated(double celsius) => new(Ratio.FromPercent(100), Celsius.Of(celsius));
}

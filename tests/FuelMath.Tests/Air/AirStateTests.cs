using FsCheck.Xunit;
using FuelMath.Tests.Fuels;
using UnitsNet;

namespace FuelMath.Tests.Air;

[Properties(Arbitrary = [typeof(FuelArbitraries)])]
public sealed class AirStateTests
{
    private static readonly AbsolutePressure Sea = AbsolutePressure.StandardAtmosphere;

    // A published table by height above the sea: kelvins, pascals to five digits, kg/m³ to five digits.
    [Theory]
    [InlineData(-2000, 301.15, 127_780, 1.4782)]
    [InlineData(0, 288.15, 101_320, 1.2250)]
    [InlineData(2000, 275.15, 79_501, 1.0066)]
    [InlineData(6000, 249.19, 47_218, 0.66011)]
    [InlineData(8000, 236.22, 35_652, 0.52579)]
    [InlineData(10_000, 223.25, 26_500, 0.41351)]
    [Trait("Source", "ISO-2533")]
    public void AtHeight_Table_IsThePrintedOne(double meters, double kelvins, double pascals, double density)
    {
        AirState air = StandardAtmosphere.AtHeight(Length.FromMeters(meters));

        Assert.Equal(kelvins, air.Temperature.Kelvins, 0.006);
        Close.Within(1e-4, pascals, air.Pressure.AboveVacuum.Pascals);
        Close.Within(1e-4, density, air.Density.KilogramsPerCubicMeter);
    }

    // An independent evaluation of the same model, to six digits.
    [Theory]
    [InlineData(500, 284.9, 95_461.289, 1.16727)]
    [InlineData(1000, 281.651, 89_876.285, 1.11166)]
    [InlineData(1500, 278.402, 84_559.677, 1.0581)]
    [InlineData(3000, 268.659, 70_121.162, 0.909254)]
    [InlineData(5000, 255.675, 54_048.286, 0.736428)]
    [Trait("Source", "ISO-2533")]
    public void AtHeight_Between_IsTheSeparateEvaluation(double meters, double kelvins, double pascals, double density)
    {
        AirState air = StandardAtmosphere.AtHeight(Length.FromMeters(meters));

        Close.Within(5e-6, kelvins, air.Temperature.Kelvins);
        Close.Within(5e-6, pascals, air.Pressure.AboveVacuum.Pascals);
        Close.Within(5e-6, density, air.Density.KilogramsPerCubicMeter);
    }

    // The standard itself counts geopotential altitude: 54 019.9 Pa and 0.736116 kg/m³ at 5 km (from memory).
    [Fact]
    [Trait("Source", "ISO-2533")]
    public void AtGeopotentialAltitude_FiveKilometers_IsTheStandards()
    {
        AirState air = StandardAtmosphere.AtGeopotentialAltitude(Length.FromKilometers(5));

        Close.Within(2e-6, 54_019.9, air.Pressure.AboveVacuum.Pascals);
        Close.Within(2e-6, 0.736116, air.Density.KilogramsPerCubicMeter);
    }

    // Table of moist air with a dew point of 10 °C, in g/L at mm of mercury; four digits, and an older gas constant: 0.1 %.
    // Relative humidity is 1.2281 kPa over the saturation of each temperature.
    [Theory]
    [InlineData(760, 10, 1.241)]
    [InlineData(760, 20, 1.199)]
    [InlineData(760, 40, 1.122)]
    [InlineData(760, 60, 1.055)]
    [InlineData(700, 20, 1.104)]
    [InlineData(700, 40, 1.033)]
    [InlineData(900, 20, 1.421)]
    [InlineData(600, 20, 0.945)]
    [Trait("Source", "CRC-Handbook")]
    public void Density_WithADewPointOfTenDegrees_IsThePrintedTable(double millimeters, double celsius, double density)
    {
        AirState saturated = new(Sea, Celsius.Of(celsius), Ratio.FromPercent(100));
        double humidity = Math.Min(1, 1228.1 / saturated.WaterPressure.AboveVacuum.Pascals);

        AirState air = new(
            new(Pressure.FromPascals(millimeters * 133.322387415)),
            Celsius.Of(celsius),
            Ratio.FromDecimalFractions(humidity)
        );

        Close.Within(0.0015, density, air.Density.KilogramsPerCubicMeter);
    }

    // Steam tables, from memory: 0.6113, 1.2281, 2.3392, 4.2469, 7.3851, 12.352, 19.947 kPa; the fit is within 0.2 %.
    [Theory]
    [InlineData(0.01, 0.6117)]
    [InlineData(10, 1.2281)]
    [InlineData(20, 2.3392)]
    [InlineData(30, 4.2469)]
    [InlineData(40, 7.3851)]
    [InlineData(50, 12.352)]
    [InlineData(60, 19.947)]
    [Trait("Source", "Cengel-Boles-2015")]
    public void WaterPressure_AtSaturation_IsThatOfTheSteamTable(double celsius, double kilopascals) =>
        Close.Within(
            0.002,
            kilopascals,
            new AirState(Sea, Celsius.Of(celsius), Ratio.FromPercent(100)).WaterPressure.AboveVacuum.Kilopascals
        );

    // The usual value of a weighing room, from memory: 1.1993 kg/m³ at 20 °C, 50 % and 101 325 Pa; compressibility and
    // enhancement, which are left out here, are 0.05 %.
    [Fact]
    [Trait("Source", "CIPM-2007")]
    public void Density_OfAWeighingRoom_IsTheUsualValue() =>
        Close.Within(
            0.0006,
            1.1993,
            new AirState(Sea, Celsius.Of(20), Ratio.FromPercent(50)).Density.KilogramsPerCubicMeter
        );

    [Property]
    public void Density_MoreHumid_IsLess(Warmth at)
    {
        AirState dry = new(Sea, at.Temperature, Ratio.FromPercent(20));
        AirState humid = new(Sea, at.Temperature, Ratio.FromPercent(80));

        Assert.True(humid.Density < dry.Density);
        Assert.True(humid.DryAirDensity < humid.Density);
        Assert.True(humid.FuelRatioTo(dry).DecimalFractions < 1);
    }

    [Property]
    public void FuelRatioTo_ThereAndBack_IsNone(Warmth one, Warmth other)
    {
        AirState a = new(Sea, one.Temperature, Ratio.FromPercent(60));
        AirState b = new(Sea, other.Temperature, Ratio.FromPercent(10));

        Close.Within(1e-14, 1, a.FuelRatioTo(b).DecimalFractions * b.FuelRatioTo(a).DecimalFractions);
    }

    // Dry air of the table at 2000 m over that at sea level: 1.0066/1.2250 of the fuel.
    [Fact]
    [Trait("Source", "ISO-2533")]
    public void FuelRatioTo_SeaLevelFromTwoKilometers_IsThatOfTheTable() =>
        Close.Within(
            1e-4,
            1.0066 / 1.2250,
            StandardAtmosphere
                .AtHeight(Length.FromMeters(2000))
                .FuelRatioTo(StandardAtmosphere.SeaLevel)
                .DecimalFractions
        );

    [Theory]
    [InlineData(-2100)]
    [InlineData(11_100)]
    public void AtHeight_OutsideTheModel_Refuses(double meters) =>
        Words.Says(
            $"-2000 m, 11000 m, {meters} m",
            Assert.Throws<ArgumentOutOfRangeException>(() => StandardAtmosphere.AtHeight(Length.FromMeters(meters)))
        );

    /// <summary>The ends of each range belong to it; a little beyond them does not.</summary>
    [Theory]
    [InlineData(-90, 0, -90.1)]
    [InlineData(200, 0, 200.1)]
    [InlineData(0, 50, -0.1)]
    [InlineData(60, 50, 60.1)]
    public void Constructor_EndOfTheRange_IsTakenAndBeyondItRefused(double end, double percent, double beyond)
    {
        Assert.Equal(
            end,
            new AirState(Sea, Celsius.Of(end), Ratio.FromPercent(percent)).Temperature.DegreesCelsius,
            1e-9
        );
        Assert.Equal(
            "temperature",
            Assert
                .Throws<ArgumentOutOfRangeException>(() =>
                    new AirState(Sea, Celsius.Of(beyond), Ratio.FromPercent(percent))
                )
                .ParamName
        );
    }

    [Theory]
    [InlineData(-2000)]
    [InlineData(11_000)]
    public void AtGeopotentialAltitude_EndOfTheModel_IsTaken(double meters) =>
        Assert.Equal(
            288.15 - (0.0065 * meters),
            StandardAtmosphere.AtGeopotentialAltitude(Length.FromMeters(meters)).Temperature.Kelvins,
            1e-9
        );

    [Fact]
    public void Constructor_HumidAndTooHot_Refuses() =>
        Words.Says(
            "0 °C, 60 °C, 70 °C",
            Assert.Throws<ArgumentOutOfRangeException>(() => new AirState(Sea, Celsius.Of(70), Ratio.FromPercent(50)))
        );

    [Fact]
    public void Constructor_MoreThanSaturated_Refuses() =>
        Words.Says(
            "0 %, 100 %, 120 %",
            Assert.Throws<ArgumentOutOfRangeException>(() => new AirState(Sea, Celsius.Of(20), Ratio.FromPercent(120)))
        );

    [Fact]
    public void Constructor_Vacuum_Refuses()
    {
        Words.Says(
            "0 kPa",
            Assert.Throws<ArgumentOutOfRangeException>(() => AirState.FromDryAir(default, Celsius.Of(20)))
        );
        Assert.StartsWith(
            "Must be above that of the water in the air, ",
            Assert
                .Throws<ArgumentOutOfRangeException>(() =>
                    new AirState(new(Pressure.FromKilopascals(5)), Celsius.Of(50), Ratio.FromPercent(100))
                )
                .Message
        );
    }

    [Fact]
    public void Workings_EndInTheirValues()
    {
        AirState air = new(Sea, Celsius.Of(30), Ratio.FromPercent(70));

        Assert.Equal(air.Density.KilogramsPerCubicMeter, air.DensityWorking().Value);
        Assert.Equal(air.DryAirDensity.KilogramsPerCubicMeter, air.DryAirWorking().Value);
        Assert.Contains("[CIPM-2007]", air.DensityWorking().ToString(), StringComparison.Ordinal);
        Assert.Contains(
            "[ISO-2533]",
            StandardAtmosphere.PressureWorking(Length.FromKilometers(1)).ToString(),
            StringComparison.Ordinal
        );
    }
}

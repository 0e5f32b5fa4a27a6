using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Tests.Tightness;

/// <summary>Verdicts, the false pass, and what is refused.</summary>
public sealed class DecayTestTests
{
    private static readonly ClosedLine Line = new(0.5, 20, 0, 4, 60);

    private static readonly DecayTest.Uncertainty Gauge = new(
        DecayTest.Uncertainty.DifferenceOfResolution(Pressure.FromKilopascals(1)),
        TemperatureDelta.FromKelvins(0.02),
        Duration.FromSeconds(1),
        new ClosedVolume.Uncertainty(
            Ratio.FromPercent(5),
            Ratio.FromPercent(10),
            Ratio.FromPercent(20),
            default,
            default,
            Volume.Zero
        )
    );

    // Half of a digit's step, as a rectangular distribution: 0.29 of the step.
    [Fact]
    [Trait("Source", "JCGM-100")]
    public void DifferenceOfResolution_IsThePrintedShare() =>
        Assert.Equal(0.29, DecayTest.Uncertainty.DifferenceOfResolution(Pressure.FromPascals(1)).Pascals, 0.005);

    // One liter, one kilopascal in a minute: 9.86923 cm3/min of gas at standard pressure, from V dP/(Ps dt). Trapped gas that
    // pushes as much liquid out is the same to the square of half a percent.
    [Fact]
    public void LeakedVolume_OfALiterOfGas_IsTheIsothermalFormula()
    {
        var volume = new ClosedVolume(
            ClosedLine.Hot,
            Temperature.FromDegreesCelsius(20),
            Volume.FromCubicMillimeters(1),
            new ClosedVolume.ElasticWalls(default, default),
            Volume.FromLiters(1),
            AbsolutePressure.StandardAtmosphere
        );

        Volume released = volume.ReleasedBetween(
            new GaugePressure(Pressure.FromKilopascals(0.5)),
            new GaugePressure(Pressure.FromKilopascals(-0.5))
        );

        Close.Within(5e-5, 9.86923, released.CubicCentimeters);
    }

    [Theory]
    [InlineData(60, DecayTest.Outcome.Passes)]
    [InlineData(20, DecayTest.Outcome.Undecided)]
    [InlineData(10, DecayTest.Outcome.Fails)]
    public void Judge_AgainstTheLimit_IsWhatTheUncertaintyAllows(
        double cubicMillimetersPerMinute,
        DecayTest.Outcome verdict
    )
    {
        // 21 mm3/min with an expanded uncertainty of some 5 mm3/min.
        LeakPath leak = LeakPath.Constant(VolumeFlow.FromCubicMillimetersPerSecond(21 / 60.0));
        var time = Duration.FromMinutes(10);
        DecayTest test = new(
            Line.Volume,
            ClosedLine.Reading(0, Line.Start),
            ClosedLine.Reading(10, leak.PressureAfter(Line.Volume, Line.Start, time)),
            Gauge
        );

        Assert.InRange(test.ExpandedUncertainty.CubicMillimetersPerSecond * 60, 3, 10);
        Assert.Equal(verdict, test.Judge(VolumeFlow.FromCubicMillimetersPerSecond(cubicMillimetersPerMinute / 60)));
        Assert.False(test.IsAtFloor);
    }

    /// <summary>Hot fuel: the gauge stands at vapor pressure however much leaks, and that is no pass.</summary>
    [Fact]
    public void Judge_AtVaporPressure_IsNoTest()
    {
        ClosedVolume hot = Line.At(70);
        LeakPath leak = LeakPath.Constant(VolumeFlow.FromCubicMillimetersPerSecond(100));
        Assert.True(hot.Floor.AboveAmbient.Kilopascals > 20);
        GaugePressure early = leak.PressureAfter(hot, Line.Start, Duration.FromMinutes(10));
        GaugePressure late = leak.PressureAfter(hot, Line.Start, Duration.FromMinutes(30));
        Assert.Equal(early, late);
        Assert.Equal(hot.Floor, late);

        DecayTest test = new(hot, ClosedLine.Reading(10, early, 70), ClosedLine.Reading(30, late, 70), Gauge);

        Assert.Equal(0, test.Rate.CubicMillimetersPerSecond, 1e-9);
        Assert.True(test.IsAtFloor);
        Assert.Equal(DecayTest.Outcome.NotATest, test.Judge(VolumeFlow.FromCubicMillimetersPerSecond(1)));
    }

    /// <summary>A line without pressure cannot be seen to leak either.</summary>
    [Fact]
    public void Judge_AtAmbient_IsNoTest()
    {
        DecayTest test = new(Line.Volume, ClosedLine.Reading(0, default), ClosedLine.Reading(30, default), Gauge);

        Assert.Equal(DecayTest.Outcome.NotATest, test.Judge(VolumeFlow.FromCubicMillimetersPerSecond(100)));
    }

    /// <summary>A kelvin of warming hides a real leak from anyone who does not read a thermometer.</summary>
    [Fact]
    public void Rate_WithoutThermometer_IsWrongByTheExpansion()
    {
        DecayTest blind = new(
            Line.Volume,
            ClosedLine.Reading(0, Line.Start),
            ClosedLine.Reading(10, Line.Start),
            Gauge
        );
        DecayTest seeing = new(
            Line.Volume,
            ClosedLine.Reading(0, Line.Start),
            ClosedLine.Reading(10, Line.Start, 20.5),
            Gauge
        );

        // 0.5 L x 1.25e-3 /K x 0.5 K = 0.31 cm3.
        Assert.Equal(0, blind.LeakedVolume.CubicCentimeters, 1e-9);
        Assert.InRange(seeing.LeakedVolume.CubicCentimeters, 0.28, 0.34);
    }

    [Fact]
    public void Contributions_NameTheWorstFirst()
    {
        DecayTest.Uncertainty rough = new(
            Pressure.FromKilopascals(0.1),
            TemperatureDelta.FromKelvins(0.5),
            Duration.FromSeconds(1),
            new ClosedVolume.Uncertainty(default, default, default, default, default, default)
        );
        DecayTest test = new(
            Line.Volume,
            ClosedLine.Reading(0, Line.Start),
            ClosedLine.Reading(10, new GaugePressure(Pressure.FromBars(3.5))),
            rough
        );

        Assert.StartsWith("temperature", test.Contributions[0].Input);
        Assert.True(test.Contributions[0].Share.DecimalFractions > 0.4);
        Assert.DoesNotContain(test.Contributions, c => c.Input == "bulk modulus");
    }

    [Fact]
    public void Estimates_SayWhatTheFuelDoesNotKnow()
    {
        ClosedVolume ethanol = new(
            StandardFuels.Ethanol,
            Temperature.FromDegreesCelsius(20),
            Volume.FromLiters(1),
            new ClosedVolume.ElasticWalls(default, default),
            default,
            ClosedLine.Ambient
        );
        DecayTest known = new(ethanol, ClosedLine.Reading(0, Line.Start), ClosedLine.Reading(1, Line.Start), Gauge);
        Assert.DoesNotContain(known.Estimates, e => e.Contains("vapor pressure", StringComparison.Ordinal));

        Fuel blend = StandardFuels.PumpGasoline.WithVaporPressure(
            "unknown",
            LiquidVaporPressure.Unknown("nobody measured it.")
        );
        ClosedVolume unknown = new(
            blend,
            Temperature.FromDegreesCelsius(20),
            Volume.FromLiters(1),
            new ClosedVolume.ElasticWalls(default, default),
            default,
            ClosedLine.Ambient
        );
        DecayTest test = new(unknown, ClosedLine.Reading(0, Line.Start), ClosedLine.Reading(1, Line.Start), Gauge);
        Assert.Contains(
            "The vapor pressure of 'unknown' is not known at this temperature: a pressure that stands still may be vapor, not tightness.",
            test.Estimates
        );
        Assert.Contains(test.Estimates, e => e.StartsWith("Bulk modulus of gasoline", StringComparison.Ordinal));
        Assert.Equal(default, unknown.Floor);
    }

    [Fact]
    public void Constructor_ReadingsThatDoNotFit_AreRefused()
    {
        Words.Refused<ArgumentException>(
            "after",
            "5 m",
            () =>
                _ = new DecayTest(
                    Line.Volume,
                    ClosedLine.Reading(5, Line.Start),
                    ClosedLine.Reading(5, Line.Start),
                    Gauge
                )
        );
        Words.Refused<ArgumentException>(
            "before",
            "20 °C, 25 °C",
            () =>
                _ = new DecayTest(
                    Line.Volume,
                    ClosedLine.Reading(0, Line.Start, 25),
                    ClosedLine.Reading(5, Line.Start),
                    Gauge
                )
        );
    }

    [Fact]
    public void Judge_NoLimit_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "limit",
            "0 m³/s",
            () =>
                new DecayTest(
                    Line.Volume,
                    ClosedLine.Reading(0, Line.Start),
                    ClosedLine.Reading(1, Line.Start),
                    Gauge
                ).Judge(default)
        );

    [Fact]
    public void ClosedVolume_BadInput_IsRefused()
    {
        Words.Refused<ArgumentOutOfRangeException>("fuelVolume", "0 l", () => _ = (Line with { Liters = 0 }).Volume);
        Words.Refused<ArgumentOutOfRangeException>("gas", "-1 cm³", () => _ = (Line with { Gas = -1 }).Volume);
        Assert.Contains(
            "nobody gave it.",
            Assert
                .Throws<UnknownPropertyException>(() =>
                    new ClosedVolume(
                        StandardFuels.TwoStrokeOil,
                        Temperature.FromDegreesCelsius(20),
                        Volume.FromLiters(1),
                        new ClosedVolume.ElasticWalls(default, default),
                        default,
                        ClosedLine.Ambient
                    )
                )
                .Message
        );
    }

    [Fact]
    public void WithGasFromBleed_LessThanFuelAndWallsGive_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "drawn",
            "0.271429 cm³, 0.1 cm³",
            () =>
                new ClosedVolume(
                    StandardFuels.PumpGasoline.WithBulkModulus(
                        "round",
                        LiquidBulkModulus.FromPoints(
                            [Temperature.FromDegreesCelsius(0), Temperature.FromDegreesCelsius(50)],
                            [Pressure.FromGigapascals(1.4), Pressure.FromGigapascals(1.4 - 1e-12)],
                            new FuelMath.DataSource("Workshop-class", "test")
                        )
                    ),
                    Temperature.FromDegreesCelsius(20),
                    Volume.FromLiters(0.5),
                    new ClosedVolume.ElasticWalls(Compressibility.FromInversePascals(2e-9), default),
                    default,
                    ClosedLine.Ambient
                ).WithGasFromBleed(
                    Volume.FromCubicCentimeters(0.1),
                    new GaugePressure(Pressure.FromBars(3)),
                    new GaugePressure(Pressure.FromBars(1))
                )
        );

    [Fact]
    public void WithGasFromBleed_RisingPressure_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "after",
            () => Line.Volume.WithGasFromBleed(Volume.FromCubicCentimeters(1), default, Line.Start)
        );

    [Fact]
    public void PressureAfterLosing_MoreThanItHolds_SaysHowMuch()
    {
        var error = Assert.Throws<NoSolutionException>(() =>
            Line.Volume.PressureAfterLosing(Line.Start, Volume.FromLiters(1))
        );

        Words.Says("1000 cm³", error);
    }

    [Fact]
    public void TimeToFall_BelowTheFloor_SaysWhereItStops()
    {
        LeakPath leak = LeakPath.Constant(Line.LeakRate);

        Assert.Contains(
            "where the fuel boils",
            Assert
                .Throws<NoSolutionException>(() =>
                    leak.TimeToFall(Line.At(70), Line.Start, new(Pressure.FromKilopascals(5)))
                )
                .Message
        );
        Assert.Contains(
            "the ambient pressure",
            Assert.Throws<NoSolutionException>(() => leak.TimeToFall(Line.Volume, Line.Start, default)).Message
        );
        Words.Refused<ArgumentOutOfRangeException>("after", () => leak.TimeToFall(Line.Volume, Line.Start, Line.Start));
        Words.Refused<ArgumentOutOfRangeException>(
            "before",
            () => leak.PressureAfter(Line.Volume, default, Duration.FromSeconds(1))
        );
    }

    [Fact]
    public void PressureRise_CooledToVapor_IsRefused() =>
        Assert.Contains(
            "where the fuel boils",
            Assert
                .Throws<NoSolutionException>(() =>
                    Line.Volume.PressureRiseFor(Line.Start, TemperatureDelta.FromKelvins(-15))
                )
                .Message
        );

    [Theory]
    [InlineData(1)]
    [InlineData(1001)]
    public void DecayWait_Steps_AreGuarded(int steps) =>
        Words.Refused<ArgumentOutOfRangeException>(
            nameof(steps),
            $"2, 1000, {steps}",
            () =>
                DecayTest.Wait.ToSee(
                    Line.Volume,
                    Line.Start,
                    LeakPath.Constant(Line.LeakRate),
                    Pressure.FromKilopascals(1),
                    steps
                )
        );
}

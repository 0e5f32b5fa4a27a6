using System.Globalization;
using System.Text.Json.Nodes;
using FuelMath.Bench;
using FuelMath.Tests.Bench;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath.Tests.Documents;

public sealed class BenchDocumentTests
{
    /// <summary>Readings of every kind, in the units that instruments show.</summary>
    internal static BenchRecord Every { get; } = new("set of two", [Full(), new("B", [Static(940)])]);

    [Fact]
    public void Write_ThenRead_GivesTheSameText()
    {
        string text = BenchDocument.Write(Every);

        Assert.Equal(text, BenchDocument.Write(BenchDocument.Read(text)));
    }

    /// <summary>Number, unit, step and repeats come back as they went in.</summary>
    [Fact]
    public void Read_OfWritten_KeepsUnitsStepsAndRepeats()
    {
        BenchedInjector.Series now = BenchDocument.Read(BenchDocument.Write(Every)).Injector("A").Now;

        Assert.Equal(3, now.StaticFlow.Length);
        Assert.Equal(
            ("277.8 cm³", "0.1 cm³"),
            (Of(now.StaticFlow[0].Collected.Volume), Of(now.StaticFlow[0].Collected.VolumeResolution))
        );
        Assert.Equal("43.5 psi", Of(now.StaticFlow[0].Conditions.DifferentialPressure));
        Assert.Equal("70 °F", Of(now.StaticFlow[0].Conditions.FluidTemperature));
        // The unit library writes minutes as "m".
        Assert.Equal("0.5 m", Of(now.StaticFlow[0].CollectionTime));
        Assert.Equal(
            ("12.25 g", "10 mg"),
            (Of(now.Pulses[0].Collected.Mass), Of(now.Pulses[0].Collected.MassResolution))
        );
        Assert.Equal(("3.5 ms", 1500), (Of(now.Pulses[0].PulseWidth), now.Pulses[0].Pulses));
        Assert.Equal(WidthCorrections.Pressure, now.Pulses[0].Conditions.Widths);
        Assert.Equal("peak 4 A and hold 1 A", now.Pulses[0].Conditions.Driver!.ToString());
        Assert.Equal(1100, now.DeadTimes[0].DeadTime.Microseconds, 1e-12);
        Assert.Equal(DurationUnit.Microsecond, now.DeadTimes[0].DeadTime.Unit);
        Assert.Equal("saturated", now.DeadTimes[0].Conditions.Driver!.ToString());
        Assert.Equal(2, now.Leakage[0].Drops);
        Assert.Equal(("0.1 ml", "0.02 ml"), (Of(now.Leakage[1].Collected), Of(now.Leakage[1].Resolution)));
        Assert.Equal(("12.6 Ω", "0.1 Ω"), (Of(now.Coil[0].Coil.Measured), Of(now.Coil[0].Resolution)));
    }

    [Fact]
    public void Read_OfWritten_KeepsTheSeriesFromBefore()
    {
        BenchedInjector one = BenchDocument.Read(BenchDocument.Write(Every)).Injector("A");

        Assert.Equal("251 cm³", Of(Assert.Single(one.BeforeCleaning).Collected.Volume));
        Assert.Null(BenchDocument.Read(BenchDocument.Write(Every)).Injector("B").Before);
    }

    /// <summary>A fluid of one's own stands once at the root.</summary>
    [Fact]
    public void Write_OwnFluid_ListsItOnce()
    {
        Fuel fluid = FuelBlend.ByVolume(
            "test mix",
            Temperature.FromDegreesCelsius(15),
            [
                new FuelBlend.Part(StandardFuels.NHeptane, Ratio.FromPercent(50)),
                new FuelBlend.Part(StandardFuels.IsoOctane, Ratio.FromPercent(50)),
            ]
        );
        BenchConditions held = new(Pressure.FromBars(3), fluid, Temperature.FromDegreesCelsius(20), TestBench.Source);
        string text = BenchDocument.Write(new("blend", [new("A", [Static(900, held), Static(901, held)])]));

        Assert.Single(JsonNode.Parse(text)!["fuels"]!.AsArray());
        Assert.Equal(text, BenchDocument.Write(BenchDocument.Read(text)));
    }

    /// <summary>A mass where a volume belongs: the refusal names the place and what is allowed.</summary>
    [Fact]
    public void Read_WrongKindOfUnit_IsRefused() =>
        Refused("\"277.8 cm3\"", "\"277.8 g\"", "$.injectors[0].now.staticFlow[0].collected.amount", "volume");

    [Fact]
    public void Read_WithoutPressure_IsRefused() =>
        Refused(
            "\"differentialPressure\": \"43.5 psi\",",
            "",
            "$.injectors[0].now.staticFlow[0].conditions",
            "Must have \"differentialPressure\""
        );

    [Fact]
    public void Read_PulseLongerThanPeriod_IsRefused() =>
        Refused(
            "\"3.5 ms\"",
            "\"25 ms\"",
            "$.injectors[0].now.pulses[0].pulseWidth",
            "Must be shorter than the period of 20 ms; it was 25 ms."
        );

    [Fact]
    public void Read_NameTwice_IsRefused() =>
        Refused("\"name\": \"B\"", "\"name\": \"A\"", "$.injectors", "Names must differ; 'A' is there twice.");

    /// <summary>Values that UnitsNet holds in other units are written in the usual one.</summary>
    [Fact]
    public void Write_UnitOutsideTheTable_UsesTheUsualOne() =>
        Assert.Contains(
            "\"amount\": \"1000 cm3\"",
            BenchDocument.Write(
                new(
                    "odd",
                    [
                        new(
                            "A",
                            [
                                new(
                                    CollectedFuel.FromVolume(
                                        Volume.FromCubicDecimeters(1),
                                        Volume.FromCubicCentimeters(1)
                                    ),
                                    Duration.FromMinutes(1),
                                    TestBench.Conditions
                                ),
                            ]
                        ),
                    ]
                )
            ),
            StringComparison.Ordinal
        );

    /// <summary>A rating with a measured power and a table with estimates go through a system's document.</summary>
    [Fact]
    public void System_WithMeasuredPowerAndEstimates_KeepsThem()
    {
        JsonNode system = JsonNode.Parse(TestFiles.System("time-trial-car"))!;
        JsonNode injector = system["injectors"]![0]!;
        injector["rating"]!["exponent"] = JsonNode.Parse(
            """
            {"power": 0.54, "lowestDifferentialPressure": "100 kPa", "highestDifferentialPressure": "600 kPa",
             "outside": "refuse", "source": {"key": "Workshop-class", "locator": "bench report"}}
            """
        );
        JsonArray origins = [];
        foreach (JsonNode? row in injector["deadTime"]!["values"]!.AsArray())
        {
            origins.Add(new JsonArray([.. row!.AsArray().Select(_ => JsonValue.Create("read"))]));
        }

        origins[0]![0] = "estimated";
        injector["deadTime"]!["origins"] = origins;

        string written = SystemDocument.Write(SystemDocument.Read(system.ToJsonString()));

        JsonNode back = JsonNode.Parse(written)!["injectors"]![0]!;
        Assert.Equal(0.54, back["rating"]!["exponent"]!["power"]!.GetValue<double>(), 1e-15);
        Assert.Equal("estimated", back["deadTime"]!["origins"]![0]![0]!.GetValue<string>());
        Assert.Equal(written, SystemDocument.Write(SystemDocument.Read(written)));
    }

    private static void Refused(string from, string to, string place, string words)
    {
        string text = BenchDocument.Write(Every);
        int at = text.IndexOf(from, StringComparison.Ordinal);
        Assert.True(at >= 0);
        var error = Assert.Throws<DocumentException>(() =>
            BenchDocument.Read(string.Concat(text.AsSpan(0, at), to, text.AsSpan(at + from.Length)))
        );
        Assert.Contains(place, error.Message, StringComparison.Ordinal);
        Words.Says(words, error);
    }

    private static string Of(IQuantity? quantity) => quantity!.ToString("g", CultureInfo.InvariantCulture);

    private static BenchedInjector Full()
    {
        BenchConditions psi = new(
            Pressure.FromPoundsForcePerSquareInch(43.5),
            StandardFuels.NHeptane,
            Temperature.FromDegreesFahrenheit(70),
            TestBench.Source
        );
        BenchConditions held = psi.WithDriver(
                new InjectorDriver.PeakAndHold(ElectricCurrent.FromAmperes(4), ElectricCurrent.FromAmperes(1))
            )
            .WithWidths(WidthCorrections.Pressure);
        var now = new BenchedInjector.Series(
            [Static(277.8, psi), Static(276.6, psi), Static(276.6, psi)],
            [
                new(
                    Duration.FromMilliseconds(3.5),
                    Duration.FromMilliseconds(20),
                    1500,
                    CollectedFuel.FromMass(Mass.FromGrams(12.25), Mass.FromMilligrams(10)),
                    ElectricPotential.FromVolts(13.5),
                    held
                ),
            ],
            [
                new(
                    ElectricPotential.FromVolts(14),
                    Duration.FromMicroseconds(1100),
                    Duration.FromMicroseconds(1),
                    psi.WithDriver(InjectorDriver.Saturated.WithoutBallast)
                ),
            ],
            [
                LeakageVerdict.Reading.FromDrops(2, Duration.FromMinutes(3), psi),
                LeakageVerdict.Reading.FromVolume(
                    Volume.FromMilliliters(0.1),
                    Volume.FromMilliliters(0.02),
                    Duration.FromMinutes(10),
                    psi.WithDriver(new InjectorDriver.Saturated(ElectricResistance.FromOhms(6)))
                ),
            ],
            [
                new(
                    new CoilResistance(ElectricResistance.FromOhms(12.6), Temperature.FromDegreesCelsius(24)),
                    ElectricResistance.FromOhms(0.1)
                ),
            ]
        );
        return BenchedInjector.FromCleaning("A", BenchedInjector.Series.FromStaticFlow([Static(251)]), now);
    }

    private static StaticFlowReading Static(double cubicCentimeters) => Static(cubicCentimeters, TestBench.Conditions);

    private static StaticFlowReading Static(double cubicCentimeters, BenchConditions conditions) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromCubicCentimeters(0.1)),
            Duration.FromMinutes(0.5),
            conditions
        );
}

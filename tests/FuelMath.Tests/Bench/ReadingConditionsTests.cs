using System.Globalization;
using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>Drivers and corrected widths as conditions of readings, and the test of linearity.</summary>
public sealed class ReadingConditionsTests
{
    private static readonly double[] Widths = [3, 5, 8, 12];

    [Fact]
    public void Characterization_TwoDrivers_IsRefused()
    {
        BenchConditions held = TestBench.Conditions.WithDriver(
            new InjectorDriver.PeakAndHold(ElectricCurrent.FromAmperes(4), ElectricCurrent.FromAmperes(1))
        );
        BenchConditions ballast = TestBench.Conditions.WithDriver(
            new InjectorDriver.Saturated(ElectricResistance.FromOhms(6))
        );
        Words.Refused<ArgumentException>(
            "readings",
            "300 kPa, 21 °C, 13.5 V, 6, 4 A, 1 A",
            () =>
                Of([
                    TestBench.Pulse(3, 10, 13.5, held),
                    TestBench.Pulse(5, 20, 13.5, held),
                    TestBench.Pulse(8, 30, 13.5, ballast),
                ])
        );
    }

    /// <summary>Pressures and voltages that differ by rounding are one; by a millionth they are two.</summary>
    [Theory]
    [InlineData(300.00000001, 13.5, true)]
    [InlineData(300.0003, 13.5, false)]
    [InlineData(300, 13.5000000001, true)]
    [InlineData(300, 13.50001, false)]
    public void Characterization_NearlyTheSameConditions_AreOne(double kilopascals, double volts, bool isTaken)
    {
        PulseCharacterization Found() =>
            Of([
                TestBench.Pulse(3, 7.2),
                TestBench.Pulse(5, 15.2),
                TestBench.Pulse(8, 27.2, volts, TestBench.At(kilopascals)),
            ]);

        if (isTaken)
        {
            Close.Within(1e-6, 4, Found().StaticMassFlow.GramsPerSecond);
        }
        else
        {
            Words.Refused<RefusedArgumentException>("readings", () => Found());
        }
    }

    /// <summary>Readings at another pressure, in another fluid, at another temperature or of other widths are no line.</summary>
    [Theory]
    [InlineData("pressure")]
    [InlineData("fluid")]
    [InlineData("temperature")]
    [InlineData("widths")]
    [InlineData("driver")]
    public void Characterization_OfUnlikeReadings_IsRefused(string other)
    {
        (Pressure pressure, Fuel fluid, Temperature at) = (
            TestBench.Conditions.DifferentialPressure,
            TestBench.Conditions.Fluid,
            TestBench.Conditions.FluidTemperature
        );
        BenchConditions unlike = other switch
        {
            "pressure" => TestBench.At(310),
            "fluid" => new(pressure, Systems.Workshop.Gasoline, at, TestBench.Source),
            "temperature" => new(pressure, fluid, Temperature.FromDegreesCelsius(25), TestBench.Source),
            "widths" => TestBench.Conditions.WithWidths(WidthCorrections.Pressure),
            _ => TestBench.Conditions.WithDriver(InjectorDriver.Saturated.WithoutBallast),
        };

        foreach (
            BenchConditions[] order in new[] { [TestBench.Conditions, unlike], new[] { unlike, TestBench.Conditions } }
        )
        {
            Words.Refused<RefusedArgumentException>(
                "readings",
                () =>
                    Of([
                        TestBench.Pulse(3, 10, 13.5, order[0]),
                        TestBench.Pulse(5, 20, 13.5, order[0]),
                        TestBench.Pulse(8, 35, 13.5, order[1]),
                    ])
            );
        }
    }

    /// <summary>Two descriptions of one driver are one driver.</summary>
    [Fact]
    public void Characterization_SameDriverTwice_IsOne() =>
        Assert.Empty(
            Of(
                Widths.Select(w =>
                    TestBench.Pulse(
                        w,
                        4 * (w - 1.2),
                        13.5,
                        TestBench.Conditions.WithDriver(new InjectorDriver.Saturated(ElectricResistance.FromOhms(6)))
                    )
                )
            ).Findings
        );

    [Fact]
    public void Characterization_CorrectedWidths_IsAFinding()
    {
        BenchConditions corrected = TestBench.Conditions.WithWidths(
            WidthCorrections.Voltage | WidthCorrections.Pressure
        );
        PulseCharacterization found = Of(Widths.Select(w => TestBench.Pulse(w, 4 * w, 13.5, corrected)));

        Assert.Contains(
            found.Findings,
            f =>
                f.What == "The widths were already corrected for voltage and pressure" && f.Severity == Severity.Warning
        );
    }

    [Theory]
    [InlineData(WidthCorrections.Voltage, WidthCorrections.Voltage, "Widths would be corrected twice for voltage")]
    [InlineData(WidthCorrections.None, WidthCorrections.Pressure, "Nobody corrects widths for voltage")]
    [InlineData(WidthCorrections.None, WidthCorrections.None, "Nobody corrects widths for voltage and pressure")]
    [InlineData(
        WidthCorrections.Pressure,
        WidthCorrections.Pressure | WidthCorrections.Voltage,
        "Widths would be corrected twice for pressure"
    )]
    public void FindingsFor_AController_SayWhatIsDoneTwiceOrNever(
        WidthCorrections readings,
        WidthCorrections controller,
        string what
    )
    {
        BenchConditions held = TestBench.Conditions.WithWidths(readings);
        PulseCharacterization found = Of(Widths.Select(w => TestBench.Pulse(w, 4 * (w - 1.2), 13.5, held)));

        Assert.Equal(what, found.FindingsFor(controller)[0].What);
        Assert.Equal(
            readings == WidthCorrections.None
                ? "driver not stated, plain widths"
                : $"driver not stated, widths corrected for {readings.ToString().ToLowerInvariant()}",
            found.FindingsFor(controller)[0].Value
        );
    }

    [Fact]
    public void FindingsFor_EachCorrectionOnce_AreNone() =>
        Assert.Empty(
            Of(Widths.Select(w => TestBench.Pulse(w, 4 * (w - 1.2))))
                .FindingsFor(WidthCorrections.Voltage | WidthCorrections.Pressure)
        );

    /// <summary>Repeats that scatter by 5 in 10,000 about means that bend by 4 in 1000: a straight line does not hold.</summary>
    [Fact]
    public void LinearityTest_BentMeans_IsAFinding()
    {
        double[] bend = [0.996, 1.004, 1.004, 0.996];
        PulseCharacterization found = Of(
            Widths.SelectMany(
                (w, i) => new[] { 0.9995, 1.0005 }.Select(s => TestBench.Pulse(w, 4 * (w - 1.2) * bend[i] * s))
            )
        );

        Assert.Equal((2, 4), (found.LinearityTest!.DegreesOfFreedom, found.LinearityTest.ErrorDegreesOfFreedom));
        Assert.True(found.LinearityTest.PValue.DecimalFractions < 0.05);
        Finding finding = Assert.Single(found.Findings);
        Assert.Equal(FindingCode.LineBent, finding.Code);
        Assert.Equal("at least 0.05", finding.Limit);
    }

    /// <summary>The same scatter about a straight line: nothing speaks against it.</summary>
    [Fact]
    public void LinearityTest_StraightMeans_FindsNothing()
    {
        PulseCharacterization found = Of(
            Widths.SelectMany(
                (w, i) =>
                    new[] { 0.99, 1.01 }.Select(s => TestBench.Pulse(w, 4 * (w - 1.2) * (s + (i == 1 ? 0.002 : 0))))
            )
        );

        Assert.True(found.LinearityTest!.PValue.DecimalFractions > 0.05);
        Assert.Empty(found.Findings);
    }

    [Fact]
    public void LinearityTest_NoRepeats_IsNone() =>
        Assert.Null(Of(Widths.Select(w => TestBench.Pulse(w, 4 * (w - 1.2)))).LinearityTest);

    [Fact]
    public void Conditions_UnknownCorrection_AreRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "widths",
            "4",
            () => TestBench.Conditions.WithWidths((WidthCorrections)4)
        );

    /// <summary>Raw readings keep unit, resolution and count.</summary>
    [Fact]
    public void Readings_KeepWhatWasRead()
    {
        DynamicFlowReading pulse = TestBench.Pulse(5, 12);
        CollectedFuel volume = CollectedFuel.FromVolume(Volume.FromMilliliters(275), Volume.FromMilliliters(5));

        Assert.Equal(
            ("12 g", "1 mg"),
            (
                pulse.Collected.Mass?.ToString(CultureInfo.InvariantCulture),
                pulse.Collected.MassResolution?.ToString(CultureInfo.InvariantCulture)
            )
        );
        Assert.Null(pulse.Collected.Volume);
        Assert.Equal(
            ("275 ml", "5 ml"),
            (
                volume.Volume?.ToString(CultureInfo.InvariantCulture),
                volume.VolumeResolution?.ToString(CultureInfo.InvariantCulture)
            )
        );
        Assert.Null(volume.Mass);
        Assert.Equal(1000, pulse.Pulses);
    }

    private static PulseCharacterization Of(IEnumerable<DynamicFlowReading> readings) =>
        new(readings, Ratio.FromPercent(2), TestBench.NinetyFive);
}

using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

public sealed class ReadingTests
{
    /// <summary>By hand: 475 cm3 in half a minute are 950 cm3/min; a glass of 5 cm3 steps reads to 1.05 %.</summary>
    [Fact]
    public void StaticFlow_OfAVolume_IsVolumeOverTime()
    {
        StaticFlowReading reading = Static(475, 30);

        Close.Within(1e-12, 950, reading.VolumeFlow.CubicCentimetersPerMinute);
        Close.Within(
            1e-14,
            950 / 60.0 * TestBench.Conditions.FluidDensity.GramsPerCubicCentimeter,
            reading.MassFlow.GramsPerSecond
        );
        Close.Within(1e-14, 5 / 475.0, reading.Collected.ResolutionShare.DecimalFractions);
    }

    /// <summary>By hand: 140 g in 30 s are 4.667 g/s, and the volume is the mass over the density.</summary>
    [Fact]
    public void StaticFlow_OfAMass_IsMassOverTime()
    {
        CollectedFuel collected = CollectedFuel.FromMass(Mass.FromGrams(140), Mass.FromGrams(0.5));
        StaticFlowReading reading = new(collected, Duration.FromSeconds(30), TestBench.Conditions);

        Close.Within(1e-12, 140 / 30.0, reading.MassFlow.GramsPerSecond);
        Close.Within(
            1e-12,
            140 * 2 / TestBench.Conditions.FluidDensity.GramsPerCubicCentimeter,
            reading.VolumeFlow.CubicCentimetersPerMinute
        );
        Close.Within(1e-14, 0.5 / 140, collected.ResolutionShare.DecimalFractions);
        Assert.Equal("140 g", collected.ToString());
        Assert.Equal(
            "475 cm3",
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(475), Volume.FromCubicCentimeters(5)).ToString()
        );
    }

    /// <summary>Four times the pressure is twice the flow.</summary>
    [Fact]
    public void ToRating_AtAnotherPressure_FollowsTheRootLaw() =>
        Close.Within(
            1e-12,
            1900,
            Static(475, 30)
                .ToRating()
                .VolumeFlowAt(Pressure.FromKilopascals(1200), TestBench.Conditions.FluidDensity)
                .CubicCentimetersPerMinute
        );

    /// <summary>By hand: 12 g from 1000 pulses are 12 mg a pulse.</summary>
    [Fact]
    public void MassPerPulse_IsMassOverPulses() =>
        Close.Within(1e-14, 12, TestBench.Pulse(5, 12).MassPerPulse.Milligrams);

    [Fact]
    public void DynamicFlow_PulseAsLongAsThePeriod_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("pulseWidth", "20 ms", () => TestBench.Pulse(20, 10));

    [Fact]
    public void StaticFlow_NothingCollected_IsRefused() =>
        Words.Refused<ArgumentException>(
            "collected",
            () => _ = new StaticFlowReading(default, Duration.FromSeconds(30), TestBench.Conditions)
        );

    [Fact]
    public void DynamicFlow_NothingCollected_IsRefused()
    {
        DynamicFlowReading read = TestBench.Pulse(5, 12);
        Words.Refused<ArgumentException>(
            "collected",
            () =>
                _ = new DynamicFlowReading(
                    read.PulseWidth,
                    read.Period,
                    read.Pulses,
                    default,
                    read.AtInjector,
                    TestBench.Conditions
                )
        );
    }

    /// <summary>From one pulse to 100 million.</summary>
    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    [InlineData(100_000_000, true)]
    [InlineData(100_000_001, false)]
    public void DynamicFlow_CountOfPulses_IsBounded(int pulses, bool isTaken)
    {
        DynamicFlowReading read = TestBench.Pulse(5, 12);
        DynamicFlowReading Of() =>
            new(read.PulseWidth, read.Period, pulses, read.Collected, read.AtInjector, TestBench.Conditions);

        if (isTaken)
        {
            Close.Within(1e-12, 12_000.0 / pulses, Of().MassPerPulse.Milligrams);
        }
        else
        {
            Words.Refused<ArgumentOutOfRangeException>(nameof(pulses), () => Of());
        }
    }

    [Fact]
    public void StaticFlow_NoTime_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("collectionTime", "0 s", () => Static(475, 0));

    [Fact]
    public void Conditions_WithoutPressure_AreRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("differentialPressure", "0 kPa", () => TestBench.At(0));

    [Fact]
    public void Collected_StepLargerThanAmount_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "resolution",
            "0 cm³, 4 cm³, 5 cm³",
            () => CollectedFuel.FromVolume(Volume.FromCubicCentimeters(4), Volume.FromCubicCentimeters(5))
        );

    private static StaticFlowReading Static(double cubicCentimeters, double seconds) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromCubicCentimeters(5)),
            Duration.FromSeconds(seconds),
            TestBench.Conditions
        );
}

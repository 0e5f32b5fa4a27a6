using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>What was read of the injectors of a bench, and how it is asked for.</summary>
public sealed class BenchRecordTests
{
    [Fact]
    public void Record_WithoutInjectors_IsRefused() =>
        Words.Refused<RefusedArgumentException>("injectors", "'cold', 1, 0", () => _ = new BenchRecord("cold", []));

    [Fact]
    public void Record_OneNameTwice_IsRefused() =>
        Words.Refused<RefusedArgumentException>(
            "injectors",
            "'cold', 'A'",
            () => _ = new BenchRecord("cold", [One("A"), One("B"), One("A")])
        );

    /// <summary>A name that it does not hold is refused with those that it holds.</summary>
    [Fact]
    public void Injector_ByName_IsThatOne()
    {
        BenchedInjector second = One("B");
        BenchRecord record = new("cold", [One("A"), second]);

        Assert.Same(second, record.Injector("B"));
        Words.Refused<ArgumentException>("name", "'C', 'A', 'B'", () => record.Injector("C"));
    }

    /// <summary>Readings of any one kind make a series; without any there is none.</summary>
    [Fact]
    public void Series_OfOneKindAlone_IsTaken()
    {
        StaticFlowReading flow = One("A").Readings[0];
        DynamicFlowReading pulse = TestBench.Pulse(5, 12);
        DeadTimeReading dead = new(
            ElectricPotential.FromVolts(14),
            Duration.FromMilliseconds(1),
            Duration.FromMilliseconds(0.01),
            TestBench.Conditions
        );
        LeakageVerdict.Reading leak = LeakageVerdict.Reading.FromDrops(
            0,
            Duration.FromMinutes(10),
            TestBench.Conditions
        );
        CoilVerdict.Reading coil = new(
            new CoilResistance(ElectricResistance.FromOhms(12), Temperature.FromDegreesCelsius(20)),
            ElectricResistance.FromOhms(0.1)
        );

        Assert.Same(flow, Assert.Single(new BenchedInjector.Series([flow], [], [], [], []).StaticFlow));
        Assert.Same(pulse, Assert.Single(new BenchedInjector.Series([], [pulse], [], [], []).Pulses));
        Assert.Same(dead, Assert.Single(new BenchedInjector.Series([], [], [dead], [], []).DeadTimes));
        Assert.Same(leak, Assert.Single(new BenchedInjector.Series([], [], [], [leak], []).Leakage));
        Assert.Same(coil, Assert.Single(new BenchedInjector.Series([], [], [], [], [coil]).Coil));
    }

    /// <summary>A limit on what may differ is above zero.</summary>
    [Theory]
    [InlineData(0, 5, 5, "spread")]
    [InlineData(2, 0, 5, "fromRating")]
    [InlineData(2, -5, 5, "fromRating")]
    [InlineData(2, 5, 0, "coilFromMedian")]
    public void Limits_OfNothing_AreRefused(double spread, double fromRating, double fromMedian, string name) =>
        Words.Refused<ArgumentOutOfRangeException>(
            name,
            () =>
                new AcceptanceLimits(
                    Ratio.FromPercent(spread),
                    Ratio.FromPercent(fromRating),
                    TestBench.Source
                ).WithCoilFromMedian(Ratio.FromPercent(fromMedian))
        );

    /// <summary>Two drops a minute: 3 in a minute and a half are just the limit, and 30 in one far above.</summary>
    [Fact]
    public void LeakageLimit_ByDrops_IsJudgedByDrops()
    {
        AcceptanceLimits.LeakageLimit limit = AcceptanceLimits.LeakageLimit.FromDrops(
            Frequency.FromCyclesPerMinute(2),
            TestBench.Source
        );
        LeakageVerdict Of(int drops, double minutes) =>
            new(
                [LeakageVerdict.Reading.FromDrops(drops, Duration.FromMinutes(minutes), TestBench.Conditions)],
                limit,
                LeakageVerdict.DropVolume.Estimate,
                TestBench.NinetyFive
            );

        Assert.True(limit.IsByDrops);
        Assert.Equal("2 drops/min", limit.ToString());
        Assert.False(Of(3, 1.5).RestsOnDropVolume);
        Close.Within(1e-12, 1, Of(3, 1.5).ShareOfLimit.DecimalFractions);
        Assert.Equal(BenchVerdict.Rejected, Of(30, 1).Verdict);
    }

    private static BenchedInjector One(string name) =>
        new(
            name,
            [
                new StaticFlowReading(
                    CollectedFuel.FromVolume(Volume.FromCubicCentimeters(500), Volume.FromCubicCentimeters(1)),
                    Duration.FromMinutes(1),
                    TestBench.Conditions
                ),
            ]
        );
}

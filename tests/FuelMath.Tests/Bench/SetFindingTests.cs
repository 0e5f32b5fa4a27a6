using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>Each finding on a set: when it is said, of whom, and what it is held against.</summary>
public sealed class SetFindingTests
{
    private static readonly AcceptanceLimits Limits = AcceptanceLimits.CommonPractice;

    private static readonly AcceptanceLimits.CoilBand Band = new(
        ElectricResistance.FromOhms(12),
        ElectricResistance.FromOhms(16),
        TestBench.Source
    );

    /// <summary>Of 1000 and 1030, each read once in steps of 1: (1030 - 1000) / 1015 is more than 2 %.</summary>
    [Theory]
    [InlineData(1030, true)]
    [InlineData(1010, false)]
    public void Spread_BeyondItsLimit_IsNotMatched(double other, bool isFound)
    {
        Finding? found = Of([Flow(1000)], [Flow(other)])
            .Findings.SingleOrDefault(f => f.Code == FindingCode.SetNotMatched);

        Assert.Equal(isFound, found is not null);
        if (found is not null)
        {
            Assert.Equal((Severity.Warning, "set", false), (found.Severity, found.Part, found.IsNotKnown));
            Close.Within(1e-12, 30 / 1015.0, ((Ratio)found.ValueQuantity!).DecimalFractions);
            Close.Within(1e-12, 0.02, ((Ratio)found.LimitQuantity!).DecimalFractions);
        }
    }

    /// <summary>Flows read in steps of 40 show no spread below 40 in 1000, which is more than the 2 % allowed.</summary>
    [Theory]
    [InlineData(40, true)]
    [InlineData(10, false)]
    public void Bench_ThatReadsInLongSteps_IsTooCoarse(double step, bool isFound)
    {
        SetReport report = Of([Flow(1000, step)], [Flow(1000, step)]);
        Finding? found = report.Findings.SingleOrDefault(f => f.Code == FindingCode.BenchTooCoarse);

        Assert.Equal(isFound, found is not null);
        Assert.Equal(isFound ? BenchVerdict.Undecided : BenchVerdict.Accepted, report.SpreadVerdict);
        if (found is not null)
        {
            Assert.Equal((Severity.Warning, "bench", true), (found.Severity, found.Part, found.IsNotKnown));
            Close.Within(1e-9, step / 1000, ((Ratio)found.ValueQuantity!).DecimalFractions);
            Close.Within(1e-12, 0.02, ((Ratio)found.LimitQuantity!).DecimalFractions);
        }
    }

    /// <summary>A rating of 1000 and 5 % to either side: each that lies beyond is named, and no other.</summary>
    [Fact]
    public void Flow_OffItsRating_NamesEach()
    {
        SetReport report = Of([Flow(1060)], [Flow(1000)], [Flow(930)]);
        Finding[] found = [.. report.Findings.Where(f => f.Code == FindingCode.FlowOffRating)];

        Assert.Equal(["1", "3"], found.Select(f => f.Part));
        Assert.All(found, f => Assert.Equal((Severity.Warning, false), (f.Severity, f.IsNotKnown)));
        Close.Within(1e-12, 0.06, ((Ratio)found[0].ValueQuantity!).DecimalFractions);
        Close.Within(1e-12, -0.07, ((Ratio)found[1].ValueQuantity!).DecimalFractions);
        Assert.All(found, f => Close.Within(1e-12, 0.05, ((Ratio)f.LimitQuantity!).DecimalFractions));
        Assert.Equal([false, true, false], report.Members.Select(m => m.IsFlowAccepted));
    }

    /// <summary>1045 in steps of 20 may be 1055 as well: whether it is within 5 % nobody knows. 1020 in the same steps is.</summary>
    [Theory]
    [InlineData(1045, true)]
    [InlineData(1020, false)]
    public void Flow_NearItsLimit_IsUndecided(double flow, bool isFound)
    {
        Finding? found = Of([Flow(flow, 20)], [Flow(1020, 20)])
            .Findings.SingleOrDefault(f => f.Code == FindingCode.FlowUndecided);

        Assert.Equal(isFound, found is not null);
        if (found is not null)
        {
            Assert.Equal((Severity.Note, "1", true), (found.Severity, found.Part, found.IsNotKnown));
            Close.Within(1e-12, (flow / 1000) - 1, ((Ratio)found.ValueQuantity!).DecimalFractions);
            Close.Within(1e-12, 0.05, ((Ratio)found.LimitQuantity!).DecimalFractions);
        }
    }

    /// <summary>One drop a minute: 30 in one minute leak, none in a third of a minute proves nothing, none in ten minutes is tight.</summary>
    [Theory]
    [InlineData(30, 1, FindingCode.InjectorLeaks, Severity.Danger, 30)]
    [InlineData(0, 0.33, FindingCode.LeakageUndecided, Severity.Warning, 0)]
    [InlineData(0, 10, null, Severity.Note, 0)]
    public void Leakage_RejectedUndecidedOrTight(
        int drops,
        double minutes,
        FindingCode? expected,
        Severity severity,
        double share
    )
    {
        LeakageVerdict.Reading reading = LeakageVerdict.Reading.FromDrops(
            drops,
            Duration.FromMinutes(minutes),
            TestBench.Conditions
        );
        Finding? found = Of(Limits, Shut("A", reading), Shut("B", Tight))
            .Findings.SingleOrDefault(f => f.Code is FindingCode.InjectorLeaks or FindingCode.LeakageUndecided);

        Assert.Equal(expected, found?.Code);
        if (found is not null)
        {
            Assert.Equal(
                (severity, "A", expected == FindingCode.LeakageUndecided),
                (found.Severity, found.Part, found.IsNotKnown)
            );
            Close.WithinOf(1, 1e-12, share, ((Ratio)found.ValueQuantity!).DecimalFractions);
            Assert.Equal(1, ((Ratio)found.LimitQuantity!).DecimalFractions);
        }
    }

    /// <summary>Watched at the pressure of the rating, 3 bar, it counts; at 2.9 bar it does not.</summary>
    [Theory]
    [InlineData(3, false)]
    [InlineData(2.9, true)]
    public void Leakage_WatchedBelowTheRating_IsUndecided(double bars, bool isFound)
    {
        LeakageVerdict.Reading reading = LeakageVerdict.Reading.FromDrops(
            0,
            Duration.FromMinutes(10),
            TestBench.At(100 * bars)
        );
        Finding? found = Of(Limits, Shut("A", reading), Shut("B", Tight))
            .Findings.SingleOrDefault(f => f.Code == FindingCode.LeakageUndecided);

        Assert.Equal(isFound, found is not null);
        if (found is not null)
        {
            Assert.Equal((Severity.Warning, "A", true), (found.Severity, found.Part, found.IsNotKnown));
            Close.Within(1e-12, bars, ((Pressure)found.ValueQuantity!).Bars);
            Close.Within(1e-12, 3, ((Pressure)found.LimitQuantity!).Bars);
        }
    }

    /// <summary>
    /// A band from 12 to 16 Ω, read in steps of 0.5: outside by more than half a step is rejected, by less is not known. The limit is the
    /// nearer end, in the middle the upper one.
    /// </summary>
    [Theory]
    [InlineData(11.5, 0.5, FindingCode.CoilOutsideBand, 12)]
    [InlineData(16.5, 0.5, FindingCode.CoilOutsideBand, 16)]
    [InlineData(12.125, 0.5, FindingCode.CoilUndecided, 12)]
    [InlineData(15.875, 0.5, FindingCode.CoilUndecided, 16)]
    [InlineData(13.9, 8, FindingCode.CoilUndecided, 12)]
    [InlineData(14, 8, FindingCode.CoilUndecided, 16)]
    [InlineData(14, 0.5, null, 0)]
    public void Coil_OutsideOrUndecided(double ohms, double step, FindingCode? expected, double limit)
    {
        Finding? found = Of(Limits.WithCoil(Band), Coiled("A", ohms, step), Coiled("B", 14, 0.1))
            .Findings.SingleOrDefault(f => f.Code is FindingCode.CoilOutsideBand or FindingCode.CoilUndecided);

        Assert.Equal(expected, found?.Code);
        if (found is not null)
        {
            Assert.Equal(
                (Severity.Warning, "A", expected == FindingCode.CoilUndecided),
                (found.Severity, found.Part, found.IsNotKnown)
            );
            Close.Within(1e-12, ohms, ((ElectricResistance)found.ValueQuantity!).Ohms);
            Close.Within(1e-12, limit, ((ElectricResistance)found.LimitQuantity!).Ohms);
        }
    }

    /// <summary>Against a median of 16 Ω: a sixteenth more or less than the sixteenth allowed is said, just a sixteenth is not.</summary>
    [Theory]
    [InlineData(18, 0.125)]
    [InlineData(17, null)]
    [InlineData(15, null)]
    [InlineData(14, -0.125)]
    public void Coil_UnlikeTheMedian_IsSaid(double ohms, double? off)
    {
        Finding? found = Of(
            Limits.WithCoilFromMedian(Ratio.FromDecimalFractions(0.0625)),
            Coiled("A", 16, 0.1),
            Coiled("B", ohms, 0.1),
            Coiled("C", 16, 0.1)
        )
            .Findings.SingleOrDefault(f => f.Code == FindingCode.CoilUnlikeSet);

        Assert.Equal(off, ((Ratio?)found?.ValueQuantity)?.DecimalFractions);
        Assert.Equal(off is null ? null : "B", found?.Part);
        Assert.Equal(off is null ? null : Severity.Warning, found?.Severity);
        Assert.Equal(off is null ? null : 0.0625, ((Ratio?)found?.LimitQuantity)?.DecimalFractions);
    }

    /// <summary>Of two coils neither is the odd one out.</summary>
    [Fact]
    public void Coil_OfTwo_HasNoMedian() =>
        Assert.DoesNotContain(
            Of(Limits, Coiled("A", 16, 0.1), Coiled("B", 10, 0.1)).Findings,
            f => f.Code == FindingCode.CoilUnlikeSet
        );

    private static LeakageVerdict.Reading Tight { get; } =
        LeakageVerdict.Reading.FromDrops(0, Duration.FromMinutes(10), TestBench.Conditions);

    private static SetReport Of(params StaticFlowReading[][] flows) =>
        Of(Limits, [.. flows.Select((f, i) => new BenchedInjector($"{i + 1}", f))]);

    private static SetReport Of(AcceptanceLimits limits, params BenchedInjector[] injectors) =>
        new(Flow(1000).ToRating(), injectors, limits, TestBench.NinetyFive);

    private static BenchedInjector Shut(string name, LeakageVerdict.Reading reading) =>
        BenchedInjector.FromSeries(name, new([Flow(1000)], [], [], [reading], []));

    private static BenchedInjector Coiled(string name, double ohms, double step) =>
        BenchedInjector.FromSeries(
            name,
            new(
                [Flow(1000)],
                [],
                [],
                [],
                [
                    new(
                        new CoilResistance(ElectricResistance.FromOhms(ohms), Temperature.FromDegreesCelsius(20)),
                        ElectricResistance.FromOhms(step)
                    ),
                ]
            )
        );

    private static StaticFlowReading Flow(double cubicCentimeters, double step = 1) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromCubicCentimeters(step)),
            Duration.FromMinutes(1),
            TestBench.Conditions
        );
}

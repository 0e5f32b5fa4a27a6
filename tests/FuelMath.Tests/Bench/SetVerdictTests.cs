using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>What leakage, coils and repeats add to the report on a set.</summary>
public sealed class SetVerdictTests
{
    /// <summary>By hand: 13.2511 ohm at 35 degrees are 13.2511 / 1.05895 = 12.513 at 20, between 12 and 13.</summary>
    [Theory]
    [InlineData(13.2511, 35, 0.01, BenchVerdict.Accepted)]
    [InlineData(13.2511, 20, 0.01, BenchVerdict.Rejected)]
    [InlineData(12.97, 20, 0.1, BenchVerdict.Undecided)]
    [InlineData(13.02, 20, 0.1, BenchVerdict.Undecided)]
    public void CoilVerdict_AtATemperature_IsCarriedToTwenty(
        double ohms,
        double celsius,
        double step,
        BenchVerdict expected
    )
    {
        var verdict = new CoilVerdict([Coil(ohms, celsius, step)], Band);

        Assert.Equal(expected, verdict.Verdict);
        Close.Within(1e-12, ohms / (1 + (0.00393 * (celsius - 20))), verdict.AtTwentyCelsius.Ohms);
    }

    [Fact]
    public void Report_LeakingInjector_IsRejected()
    {
        SetReport report = Of(Good("A"), With("B", [Drops(5)], []), Good("C"));

        Assert.Equal([true, false, true], report.Members.Select(m => m.IsAccepted));
        Assert.True(report.Members[1].IsFlowAccepted);
        Assert.False(report.IsAccepted);
        Finding finding = Assert.Single(report.Findings, f => f.Code != FindingCode.LeakageNotRead);
        Assert.Equal(
            (FindingCode.InjectorLeaks, false, Severity.Danger, "5 drops/min at 3.00 bar", "1 drops/min"),
            (finding.Code, finding.IsNotKnown, finding.Severity, finding.Value, finding.Limit)
        );
    }

    /// <summary>Undecided is not accepted: of a leak that was watched for twenty seconds nobody knows.</summary>
    [Fact]
    public void Report_LeakageWatchedTooBriefly_IsUndecided()
    {
        LeakageVerdict.Reading brief = LeakageVerdict.Reading.FromDrops(
            0,
            Duration.FromSeconds(20),
            TestBench.Conditions
        );
        SetReport report = Of(Good("A"), With("B", [brief], []));

        Assert.False(report.IsAccepted);
        Assert.Equal([BenchVerdict.Accepted, BenchVerdict.Undecided], report.Members.Select(m => m.Verdict));
        Assert.Equal(BenchVerdict.Undecided, report.Verdict);
        Finding finding = Assert.Single(report.Findings, f => f.Code != FindingCode.LeakageNotRead);
        Assert.Equal(
            (FindingCode.LeakageUndecided, true, Severity.Warning),
            (finding.Code, finding.IsNotKnown, finding.Severity)
        );
        Assert.Equal("The leakage of injector 'B' was not watched for long enough to accept it", finding.What);
    }

    /// <summary>Without a reading nothing says that an injector is tight: one note for all of them.</summary>
    [Theory]
    [InlineData(false, "set")]
    [InlineData(true, "B")]
    public void Report_LeakageNotRead_IsANoteAndNotKnown(bool oneWasRead, string part)
    {
        SetReport report = Of(
            With(
                "A",
                oneWasRead ? [LeakageVerdict.Reading.FromDrops(0, Duration.FromMinutes(10), TestBench.Conditions)] : [],
                []
            ),
            With("B", [], [])
        );

        Finding finding = Assert.Single(report.Findings);
        Assert.Equal(
            (FindingCode.LeakageNotRead, Severity.Note, part, true),
            (finding.Code, finding.Severity, finding.Part, finding.IsNotKnown)
        );
    }

    /// <summary>Where each was watched, shut and for long enough, nothing is left to say.</summary>
    [Fact]
    public void Report_LeakageOfAllRead_SaysNothing()
    {
        LeakageVerdict.Reading tight = LeakageVerdict.Reading.FromDrops(
            0,
            Duration.FromMinutes(10),
            TestBench.Conditions
        );
        SetReport report = Of(With("A", [tight], []), With("B", [tight], []));

        Assert.Empty(report.Findings);
        Assert.True(report.IsAccepted);
    }

    /// <summary>Tight at 1 bar, rated at 3 bar: what it does at 3 bar was not read.</summary>
    [Fact]
    public void Report_LeakageWatchedBelowTheRating_IsUndecided()
    {
        LeakageVerdict.Reading low = LeakageVerdict.Reading.FromDrops(
            0,
            Duration.FromMinutes(10),
            new(
                Pressure.FromBars(1),
                TestBench.Conditions.Fluid,
                TestBench.Conditions.FluidTemperature,
                TestBench.Source
            )
        );
        SetReport report = Of(Good("A"), With("B", [low], []));

        Assert.Equal(BenchVerdict.Accepted, report.Members[1].Leakage!.Verdict);
        Assert.Equal(BenchVerdict.Undecided, report.Verdict);
        Finding finding = Assert.Single(report.Findings, f => f.Code != FindingCode.LeakageNotRead);
        Assert.Equal(("1.00 bar", "3.00 bar or more"), (finding.Value, finding.Limit));
    }

    /// <summary>A meter too coarse to place a coil in its band decides nothing either; one outside is outside.</summary>
    [Theory]
    [InlineData(12.97, BenchVerdict.Undecided, FindingCode.CoilUndecided, 13)]
    [InlineData(12.03, BenchVerdict.Undecided, FindingCode.CoilUndecided, 12)]
    [InlineData(11.97, BenchVerdict.Undecided, FindingCode.CoilUndecided, 12)]
    [InlineData(14.5, BenchVerdict.Rejected, FindingCode.CoilOutsideBand, 13)]
    [InlineData(10.5, BenchVerdict.Rejected, FindingCode.CoilOutsideBand, 12)]
    public void Report_CoilNotInItsBand_IsAFinding(double ohms, BenchVerdict verdict, FindingCode code, double limit)
    {
        SetReport report = Of(
            AcceptanceLimits.CommonPractice.WithCoil(Band),
            Good("A"),
            With("B", [], [Coil(ohms, 20, 0.1)])
        );

        Assert.Equal(verdict, report.Verdict);
        Finding finding = Assert.Single(report.Findings, f => f.Code == code);
        Assert.Equal(verdict == BenchVerdict.Undecided, finding.IsNotKnown);
        Assert.Equal(
            verdict == BenchVerdict.Undecided
                ? "The meter is too coarse to place the coil of injector 'B' in its band"
                : "The coil of injector 'B' is outside its band at 20 °C",
            finding.What
        );
        Assert.Equal(ElectricResistance.FromOhms(limit), finding.LimitQuantity);
        Assert.Equal(ohms, ((ElectricResistance)finding.ValueQuantity!).Ohms, 1e-9);
    }

    /// <summary>The median of 12.5, 12.5, 12.5 and 11.8749 is 12.5, from which 11.8749 lies 5.0008 %: beyond 5 % by what two places do not show.</summary>
    [Fact]
    public void Report_CoilJustBeyondTheLimit_ShowsWhatTellsThemApart()
    {
        SetReport report = Of(
            With("A", [], [Coil(12.5, 20, 0.1)]),
            With("B", [], [Coil(12.5, 20, 0.1)]),
            With("C", [], [Coil(12.5, 20, 0.1)]),
            With("D", [], [Coil(11.8749, 20, 0.1)])
        );

        Finding finding = Assert.Single(report.Findings, f => f.Code == FindingCode.CoilUnlikeSet);
        Assert.Equal(("-5.001 %", "±5 %"), (finding.Value, finding.Limit));
    }

    /// <summary>By hand: of 12.5, 12.6, 12.4 and 11.2 the median is 12.45; 11.2 lies 10.04 % below.</summary>
    [Fact]
    public void Report_CoilApartFromTheSet_IsAFinding()
    {
        SetReport report = Of(
            With("A", [], [Coil(12.5, 20, 0.1)]),
            With("B", [], [Coil(12.6, 20, 0.1)]),
            With("C", [], [Coil(12.4, 20, 0.1)]),
            With("D", [], [Coil(11.2, 20, 0.1)])
        );

        Finding finding = Assert.Single(report.Findings, f => f.Code != FindingCode.LeakageNotRead);
        Assert.Equal("The coil of injector 'D' differs from the median of the set", finding.What);
        Assert.Equal(("-10.04 %", "±5 %"), (finding.Value, finding.Limit));
        Assert.True(report.IsAccepted);
        Close.Within(1e-11, (11.2 / 12.45) - 1, report.Members[3].CoilFromMedian!.Value.DecimalFractions);
        Assert.Null(report.Members[3].Coil);
    }

    /// <summary>18 Ω among 12 Ω is 50 % off: at a limit of 50 % nothing is said, at one just below it is.</summary>
    [Theory]
    [InlineData(50, 0)]
    [InlineData(49.999, 1)]
    public void Report_CoilAtTheLimit_IsNoFinding(double percent, int findings)
    {
        SetReport report = Of(
            AcceptanceLimits.CommonPractice.WithCoilFromMedian(Ratio.FromPercent(percent)),
            With("A", [], [Coil(12, 20, 0.1)]),
            With("B", [], [Coil(12, 20, 0.1)]),
            With("C", [], [Coil(12, 20, 0.1)]),
            With("D", [], [Coil(18, 20, 0.1)])
        );

        Assert.Equal(findings, report.Findings.Count(f => f.Code == FindingCode.CoilUnlikeSet));
    }

    [Fact]
    public void Report_CoilOutsideItsBand_IsRejected()
    {
        SetReport report = Of(
            AcceptanceLimits.CommonPractice.WithCoil(Band),
            Good("A"),
            With("B", [], [Coil(14, 20, 0.1)])
        );

        Assert.False(report.Members[1].IsAccepted);
        Finding finding = Assert.Single(report.Findings, f => f.Code != FindingCode.LeakageNotRead);
        Assert.Equal("The coil of injector 'B' is outside its band at 20 °C", finding.What);
        Assert.Equal(("14 Ω", "12 Ω to 13 Ω"), (finding.Value, finding.Limit));
        Assert.Null(report.Members[1].CoilFromMedian);
    }

    /// <summary>
    /// By hand: repeats 990 and 1010, 995 and 1005: squares 200 + 50 with two degrees of freedom, s = 11.18 of 1000; the least
    /// difference is t(2) 4.303 x 0.01118 x sqrt(2/2) = 4.81 %, more than the limit of 2 %.
    /// </summary>
    [Fact]
    public void Report_PoorRepeats_CannotJudgeTheSpread()
    {
        SetReport report = Of(
            AcceptanceLimits.CommonPractice,
            1000,
            new BenchedInjector("A", [Flow(990), Flow(1010)]),
            new BenchedInjector("B", [Flow(995), Flow(1005)])
        );

        Close.Within(1e-9, Math.Sqrt(125) / 1000, report.Repeatability!.Value.DecimalFractions);
        Close.WithinOf(1, 5e-5, 0.0481, report.LeastDifference!.Value.DecimalFractions);
        Assert.Contains(
            report.Findings,
            f => f.What.StartsWith("The bench repeats too poorly", StringComparison.Ordinal)
        );
    }

    /// <summary>
    /// By hand: repeats of A and B have squares of 800 with three degrees of freedom, s = 16.33. A lies 4 % below, 10 from the
    /// limit, and reaches t(3) 3.182 x 16.33 / sqrt 2 = 36.7; B reaches 30 of 50; C, read once, 52 of 50.
    /// </summary>
    [Fact]
    public void Report_NearTheLimit_IsNotClear()
    {
        SetReport report = Of(
            AcceptanceLimits.CommonPractice,
            1000,
            new BenchedInjector("A", [Flow(940), Flow(980)]),
            new BenchedInjector("B", [Flow(1000), Flow(1000.1), Flow(999.9)]),
            new BenchedInjector("C", [Flow(1000)])
        );

        Assert.Equal([false, true, false], report.Members.Select(m => m.IsFlowClear));
        Assert.Equal(
            [BenchVerdict.Undecided, BenchVerdict.Accepted, BenchVerdict.Undecided],
            report.Members.Select(m => m.Verdict)
        );
        Assert.Contains(
            report.Findings,
            f => f.What == "The readings of injector 'A' do not settle whether it is within the limit"
        );
    }

    /// <summary>
    /// By hand: variances 9, 9, 8100 and 9 with two degrees of freedom each: C = 8100/8127 = 0.997, where four variances of
    /// three readings have 0.768 at 5 % and 0.864 at 1 %. With 10.4² for the third it is 0.800, with 4.5² 0.429.
    /// </summary>
    [Theory]
    [Trait("Source", "ISO-5725-2")]
    [InlineData(90, true)]
    [InlineData(10.4, false)]
    [InlineData(4.5, null)]
    public void Report_OneScattersMore_IsFoundAndNotPooled(double scatter, bool? isOutlier)
    {
        BenchedInjector Read(string name, double by) => new(name, [Flow(1000 - by), Flow(1000), Flow(1000 + by)]);
        SetReport report = Of(
            AcceptanceLimits.CommonPractice,
            1000,
            Read("A", 3),
            Read("B", 3),
            Read("C", scatter),
            Read("D", 3)
        );
        Finding[] found = [.. report.Findings.Where(f => f.Code == FindingCode.InjectorScatters)];
        double share = scatter * scatter / ((scatter * scatter) + 27);

        Assert.Equal([true, true, isOutlier is null, true], report.Members.Select(m => m.IsPooled));
        Close.Within(1e-6, scatter / 1000, report.Members[2].Repeatability!.Value.DecimalFractions);
        if (isOutlier is not { } outlier)
        {
            Assert.Empty(found);
            return;
        }

        // Student's factor at 95 % for two degrees of freedom is 4.303, for six 2.447.
        Close.WithinOf(
            1,
            0.02,
            4.303 * scatter / Math.Sqrt(3),
            report.Members[2].FlowHalfWidth!.Value.CubicCentimetersPerMinute
        );
        Close.WithinOf(
            1,
            0.001,
            2.447 * 3 / Math.Sqrt(3),
            report.Members[0].FlowHalfWidth!.Value.CubicCentimetersPerMinute
        );
        Close.Within(1e-6, 3.0 / 1000, report.Repeatability!.Value.DecimalFractions);
        Finding one = Assert.Single(found);
        Assert.Equal("C", one.Part);
        Assert.Equal(outlier ? Severity.Warning : Severity.Note, one.Severity);
        Close.Within(1e-6, share, ((Ratio)one.ValueQuantity!).DecimalFractions);
        Assert.Equal(outlier ? 0.864 : 0.768, ((Ratio)one.LimitQuantity!).DecimalFractions, 1e-3);
        Assert.Equal(outlier ? BenchVerdict.Undecided : BenchVerdict.Accepted, report.Members[2].Verdict);
    }

    /// <summary>By hand: mean 770, spread 290 / 770; each off its rating, and the set not matched.</summary>
    [Fact]
    public void Report_OfAWeakSet_SaysWhy()
    {
        SetReport report = Of(
            AcceptanceLimits.CommonPractice,
            1000,
            new BenchedInjector("A", [Flow(640)]),
            new BenchedInjector("B", [Flow(740)]),
            new BenchedInjector("C", [Flow(930)])
        );

        Assert.Equal(["37.66 %", "-36 %", "-26 %", "-7 %", "not read"], report.Findings.Select(f => f.Value));
    }

    [Fact]
    public void Report_NameTwice_IsRefused() =>
        Words.Refused<ArgumentException>("injectors", "'A'", () => Of(Good("A"), Good("A")));

    [Fact]
    public void Report_WithoutStaticFlow_IsRefused() =>
        Words.Refused<ArgumentException>(
            "injectors",
            "'B'",
            () => Of(Good("A"), BenchedInjector.FromSeries("B", new BenchedInjector.Series([], [], [], [Drops(0)], [])))
        );

    [Fact]
    public void Series_WithoutAnyReading_IsRefused() =>
        Words.Refused<ArgumentException>(
            "staticFlow",
            "1, 0",
            () => _ = new BenchedInjector.Series([], [], [], [], [])
        );

    [Fact]
    public void Band_UpsideDown_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "most",
            "13 Ω, 12 Ω",
            () =>
                _ = new AcceptanceLimits.CoilBand(
                    ElectricResistance.FromOhms(13),
                    ElectricResistance.FromOhms(12),
                    TestBench.Source
                )
        );

    private static AcceptanceLimits.CoilBand Band { get; } =
        new(ElectricResistance.FromOhms(12), ElectricResistance.FromOhms(13), TestBench.Source);

    private static SetReport Of(params BenchedInjector[] injectors) => Of(AcceptanceLimits.CommonPractice, injectors);

    private static SetReport Of(AcceptanceLimits limits, params BenchedInjector[] injectors) =>
        Of(limits, 1000, injectors);

    private static SetReport Of(AcceptanceLimits limits, double rated, params BenchedInjector[] injectors) =>
        new(
            FlowRating.FromVolume(
                VolumeFlow.FromCubicCentimetersPerMinute(rated),
                TestBench.Conditions.DifferentialPressure,
                TestBench.Conditions.Fluid,
                TestBench.Conditions.FluidTemperature,
                TestBench.Source
            ),
            injectors,
            limits,
            TestBench.NinetyFive
        );

    private static BenchedInjector Good(string name) => new(name, [Flow(1000)]);

    private static BenchedInjector With(string name, LeakageVerdict.Reading[] leakage, CoilVerdict.Reading[] coil) =>
        BenchedInjector.FromSeries(name, new BenchedInjector.Series([Flow(1000)], [], [], leakage, coil));

    private static StaticFlowReading Flow(double cubicCentimeters) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromCubicCentimeters(1)),
            Duration.FromMinutes(1),
            TestBench.Conditions
        );

    private static LeakageVerdict.Reading Drops(int drops) =>
        LeakageVerdict.Reading.FromDrops(drops, Duration.FromMinutes(1), TestBench.Conditions);

    private static CoilVerdict.Reading Coil(double ohms, double celsius, double step) =>
        new(
            new CoilResistance(ElectricResistance.FromOhms(ohms), Temperature.FromDegreesCelsius(celsius)),
            ElectricResistance.FromOhms(step)
        );
}

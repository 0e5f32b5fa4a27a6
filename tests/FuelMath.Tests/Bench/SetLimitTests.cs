using FuelMath.Bench;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>What a report says just at its limits, of few injectors, and of readings of different kinds.</summary>
public sealed class SetLimitTests
{
    /// <summary>A flow just at the limit about the rating is within it, one a thousandth of it beyond is not.</summary>
    [Theory]
    [InlineData(1050, true)]
    [InlineData(950, true)]
    [InlineData(1050.05, false)]
    [InlineData(949.95, false)]
    public void Flow_JustAtTheLimit_IsAccepted(double flow, bool expected) =>
        Assert.Equal(expected, Of([flow], [1000]).Members[0].IsFlowAccepted);

    /// <summary>By hand: 990 and 1010 spread by 2 % of 1000, which is just the limit.</summary>
    [Theory]
    [InlineData(990, 1010, BenchVerdict.Accepted)]
    [InlineData(989.99, 1010.01, BenchVerdict.Rejected)]
    public void Spread_JustAtTheLimit_IsAccepted(double one, double other, BenchVerdict expected) =>
        Assert.Equal(expected, Of([one], [other]).SpreadVerdict);

    /// <summary>By hand: a step of 5 may hide a spread of 2 % of 250, which is just the limit.</summary>
    [Theory]
    [InlineData(250, BenchVerdict.Accepted)]
    [InlineData(249.9, BenchVerdict.Undecided)]
    public void Step_ThatHidesJustTheLimit_IsAccepted(double flow, BenchVerdict expected)
    {
        SetReport report = new(
            Read(flow, 5).ToRating(),
            [new("A", [Read(flow, 5)]), new("B", [Read(flow, 5)])],
            AcceptanceLimits.CommonPractice,
            TestBench.NinetyFive
        );

        Assert.Equal(expected, report.SpreadVerdict);
    }

    /// <summary>Read once each, the coarsest glass decides what spread could be seen: 8 of 1000.</summary>
    [Fact]
    public void LeastSpread_OfDifferentSteps_IsThatOfTheCoarsest()
    {
        SetReport report = new(
            Read(1000, 1).ToRating(),
            [new("A", [Read(1000, 1)]), new("B", [Read(1000, 8)]), new("C", [Read(1000, 2)])],
            AcceptanceLimits.CommonPractice,
            TestBench.NinetyFive
        );

        Close.Within(1e-12, 0.008, report.LeastSpread.DecimalFractions);
        Assert.Null(report.Repeatability);
        Assert.All(report.Members, m => Assert.Null(m.Repeatability));
    }

    /// <summary>
    /// By hand: repeats of 990 and 1010 twice over, and once: squares 400 + 200 with four degrees of freedom, s = sqrt 150;
    /// the injector read twice is known to s / sqrt 2, worse than the other, and t(4) is 2.776.
    /// </summary>
    [Fact]
    public void LeastDifference_OfDifferentCounts_IsThatOfTheFewest()
    {
        SetReport report = Of([990, 1010, 990, 1010], [990, 1010]);
        double scatter = Math.Sqrt(600 / 4.0);

        Close.Within(1e-12, scatter / 1000, report.Repeatability!.Value.DecimalFractions);
        Close.Within(
            2e-4,
            2.776 * Math.Sqrt(2) * scatter / Math.Sqrt(2) / 1000,
            report.LeastDifference!.Value.DecimalFractions
        );
        Close.Within(2e-4, 2.776 * scatter / 2, report.Members[0].FlowHalfWidth!.Value.CubicCentimetersPerMinute);
        Close.Within(1e-9, Math.Sqrt(400 / 3.0) / 1000, report.Members[0].Repeatability!.Value.DecimalFractions);
    }

    /// <summary>Flows that agree have no score, which is none that is not a number.</summary>
    [Fact]
    public void StandardScore_OfEqualFlows_IsZero() =>
        Assert.All(Of([1000], [1000], [1000]).Members, m => Assert.Equal(0, m.StandardScore.DecimalFractions));

    /// <summary>
    /// By hand: of three variances 9, 9 and 8100 the last has 99.8 % of their sum, where chance gives three of three readings
    /// 94.2 % in one case of a hundred. Of two left nothing is said.
    /// </summary>
    [Fact]
    [Trait("Source", "ISO-5725-2")]
    public void Scatter_OfThree_IsTested()
    {
        SetReport report = Of([997, 1000, 1003], [910, 1000, 1090], [997, 1000, 1003]);

        Assert.Equal([true, false, true], report.Members.Select(m => m.IsPooled));
        Assert.All(Of([997, 1000, 1003], [910, 1000, 1090]).Members, m => Assert.True(m.IsPooled));
    }

    /// <summary>Three coils have a middle one, of two nobody says which is apart.</summary>
    [Theory]
    [InlineData(3, true)]
    [InlineData(2, false)]
    public void CoilFromMedian_OfThree_IsKnown(int coils, bool isKnown)
    {
        SetReport report = new(
            Read(1000, 1).ToRating(),
            new[] { 12, 12.5, 14 }
                .Take(coils)
                .Select(
                    (ohms, i) =>
                        BenchedInjector.FromSeries(
                            $"{i}",
                            new BenchedInjector.Series([Read(1000, 1)], [], [], [], [Coil(ohms)])
                        )
                ),
            AcceptanceLimits.CommonPractice,
            TestBench.NinetyFive
        );

        Assert.All(report.Members, m => Assert.Equal(isKnown, m.CoilFromMedian is not null));
        if (isKnown)
        {
            Close.Within(1e-11, (12 / 12.5) - 1, report.Members[0].CoilFromMedian!.Value.DecimalFractions);
        }
    }

    /// <summary>
    /// A leak by volume against a limit in drops rests on the volume of a drop; where that is an estimate, the finding says so.
    /// </summary>
    [Theory]
    [InlineData(null, "2.5 drops/min at 3.00 bar (drop volume estimated)")]
    [InlineData(0.01, "5 drops/min at 3.00 bar")]
    public void Leak_ByVolume_SaysThatTheDropIsEstimated(double? drop, string expected)
    {
        AcceptanceLimits limits = AcceptanceLimits.CommonPractice.WithLeakage(
            AcceptanceLimits.LeakageLimit.CommonPractice,
            drop is { } known
                ? LeakageVerdict.DropVolume.FromVolume(Volume.FromCubicCentimeters(known), TestBench.Source)
                : LeakageVerdict.DropVolume.Estimate
        );
        SetReport report = Leaking(
            limits,
            LeakageVerdict.Reading.FromVolume(
                Volume.FromCubicCentimeters(0.1),
                Volume.FromCubicCentimeters(0.01),
                Duration.FromMinutes(2),
                TestBench.Conditions
            )
        );

        Finding finding = Assert.Single(report.Findings, f => f.Code == FindingCode.InjectorLeaks);
        Assert.Equal(expected, finding.Value);
        Assert.Equal(LeakageVerdict.DropVolume.Estimate.IsEstimate, limits.Drop.IsEstimate || drop is not null);
    }

    /// <summary>What leaks, and what was not watched for long enough, are said apart, with what to do.</summary>
    [Theory]
    [InlineData(30, 1, "Injector 'A' leaks", "Do not fit it: it can fill a cylinder with fuel.")]
    [InlineData(
        0,
        0.3,
        "The leakage of injector 'A' was not watched for long enough to accept it",
        "Do not fit it before it is decided: read for longer at that pressure."
    )]
    public void Leak_RejectedOrUndecided_SaysWhatToDo(int drops, double minutes, string what, string action)
    {
        SetReport report = Leaking(
            AcceptanceLimits.CommonPractice,
            LeakageVerdict.Reading.FromDrops(drops, Duration.FromMinutes(minutes), TestBench.Conditions)
        );

        Finding[] found = [.. report.Findings.Where(f => f.Part == "A")];
        Assert.Equal((what, action), (found.Single().What, found.Single().Action));
        Finding unread = Assert.Single(report.Findings, f => f.Code == FindingCode.LeakageNotRead);
        Assert.Equal("Leakage of 'B' was not read: nothing says that they are tight", unread.What);
        Assert.Equal(
            "Leakage was not read: nothing says that these injectors are tight",
            Of([1000], [1000]).Findings.Single().What
        );
    }

    /// <summary>A set is read by volume or by mass; a rating keeps which.</summary>
    [Fact]
    public void ToRating_OfAReading_KeepsItsKind()
    {
        StaticFlowReading mass = new(
            CollectedFuel.FromMass(Mass.FromGrams(140), Mass.FromGrams(0.5)),
            Duration.FromSeconds(30),
            TestBench.Conditions
        );

        Assert.True(Read(500, 1).ToRating().IsByVolume);
        Assert.False(mass.ToRating().IsByVolume);
        Close.Within(1e-12, 140 / 30.0, mass.ToRating().StaticMassFlow.GramsPerSecond);
        Close.Within(1e-12, 500, Read(500, 1).ToRating().StaticVolumeFlow.CubicCentimetersPerMinute);
    }

    private static SetReport Leaking(AcceptanceLimits limits, LeakageVerdict.Reading reading) =>
        new(
            Read(1000, 1).ToRating(),
            [
                BenchedInjector.FromSeries("A", new BenchedInjector.Series([Read(1000, 1)], [], [], [reading], [])),
                new BenchedInjector("B", [Read(1000, 1)]),
            ],
            limits,
            TestBench.NinetyFive
        );

    private static SetReport Of(params double[][] flows) =>
        new(
            Read(1000, 0.001).ToRating(),
            flows.Select((f, i) => new BenchedInjector($"{i}", f.Select(v => Read(v, 0.001)))),
            AcceptanceLimits.CommonPractice,
            TestBench.NinetyFive
        );

    private static StaticFlowReading Read(double cubicCentimeters, double step) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromCubicCentimeters(step)),
            Duration.FromMinutes(1),
            TestBench.Conditions
        );

    private static CoilVerdict.Reading Coil(double ohms) =>
        new(
            new CoilResistance(ElectricResistance.FromOhms(ohms), Temperature.FromDegreesCelsius(20)),
            ElectricResistance.FromOhms(0.1)
        );
}

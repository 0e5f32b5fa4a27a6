using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>What holds for every set and every injector: order, scale and unit of readings play no part.</summary>
public sealed class BenchLaws
{
    /// <summary>Flows of two to ten injectors, each read one to three times, in cm3/min.</summary>
    private static Arbitrary<double[][]> Sets { get; } =
        (
            from count in Gen.Choose(2, 10)
            from repeats in Gen.Choose(1, 3)
            from flows in Gen.Choose(5000, 20000).Select(f => f / 10.0).ArrayOf(repeats).ArrayOf(count)
            select flows
        ).ToArbitrary();

    /// <summary>Slope in g/s, dead time in ms, and scatter of ten readings in parts of a thousand.</summary>
    private static Arbitrary<(double Slope, double Dead, int[] Scatter)> Lines { get; } =
        (
            from slope in Gen.Choose(100, 2000)
            from dead in Gen.Choose(30, 200)
            from scatter in Gen.Choose(-8, 8).ArrayOf(10)
            select (slope / 100.0, dead / 100.0, scatter)
        ).ToArbitrary();

    /// <summary>The report on a set in another order says the same of each injector. Sums in another order: rounding.</summary>
    [Property]
    public Property Report_InAnotherOrder_IsTheSame() =>
        Prop.ForAll(
            Sets,
            flows =>
            {
                SetReport one = Report(flows, 1, 1);
                BenchedInjector[] named = Named(flows, 1);
                SetReport other = Of(named.Reverse(), 1000);

                Same(one, other);
                foreach (SetReport.Member member in one.Members)
                {
                    SetReport.Member again = other.Members.Single(m => m.Name == member.Name);
                    Close.Within(1e-12, member.Flow.LitersPerHour, again.Flow.LitersPerHour);
                    Assert.Equal(member.Rank, again.Rank);
                    Assert.Equal(member.IsAccepted, again.IsAccepted);
                }
            }
        );

    /// <summary>All flows and the rating k times as large: every share is the same.</summary>
    [Property]
    public Property Report_AllFlowsScaled_HasTheSameShares() =>
        Prop.ForAll(
            Sets,
            Gen.Choose(1, 500).Select(k => k / 50.0).ToArbitrary(),
            (flows, scale) => Same(Report(flows, 1, 1), Report(flows, scale, scale))
        );

    /// <summary>Collected in cubic inches over minutes in place of cm3 over seconds: the same report.</summary>
    [Property]
    public Property Report_InOtherUnits_IsTheSame() =>
        Prop.ForAll(
            Sets,
            flows =>
                Same(
                    Report(flows, 1, 1),
                    Of(
                        flows.Select(
                            (repeats, i) =>
                                new BenchedInjector(
                                    $"injector {i}",
                                    repeats.Select(f => new StaticFlowReading(
                                        CollectedFuel.FromVolume(
                                            Volume.FromCubicCentimeters(f).ToUnit(UnitsNet.Units.VolumeUnit.CubicInch),
                                            Volume.FromMicroliters(100)
                                        ),
                                        Duration.FromHours(1 / 60.0),
                                        TestBench.Conditions
                                    ))
                                )
                        ),
                        1000
                    )
                )
        );

    /// <summary>No score exceeds the largest that is possible in a set of that size.</summary>
    [Property]
    [Trait("Source", "Shiffler-1988")]
    public Property StandardScore_OfAnySet_IsWithinTheLargest() =>
        Prop.ForAll(
            Sets,
            flows =>
            {
                SetReport report = Report(flows, 1, 1);
                return report.Members.All(m =>
                    Math.Abs(m.StandardScore.DecimalFractions)
                    <= report.LargestPossibleScore.DecimalFractions * (1 + 1e-9)
                );
            }
        );

    /// <summary>A characterization in another order of readings is the same.</summary>
    [Property]
    public Property Characterization_InAnotherOrder_IsTheSame() =>
        Prop.ForAll(
            Lines,
            given =>
            {
                DynamicFlowReading[] readings = Pulses(given.Slope, given.Dead, given.Scatter, 1);
                (PulseCharacterization one, PulseCharacterization other) = (Of(readings), Of(readings.Reverse()));

                Close.Within(1e-12, one.StaticMassFlow.GramsPerSecond, other.StaticMassFlow.GramsPerSecond);
                Close.WithinOf(1, 1e-12, one.DeadTime.Milliseconds, other.DeadTime.Milliseconds);
            }
        );

    /// <summary>All masses k times as large: flow and offset scale, dead time and its interval stay.</summary>
    [Property]
    public Property Characterization_AllMassesScaled_KeepsTheDeadTime() =>
        Prop.ForAll(
            Lines,
            Gen.Choose(1, 500).Select(k => k / 50.0).ToArbitrary(),
            (given, scale) =>
            {
                PulseCharacterization one = Of(Pulses(given.Slope, given.Dead, given.Scatter, 1));
                PulseCharacterization scaled = Of(Pulses(given.Slope, given.Dead, given.Scatter, scale));

                Close.Within(1e-11, scale * one.StaticMassFlow.GramsPerSecond, scaled.StaticMassFlow.GramsPerSecond);
                Close.WithinOf(1, 1e-10, one.DeadTime.Milliseconds, scaled.DeadTime.Milliseconds);
                Close.WithinOf(1, 1e-9, one.DeadTimeLow.Milliseconds, scaled.DeadTimeLow.Milliseconds);
                Close.WithinOf(1, 1e-9, one.DeadTimeHigh.Milliseconds, scaled.DeadTimeHigh.Milliseconds);
            }
        );

    /// <summary>
    /// The injector that comes of a characterization gives each width back from the mass that it delivers: the inverse of the
    /// pulse law.
    /// </summary>
    [Property]
    public Property WidthFor_WhatAWidthDelivers_IsThatWidth() =>
        Prop.ForAll(
            Lines,
            Gen.Choose(0, 1000).ToArbitrary(),
            (given, part) =>
            {
                PulseCharacterization found = Of(Pulses(given.Slope, given.Dead, given.Scatter, 1));
                double dead = found.DeadTime.Milliseconds;
                if (dead < 0)
                {
                    return;
                }

                Injector injector = found.ToInjector(
                    "found",
                    DeadTimeTable.FromVoltage(
                        [ElectricPotential.FromVolts(10), ElectricPotential.FromVolts(16)],
                        Pressure.FromKilopascals(300),
                        [found.DeadTime, found.DeadTime],
                        OutsideRange.Refuse,
                        TestBench.Source
                    ),
                    Duration.FromMilliseconds(0.2),
                    Duration.Zero,
                    ElectricResistance.FromOhms(12.5)
                );
                double width = dead + 0.3 + (part / 1000.0 * (18 - dead - 0.3));

                Mass delivered = injector
                    .Deliver(
                        Duration.FromMilliseconds(width),
                        Duration.FromMilliseconds(20),
                        TestBench.Conditions.DifferentialPressure,
                        TestBench.Conditions.FluidDensity,
                        found.AtInjector
                    )
                    .Mass;
                Close.WithinOf(
                    20,
                    1e-12,
                    width,
                    injector
                        .WidthFor(
                            delivered,
                            Duration.FromMilliseconds(20),
                            TestBench.Conditions.DifferentialPressure,
                            TestBench.Conditions.FluidDensity,
                            found.AtInjector
                        )
                        .PulseWidth.Milliseconds
                );
            }
        );

    /// <summary>One reading makes no line.</summary>
    [Fact]
    public void Characterization_OneReading_IsRefused() =>
        Words.Refused<ArgumentException>("readings", "3, 1", () => Of([TestBench.Pulse(5, 10)]));

    private static void Same(SetReport one, SetReport other)
    {
        // Rounding of sums of up to thirty flows, of which spread and variation are differences.
        Close.WithinOf(1, 1e-12, one.Spread.DecimalFractions, other.Spread.DecimalFractions);
        Close.WithinOf(
            1,
            1e-12,
            one.CoefficientOfVariation.DecimalFractions,
            other.CoefficientOfVariation.DecimalFractions
        );
        Assert.Equal(one.IsMatched, other.IsMatched);
        Assert.Equal(one.Repeatability.HasValue, other.Repeatability.HasValue);
        if (one.Repeatability is { } repeats)
        {
            Close.WithinOf(1, 1e-12, repeats.DecimalFractions, other.Repeatability!.Value.DecimalFractions);
        }
    }

    private static SetReport Report(double[][] flows, double scale, double rated) =>
        Of(Named(flows, scale), 1000 * rated);

    private static BenchedInjector[] Named(double[][] flows, double scale) =>
        [.. flows.Select((repeats, i) => new BenchedInjector($"injector {i}", repeats.Select(f => Read(f * scale))))];

    private static SetReport Of(IEnumerable<BenchedInjector> injectors, double rated) =>
        new(Read(rated).ToRating(), injectors, AcceptanceLimits.CommonPractice, TestBench.NinetyFive);

    private static StaticFlowReading Read(double cubicCentimeters) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromMicroliters(100)),
            Duration.FromMinutes(1),
            TestBench.Conditions
        );

    private static DynamicFlowReading[] Pulses(double slope, double dead, int[] scatter, double scale) =>
        [.. scatter.Select((s, i) => TestBench.Pulse(4 + i, scale * slope * (4 + i - dead) * (1 + (s / 1000.0))))];

    private static PulseCharacterization Of(IEnumerable<DynamicFlowReading> readings) =>
        new(readings, Ratio.FromPercent(5), TestBench.NinetyFive);
}

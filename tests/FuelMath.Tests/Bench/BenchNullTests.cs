using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>What may not be null is refused by its name, before anything is read of it.</summary>
public sealed class BenchNullTests
{
    private static readonly StaticFlowReading Flow = new(
        CollectedFuel.FromVolume(Volume.FromCubicCentimeters(500), Volume.FromCubicCentimeters(1)),
        Duration.FromMinutes(1),
        TestBench.Conditions
    );

    private static readonly BenchedInjector.Series Series = BenchedInjector.Series.FromStaticFlow([Flow]);
    private static readonly AcceptanceLimits Limits = AcceptanceLimits.CommonPractice;
    private static readonly FlowRating Rating = Flow.ToRating();
    private static readonly Injector One = Systems.Workshop.Injector("a", 500);
    private static readonly AcceptanceLimits.CoilBand Band = new(
        ElectricResistance.FromOhms(12),
        ElectricResistance.FromOhms(13),
        TestBench.Source
    );

    private static readonly (string Name, Func<object?> Call)[] Cases =
    [
        ("fluid", () => new BenchConditions(Pressure.FromBars(3), null!, default, TestBench.Source)),
        ("source", () => new BenchConditions(Pressure.FromBars(3), Heptane, Room, null!)),
        ("driver", () => TestBench.Conditions.WithDriver(null!)),
        ("source", () => new BenchConditions.Uncertainty(default, default, default, default, null!)),
        ("readings", () => new BenchedInjector("a", null!)),
        ("now", () => BenchedInjector.FromSeries("a", null!)),
        ("before", () => BenchedInjector.FromCleaning("a", null!, Series)),
        ("after", () => BenchedInjector.FromCleaning("a", Series, null!)),
        ("before", () => BenchedInjector.FromCleaning("a", null!, [Flow])),
        ("after", () => BenchedInjector.FromCleaning("a", [Flow], null!)),
        ("staticFlow", () => new BenchedInjector.Series(null!, [], [], [], [])),
        ("pulses", () => new BenchedInjector.Series([Flow], null!, [], [], [])),
        ("deadTimes", () => new BenchedInjector.Series([Flow], [], null!, [], [])),
        ("leakage", () => new BenchedInjector.Series([Flow], [], [], null!, [])),
        ("coil", () => new BenchedInjector.Series([Flow], [], [], [], null!)),
        ("injectors", () => new BenchRecord("a", null!)),
        ("source", () => new AcceptanceLimits(Limits.Spread, Limits.FromRating, null!)),
        ("leakage", () => Limits.WithLeakage(null!, Limits.Drop)),
        ("drop", () => Limits.WithLeakage(Limits.Leakage, null!)),
        ("coil", () => Limits.WithCoil(null!)),
        ("source", () => new AcceptanceLimits.CoilBand(Band.Least, Band.Most, null!)),
        ("source", () => AcceptanceLimits.LeakageLimit.FromDrops(Frequency.FromHertz(1), null!)),
        ("source", () => LeakageVerdict.DropVolume.FromVolume(Volume.FromMicroliters(20), null!)),
        ("coil", () => new CoilVerdict.Reading(null!, ElectricResistance.FromOhms(1))),
        ("readings", () => new CoilVerdict(null!, Band)),
        ("band", () => new CoilVerdict([], null!)),
        ("conditions", () => new StaticFlowReading(Flow.Collected, Duration.FromMinutes(1), null!)),
        ("known", () => Flow.BudgetAt(null!, Pressure.FromBars(3))),
        ("conditions", () => new DynamicFlowReading(default, default, 1, Flow.Collected, default, null!)),
        ("conditions", () => new DeadTimeReading(default, default, default, null!)),
        ("conditions", () => LeakageVerdict.Reading.FromDrops(1, Duration.FromMinutes(1), null!)),
        ("readings", () => new LeakageVerdict(null!, Limits.Leakage, Limits.Drop, TestBench.NinetyFive)),
        ("limit", () => new LeakageVerdict([], null!, Limits.Drop, TestBench.NinetyFive)),
        ("drop", () => new LeakageVerdict([], Limits.Leakage, null!, TestBench.NinetyFive)),
        ("series", () => DeadTimeSeries.ToTable(null!, OutsideRange.Refuse, TestBench.Source)),
        ("source", () => DeadTimeSeries.ToTable([], OutsideRange.Refuse, null!)),
        ("readings", () => DeadTimeSeries.FromReadings(null!, OutsideRange.Refuse, TestBench.Source)),
        ("source", () => DeadTimeSeries.FromReadings([], OutsideRange.Refuse, null!)),
        ("readings", () => DeadTimeSeries.Fill(null!, default, OutsideRange.Refuse, TestBench.Source)),
        ("source", () => DeadTimeSeries.Fill([], default, OutsideRange.Refuse, null!)),
        ("readings", () => new PulseCharacterization(null!, Ratio.FromPercent(2), TestBench.NinetyFive)),
        ("readings", () => new RobustCharacterization(null!)),
        ("readings", () => new PressureExponentFit(null!, TestBench.NinetyFive)),
        ("rating", () => new SetReport(null!, [], Limits, TestBench.NinetyFive)),
        ("injectors", () => new SetReport(Rating, null!, Limits, TestBench.NinetyFive)),
        ("limits", () => new SetReport(Rating, [], null!, TestBench.NinetyFive)),
        ("readings", () => new SlotComparison(null!, Rating, TestBench.NinetyFive)),
        ("rating", () => new SlotComparison([], null!, TestBench.NinetyFive)),
        ("reading", () => new SlotComparison.SlotReading("a", "1", null!)),
        ("flows", () => new FlowPlacement(null!, [], 1)),
        ("air", () => new FlowPlacement([], null!, 1)),
        ("candidates", () => new Placement(null!, [], [])),
        ("air", () => new Placement([One], null!, [])),
        ("points", () => new Placement([One], [], null!)),
        ("candidates", () => Placement.FromCandidates(null!, [], [], 1)),
        ("injector", () => new Placement.Candidate(null!, [1])),
        ("stages", () => new Placement.Candidate(One, null!)),
        ("pulseWidths", () => new Placement.Point("a", null!, default, default, default, default)),
    ];

    public static TheoryData<int> Places => [.. Enumerable.Range(0, Cases.Length)];

    [Theory]
    [MemberData(nameof(Places))]
    public void Null_IsRefusedByItsName(int place) =>
        Assert.Throws<ArgumentNullException>(Cases[place].Name, () => Cases[place].Call());

    private static Fuel Heptane => TestBench.Conditions.Fluid;

    private static Temperature Room => TestBench.Conditions.FluidTemperature;
}

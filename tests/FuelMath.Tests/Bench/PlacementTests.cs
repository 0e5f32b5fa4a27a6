using FuelMath.Bench;
using FuelMath.Injectors;
using FuelMath.Tests.Injectors;
using UnitsNet;

namespace FuelMath.Tests.Bench;

public sealed class PlacementTests
{
    /// <summary>All orders of six injectors on three chambers of two stages, in every seed: none is better.</summary>
    [Theory]
    [InlineData(1, false)]
    [InlineData(2, false)]
    [InlineData(3, true)]
    [InlineData(4, true)]
    public void Find_SmallCase_IsTheBestOfAllOrders(int seed, bool unequalAir)
    {
        Injector[] all = Set(6, seed);
        double[] air = unequalAir ? [1, 1.05, 0.97] : [1, 1, 1];
        PlacementPoint[] points = [Point(4, 2), Point(8, 6)];
        var found = new Placement(all, air.Select(a => Ratio.FromDecimalFractions(a)), points);

        double best = Orders([0, 1, 2, 3, 4, 5])
            .Min(o => points.Max(p => Imbalance([.. o.Select(i => all[i])], air, p)));

        Assert.True(found.IsProvenBest);
        Close.WithinOf(1, 1e-12, best, found.Imbalance.DecimalFractions);
        Assert.True(found.Imbalance.DecimalFractions <= found.AsGiven.DecimalFractions);
        Injector[] seats = [.. Enumerable.Range(0, 6).Select(i => found.At(1 + (i / 2), 1 + (i % 2)))];
        Close.WithinOf(1, 1e-12, best, points.Max(p => Imbalance(seats, air, p)));
    }

    /// <summary>Sixteen injectors, eight chambers, two stages: hundreds of millions of placements, and a certified best.</summary>
    [Fact]
    public void Find_SixteenInjectors_IsCertified()
    {
        var found = new Placement(Set(16, 7), Enumerable.Repeat(Ratio.FromDecimalFractions(1), 8), [Point(5, 4)]);

        Assert.True(found.LowerBound.DecimalFractions <= found.Imbalance.DecimalFractions);
        Assert.True(found.IsProvenBest, $"{found.Steps} steps");
        Assert.True(found.Imbalance.DecimalFractions < found.AsGiven.DecimalFractions);
    }

    [Fact]
    public void Find_OneStageEqualAir_SaysThatEveryOrderIsEqual()
    {
        var found = new Placement(Set(4, 1), Enumerable.Repeat(Ratio.FromDecimalFractions(1), 4), [Point(5)]);

        Assert.True(found.EveryOrderIsEqual);
        Close.WithinOf(1, 1e-14, found.AsGiven.DecimalFractions, found.Imbalance.DecimalFractions);
    }

    /// <summary>Flows 0.9, 1.00, 1.01, 1.2: the two nearest neighbors are the best pair of four, spread 0.01 / 1.005.</summary>
    [Fact]
    public void Find_TwoOfFour_TakesTheNearestPair()
    {
        Injector[] all = [.. new[] { 0.9, 1.01, 1.2, 1.0 }.Select(Scaled)];
        var found = new Placement(all, Enumerable.Repeat(Ratio.FromDecimalFractions(1), 2), [Point(5)]);

        Close.Within(1e-9, 0.01 / 1.005, found.Imbalance.DecimalFractions);
        Assert.Equal(["1", "1.01"], new[] { found.At(1, 1).Name, found.At(2, 1).Name }.Order(StringComparer.Ordinal));
        Assert.False(found.EveryOrderIsEqual);
    }

    [Fact]
    public void Find_TooFewInjectors_IsRefused() =>
        Words.Refused<ArgumentException>(
            "candidates",
            "A placement (its seats) needs 4 or more points; 3 given.",
            () => _ = new Placement(Set(3, 1), Enumerable.Repeat(Ratio.FromDecimalFractions(1), 2), [Point(5, 3)])
        );

    [Fact]
    public void Find_DifferentStages_IsRefused() =>
        Words.Refused<ArgumentException>(
            "points",
            "All points must have the same number of stages.",
            () =>
                _ = new Placement(
                    Set(4, 1),
                    Enumerable.Repeat(Ratio.FromDecimalFractions(1), 2),
                    [Point(5, 3), Point(5)]
                )
        );

    [Fact]
    public void Find_PulseInsideTheDeadTime_IsRefused() =>
        Words.Refused<ArgumentException>(
            "points",
            "Every candidate must deliver in the first stage at every point.",
            () => _ = new Placement(Set(2, 1), Enumerable.Repeat(Ratio.FromDecimalFractions(1), 2), [Point(0.1)])
        );

    private static double Imbalance(Injector[] seats, double[] air, PlacementPoint at)
    {
        double mean = air.Average();
        double[] fuel =
        [
            .. air.Select(
                (_, c) =>
                    at
                        .PulseWidths.Select(
                            (w, s) =>
                                seats[(c * at.PulseWidths.Length) + s]
                                    .Deliver(w, at.Period, at.DifferentialPressure, at.Density, at.AtInjector)
                                    .Mass.Milligrams
                        )
                        .Sum()
            ),
        ];
        double[] each = [.. fuel.Select((f, c) => f / (air[c] / mean))];
        return (each.Max() - each.Min()) / fuel.Average();
    }

    private static IEnumerable<int[]> Orders(int[] of) =>
        of.Length == 1
            ? [of]
            : of.SelectMany(first => Orders([.. of.Where(i => i != first)]).Select(rest => (int[])[first, .. rest]));

    private static Injector[] Set(int count, int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, count).Select(_ => Scaled(0.95 + (0.1 * random.NextDouble())))];
    }

    private static Injector Scaled(double scale) =>
        TestInjector
            .With(ShortPulseCorrection.None, 0, 0)
            .WithFlowScale(
                FormattableString.Invariant($"{scale:0.##}"),
                Ratio.FromDecimalFractions(scale),
                TestBench.Source
            );

    private static PlacementPoint Point(params double[] milliseconds) =>
        new(
            "point",
            milliseconds.Select(w => Duration.FromMilliseconds(w)),
            Duration.FromMilliseconds(20),
            Pressure.FromKilopascals(300),
            TestBench.Conditions.FluidDensity,
            ElectricPotential.FromVolts(13)
        );
}

using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Bench;
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
        Placement.Point[] points = [Point(4, 2), Point(8, 6)];
        var found = new Placement(all, air.Select(a => Ratio.FromDecimalFractions(a)), points);

        double best = Orders([0, 1, 2, 3, 4, 5])
            .Min(o => points.Max(p => Imbalance([.. o.Select(i => all[i])], air, p)));

        Assert.True(found.IsProvenBest);
        Close.WithinOf(1, 1e-12, best, found.Imbalance.DecimalFractions);
        Assert.True(found.Imbalance.DecimalFractions <= found.AsGiven!.Value.DecimalFractions);
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
        Assert.True(found.Imbalance.DecimalFractions < found.AsGiven!.Value.DecimalFractions);
    }

    /// <summary>Sixteen injectors at three points, with equal and with unequal air: the bound still certifies the best.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Find_SixteenInjectorsAtThreePoints_IsCertified(bool unequalAir)
    {
        Placement found = Sixteen(unequalAir, 2_000_000);

        Assert.True(found.IsProvenBest, $"{found.Steps} steps");
        Close.WithinOf(1, 1e-15, 0, found.Gap.DecimalFractions);
        Assert.True(found.Imbalance.DecimalFractions < found.AsGiven!.Value.DecimalFractions);
    }

    /// <summary>Past its limit a search says so: the bound lies below the true best, and the gap is not zero.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(5_000)]
    [InlineData(60_000)]
    public void Find_PastTheLimit_SaysHowFarTheBoundIs(int mostSteps)
    {
        Placement stopped = Sixteen(true, mostSteps);
        Placement best = Sixteen(true, 2_000_000);

        Assert.False(stopped.IsProvenBest);
        Assert.True(stopped.Steps <= mostSteps);
        Assert.True(stopped.Gap.DecimalFractions > 0);
        Assert.True(stopped.LowerBound.DecimalFractions <= best.Imbalance.DecimalFractions);
        Assert.True(best.Imbalance.DecimalFractions <= stopped.Imbalance.DecimalFractions);
        Assert.True(stopped.Imbalance.DecimalFractions <= stopped.AsGiven!.Value.DecimalFractions);
        Close.WithinOf(
            1,
            1e-15,
            stopped.Imbalance.DecimalFractions - stopped.LowerBound.DecimalFractions,
            stopped.Gap.DecimalFractions
        );
    }

    /// <summary>The longer it searches, the higher the bound.</summary>
    [Fact]
    public void Find_LongerSearch_RaisesTheBound() =>
        Assert.True(Sixteen(true, 60_000).LowerBound.DecimalFractions > Sixteen(true, 1).LowerBound.DecimalFractions);

    /// <summary>
    /// Seven injectors, of which some may go to one stage only, on three chambers of two stages: all allowed choices and
    /// orders are walked, and none is better.
    /// </summary>
    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(3, true)]
    public void FromCandidates_Restricted_IsTheBestOfAllAllowed(int seed, bool unequalAir)
    {
        Injector[] all = Set(7, seed);
        int[][] stages =
        [
            [1],
            [1, 2],
            [2],
            [1],
            [2],
            [1, 2],
            [2],
        ];
        double[] air = unequalAir ? [1, 1.05, 0.97] : [1, 1, 1];
        Placement.Point[] points = [Point(4, 2), Point(8, 6)];
        Placement found = Placement.FromCandidates(
            all.Select((one, i) => new Placement.Candidate(one, stages[i])),
            air.Select(a => Ratio.FromDecimalFractions(a)),
            points,
            1_000_000
        );

        double best = Orders([0, 1, 2, 3, 4, 5, 6])
            .Where(o => Enumerable.Range(0, 6).All(seat => stages[o[seat]].Contains(1 + (seat % 2))))
            .Min(o => points.Max(p => Imbalance([.. o.Take(6).Select(i => all[i])], air, p)));

        Assert.True(found.IsProvenBest);
        Close.WithinOf(1, 1e-12, best, found.Imbalance.DecimalFractions);
        // The order given would put the third, which is for the second stage, into the first.
        Assert.Null(found.AsGiven);
        for (int seat = 0; seat < 6; seat++)
        {
            Injector placed = found.At(1 + (seat / 2), 1 + (seat % 2));
            Assert.Contains(1 + (seat % 2), stages[Array.IndexOf(all, placed)]);
        }
    }

    /// <summary>Never worse than the order given, and the same whatever order the candidates come in.</summary>
    [Property(MaxTest = 40)]
    public Property Find_AnySet_IsNoWorseThanTheOrderGiven() =>
        Prop.ForAll(
            (
                from seed in Gen.Choose(0, 100_000)
                from spare in Gen.Choose(0, 2)
                from unequal in Gen.Elements(false, true)
                select (seed, spare, unequal)
            ).ToArbitrary(),
            given =>
            {
                Injector[] all = Set(6 + given.spare, given.seed);
                double[] shares = given.unequal ? [1, 1.04, 0.97] : [1, 1, 1];
                Ratio[] air = [.. shares.Select(a => Ratio.FromDecimalFractions(a))];
                Placement.Point[] points = [Point(4, 2), Point(8, 6)];
                var found = new Placement(all, air, points);
                var reversed = new Placement(all.Reverse(), air, points);

                Assert.True(found.IsProvenBest);
                Assert.True(found.Imbalance.DecimalFractions <= found.AsGiven!.Value.DecimalFractions);
                Close.WithinOf(1, 1e-12, found.Imbalance.DecimalFractions, reversed.Imbalance.DecimalFractions);
            }
        );

    /// <summary>Three stages: the best of all orders of six on two chambers.</summary>
    [Fact]
    public void Find_ThreeStages_IsTheBestOfAllOrders()
    {
        Injector[] all = Set(6, 11);
        Placement.Point[] points = [Point(4, 3, 2)];
        var found = new Placement(all, Enumerable.Repeat(Ratio.FromDecimalFractions(1), 2), points);

        double best = Orders([0, 1, 2, 3, 4, 5]).Min(o => Imbalance([.. o.Select(i => all[i])], [1, 1], points[0]));

        Close.WithinOf(1, 1e-12, best, found.Imbalance.DecimalFractions);
    }

    [Fact]
    public void FromCandidates_TooFewForAStage_IsRefused() =>
        Words.Refused<ArgumentException>("candidates", () => Restricted([1], [1], [1], [2]));

    [Fact]
    public void FromCandidates_StageThatThereIsNot_IsRefused() =>
        Words.Refused<ArgumentException>("candidates", "1, 2", () => Restricted([1], [2], [1], [3]));

    [Fact]
    public void Candidate_StageTwice_IsRefused() =>
        Words.Refused<ArgumentException>("stages", "1", () => _ = new Placement.Candidate(Set(1, 1)[0], [1, 1]));

    [Fact]
    public void Find_TooManyGroups_IsRefused() =>
        Words.Refused<ArgumentException>(
            "candidates",
            "2000000, 200, 3, 7880400",
            () => _ = new Placement(Set(200, 1), Enumerable.Repeat(Ratio.FromDecimalFractions(1), 2), [Point(4, 3, 2)])
        );

    [Fact]
    public void Find_OneStageEqualAir_SaysThatEveryOrderIsEqual()
    {
        var found = new Placement(Set(4, 1), Enumerable.Repeat(Ratio.FromDecimalFractions(1), 4), [Point(5)]);

        Assert.True(found.EveryOrderIsEqual);
        Close.WithinOf(1, 1e-14, found.AsGiven!.Value.DecimalFractions, found.Imbalance.DecimalFractions);
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
            "4, 3",
            () => _ = new Placement(Set(3, 1), Enumerable.Repeat(Ratio.FromDecimalFractions(1), 2), [Point(5, 3)])
        );

    [Fact]
    public void Find_DifferentStages_IsRefused() =>
        Words.Refused<ArgumentException>(
            "points",
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
            () => _ = new Placement(Set(2, 1), Enumerable.Repeat(Ratio.FromDecimalFractions(1), 2), [Point(0.1)])
        );

    private static Placement Sixteen(bool unequalAir, int mostSteps)
    {
        double[] air = unequalAir ? [1, 1.03, 0.97, 1.01, 0.99, 1.02, 0.98, 1] : [1, 1, 1, 1, 1, 1, 1, 1];
        return Placement.FromCandidates(
            Set(16, 7).Select(i => new Placement.Candidate(i, [1, 2])),
            air.Select(a => Ratio.FromDecimalFractions(a)),
            [Point(5, 4), Point(3, 0), Point(9, 9)],
            mostSteps
        );
    }

    private static Placement Restricted(params int[][] stages) =>
        Placement.FromCandidates(
            Set(stages.Length, 1).Select((one, i) => new Placement.Candidate(one, stages[i])),
            Enumerable.Repeat(Ratio.FromDecimalFractions(1), 2),
            [Point(5, 3)],
            1000
        );

    private static double Imbalance(Injector[] seats, double[] air, Placement.Point at)
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

    private static Placement.Point Point(params double[] milliseconds) =>
        new(
            "point",
            milliseconds.Select(w => Duration.FromMilliseconds(w)),
            Duration.FromMilliseconds(20),
            Pressure.FromKilopascals(300),
            TestBench.Conditions.FluidDensity,
            ElectricPotential.FromVolts(13)
        );
}

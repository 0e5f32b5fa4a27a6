using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>Injectors that deliver alike and chambers with the same air: of equal orders the search tries one.</summary>
public sealed class PlacementTwinTests
{
    private static readonly DataSource Source = new("Workshop-class", "invented");

    /// <summary>Every order is tried by hand: few different flows, chambers alike in groups, with and without injectors to spare.</summary>
    [Theory]
    [InlineData(6, 2, new[] { 1.0, 1.02, 1.0 })]
    [InlineData(7, 2, new[] { 1.0, 1.02, 1.0 })]
    [InlineData(6, 2, new[] { 1.0, 1.0, 1.0 })]
    [InlineData(7, 2, new[] { 1.0, 1.0, 1.0 })]
    [InlineData(6, 2, new[] { 1.0, 1.04, 0.97 })]
    [InlineData(6, 3, new[] { 1.0, 1.03 })]
    [InlineData(5, 1, new[] { 1.0, 1.03, 1.0, 1.03 })]
    [InlineData(6, 1, new[] { 1.03, 1.0, 1.0, 1.03 })]
    public void Find_AlikeInjectorsAndChambers_IsTheBestOfAllOrders(int count, int stages, double[] air)
    {
        for (int seed = 0; seed < 12; seed++)
        {
            var random = new Random(seed);
            double[] flows = [.. Enumerable.Range(0, count).Select(_ => 4 + (0.05 * random.Next(0, 3)))];
            double[][] widths =
            [
                [5.0, 3.0, 2.0],
                [9.0, 8.0, 7.0],
            ];
            var found = new Placement(
                flows.Select(Flowing),
                air.Select(a => Ratio.FromDecimalFractions(a)),
                widths.Select(w => Point(w[..stages]))
            );

            // Dead time is 1 ms: a pulse delivers flow times what is over.
            double best = Orders([.. Enumerable.Range(0, count)], air.Length * stages)
                .Min(order =>
                    widths.Max(w =>
                    {
                        double[] fuel =
                        [
                            .. air.Select(
                                (_, c) =>
                                    Enumerable.Range(0, stages).Sum(s => flows[order[(c * stages) + s]] * (w[s] - 1))
                            ),
                        ];
                        double[] each = [.. fuel.Select((f, c) => f / air[c] * air.Average())];
                        return (each.Max() - each.Min()) / fuel.Average();
                    })
                );

            Assert.True(found.IsProvenBest);
            // Sums of at most twelve rounded products: a thousandth of the tolerance.
            Close.WithinOf(1, 1e-12, best, found.Imbalance.DecimalFractions);
        }
    }

    /// <summary>Sixteen that differ by a tenth of a percent or not at all, with unequal air: the hard case is a certificate too.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.001)]
    public void Find_SixteenNearlyAlikeUnequalAir_IsProven(double spread)
    {
        var random = new Random(3);
        double[] air = [1.012, 0.981, 0.977, 1.024, 1.003, 0.992, 1.028, 0.986];
        var found = new Placement(
            Enumerable.Range(0, 16).Select(_ => Flowing(4 * (1 + (spread * ((2 * random.NextDouble()) - 1))))),
            air.Select(a => Ratio.FromDecimalFractions(a)),
            [Point(5, 4), Point(3, 1), Point(9, 9)]
        );

        Assert.True(found.IsProvenBest, $"{found.Steps} steps");
    }

    private static Placement.Point Point(params double[] milliseconds) =>
        new(
            "point",
            milliseconds.Select(w => Duration.FromMilliseconds(w)),
            Duration.FromMilliseconds(20),
            Pressure.FromBars(3),
            StandardFuels.NHeptane.DensityAt(Temperature.FromDegreesCelsius(21)),
            ElectricPotential.FromVolts(14)
        );

    private static Injector Flowing(double gramsPerSecond) =>
        new(
            "one",
            FlowRating.FromMass(
                MassFlow.FromGramsPerSecond(gramsPerSecond),
                Pressure.FromBars(3),
                StandardFuels.NHeptane,
                Temperature.FromDegreesCelsius(21),
                Source
            ),
            DeadTimeTable.FromVoltage(
                [ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(16)],
                Pressure.FromBars(3),
                [Duration.FromMilliseconds(1.2), Duration.FromMilliseconds(0.8)],
                OutsideRange.Refuse,
                Source
            ),
            ShortPulseCorrection.None,
            Duration.Zero,
            Duration.Zero,
            ElectricResistance.FromOhms(12.5)
        );

    /// <summary>Every way to fill so many seats.</summary>
    private static IEnumerable<int[]> Orders(int[] of, int seats) =>
        seats == 0
            ?
            [
                [],
            ]
            : of.SelectMany(first =>
                Orders([.. of.Where(i => i != first)], seats - 1).Select(rest => (int[])[first, .. rest])
            );
}

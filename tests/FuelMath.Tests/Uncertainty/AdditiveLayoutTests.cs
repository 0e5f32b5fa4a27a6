using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Statistics;

namespace FuelMath.Tests.Uncertainty;

public sealed class AdditiveLayoutTests
{
    /// <summary>Four chemicals on five bolts of cloth. Printed: F of the chemicals 2.38 with probability 12.11 %.</summary>
    private static AdditiveLayout Cloth { get; } =
        Full([
            [73, 68, 74, 71, 67],
            [73, 67, 75, 72, 70],
            [75, 68, 78, 73, 68],
            [73, 71, 75, 75, 69],
        ]);

    /// <summary>Four catalysts on four batches, three in each: an incomplete block design.</summary>
    private static AdditiveLayout Catalysts { get; } =
        Full([
            [73, 74, double.NaN, 71],
            [double.NaN, 75, 67, 72],
            [73, 75, 68, double.NaN],
            [75, double.NaN, 72, 75],
        ]);

    [Fact]
    [Trait("Source", "Montgomery-2001")]
    public void RowTest_ChemicalsOnBolts_GivesThePrintedRatio()
    {
        FTest test = Cloth.RowTest();

        Assert.Equal((3, 12), (test.DegreesOfFreedom, test.ErrorDegreesOfFreedom));
        Close.WithinOf(1, 0.005, 2.38, test.F);
        Close.WithinOf(1, 0.00005, 0.1211, test.PValue.DecimalFractions);
    }

    /// <summary>Four detergents in three engines. Printed without decimals: 111 with 3, 135 with 2, error 19 with 6.</summary>
    [Fact]
    [Trait("Source", "Two-way-layout-lecture")]
    public void Tests_DetergentsInEngines_GiveThePrintedSums()
    {
        AdditiveLayout found = Full([
            [45, 43, 51],
            [47, 46, 52],
            [48, 50, 55],
            [42, 37, 49],
        ]);

        Close.WithinOf(1, 0.5, 111, found.RowTest().SumOfSquares);
        Close.WithinOf(1, 0.5, 135, found.ColumnTest().SumOfSquares);
        Close.WithinOf(1, 0.5, 19, found.ErrorSumOfSquares);
        Assert.Equal(
            (3, 2, 6),
            (found.RowTest().DegreesOfFreedom, found.ColumnTest().DegreesOfFreedom, found.DegreesOfFreedom)
        );
    }

    /// <summary>
    /// The incomplete design: adjusted catalysts 22.75 with 3, error 3.25 with 5, F 11.66; half of the last digit, as
    /// remembered.
    /// </summary>
    [Fact]
    [Trait("Source", "Montgomery-2001")]
    public void RowTest_IncompleteBlocks_GivesTheAdjustedSum()
    {
        FTest test = Catalysts.RowTest();

        Assert.Equal((3, 5), (test.DegreesOfFreedom, test.ErrorDegreesOfFreedom));
        Close.WithinOf(1, 0.005, 22.75, test.SumOfSquares);
        Close.WithinOf(1, 0.005, 3.25, test.ErrorSumOfSquares);
        Close.WithinOf(1, 0.01, 11.66, test.F);
    }

    /// <summary>
    /// The effects of a balanced incomplete design have the closed form k Q / (lambda a), here 3 Q / 8 with Q = -3, -7/3, -4/3
    /// and 20/3 less the batch means; the standard error of one is the root of k (a - 1) s2 / (lambda a2).
    /// </summary>
    [Theory]
    [Trait("Source", "Montgomery-2001")]
    [InlineData("r0", -9.0 / 8)]
    [InlineData("r1", -7.0 / 8)]
    [InlineData("r2", -4.0 / 8)]
    [InlineData("r3", 20.0 / 8)]
    public void RowEffect_IncompleteBlocks_HasTheClosedForm(string row, double effect)
    {
        Close.Within(1e-12, effect, Catalysts.RowEffect(row));
        Close.Within(1e-12, Math.Sqrt(3 * 3 * 3.25 / 5 / (2 * 16)), Catalysts.RowEffectStandardError(row));
    }

    /// <summary>A full layout: effects are means less the mean; the standard error is s times the root of (1 - 1/c)/r.</summary>
    [Fact]
    public void ColumnEffect_FullLayout_IsMeanLessMean()
    {
        Close.Within(1e-12, ((73 + 73 + 75 + 73) / 4.0) - (1435 / 20.0), Cloth.ColumnEffect("c0"));
        Close.Within(1e-12, Cloth.ErrorStandardDeviation() * Math.Sqrt(0.8 / 4), Cloth.ColumnEffectStandardError("c0"));
    }

    /// <summary>What is additive is found again, whichever pairs are missing; a pair that was not read too.</summary>
    [Property]
    public Property At_AdditiveReadings_IsExact() =>
        Prop.ForAll(
            (
                from row in Gen.Choose(-50, 50).ArrayOf(4)
                from column in Gen.Choose(-50, 50).ArrayOf(3)
                from more in Gen.Choose(0, 11).ArrayOf(3)
                select (row, column, more)
            ).ToArbitrary(),
            given =>
            {
                // A first row and a first column hang together.
                (int, int)[] pairs =
                [
                    (0, 0),
                    (0, 1),
                    (0, 2),
                    (1, 0),
                    (2, 0),
                    (3, 0),
                    .. given.more.Select(m => (m / 3, m % 3)),
                ];
                AdditiveLayout found = new(
                    pairs.Select(p => $"r{p.Item1}"),
                    pairs.Select(p => $"c{p.Item2}"),
                    pairs.Select(p => (double)given.row[p.Item1] + given.column[p.Item2])
                );
                return Enumerable
                    .Range(0, 12)
                    .All(i =>
                        Math.Abs(found.At($"r{i / 3}", $"c{i % 3}") - given.row[i / 3] - given.column[i % 3]) < 1e-10
                    );
            }
        );

    [Fact]
    public void Layout_TwoIslands_IsRefusedByName() =>
        Words.Refused<ArgumentException>(
            "columns",
            "2, 1",
            () => _ = new AdditiveLayout(["A", "B", "C", "D"], ["slot 1", "slot 1", "slot 2", "slot 2"], [1, 2, 3, 4])
        );

    [Fact]
    public void Layout_JustEnough_HasNoScatter()
    {
        AdditiveLayout found = new(["A", "A", "B"], ["1", "2", "1"], [1, 2, 4]);

        Assert.Equal(0, found.DegreesOfFreedom);
        Close.Within(1e-14, 5, found.At("B", "2"));
        Assert.Contains(
            "There are just as many readings as effects",
            Assert.Throws<NoSolutionException>(() => found.RowEffectStandardError("A")).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Layout_OneColumn_IsRefused() =>
        Words.Refused<ArgumentException>(
            "columns",
            "2, 1",
            () => _ = new AdditiveLayout(["A", "B"], ["1", "1"], [1, 2])
        );

    [Fact]
    public void Layout_DifferentCounts_IsRefused() =>
        Words.Refused<ArgumentException>("values", "2, 1", () => _ = new AdditiveLayout(["A", "B"], ["1", "2"], [1]));

    [Fact]
    public void RowEffect_NoSuchRow_IsRefused() =>
        Words.Refused<ArgumentException>("row", "'x'", () => Cloth.RowEffect("x"));

    private static AdditiveLayout Full(double[][] rows)
    {
        var cells = rows.SelectMany((row, i) => row.Select((value, j) => (Row: $"r{i}", Column: $"c{j}", value)))
            .Where(c => !double.IsNaN(c.value))
            .ToArray();
        return new(cells.Select(c => c.Row), cells.Select(c => c.Column), cells.Select(c => c.value));
    }
}

using FuelMath.Formulas;

namespace FuelMath.Tests.Tables;

/// <summary>A grid read without branching: the bits of the reading by search, in numbers and in vectors.</summary>
public sealed class GridReadTests
{
    [Theory]
    [InlineData(11, 7)]
    [InlineData(2, 2)]
    [InlineData(3, 1)]
    [InlineData(5, 2)]
    public void Read_InsideAndAtKnots_HasTheBitsOfAt(int rows, int columns)
    {
        var random = new Random(rows + (100 * columns));
        Grid grid = Make(random, rows, columns, OutsideRange.HoldEnds);
        double[] firsts = Places(random, grid.First.Knots);
        double[] seconds = Places(random, grid.Second.Knots);
        Span<double> lanes = stackalloc double[Lane.Count];
        foreach (double first in firsts)
        {
            foreach (double second in seconds)
            {
                double expected = grid.At(first, second);
                Assert.Equal(expected, grid.Read(new Real(first), new Real(second)).Value);
                Assert.Equal(expected, grid.Read(first, new Real(second)).Value);
                grid.Read(Lane.Of(first), Lane.Of(second)).CopyTo(lanes);
                Assert.Equal(expected, lanes[0]);
            }
        }
    }

    /// <summary>Beyond the edges: held, or straight on, as the table by search does; one that refuses is held.</summary>
    [Fact]
    public void Read_Outside_IsHeldOrGoesOn()
    {
        var random = new Random(3);
        Grid held = Make(random, 4, 3, OutsideRange.HoldEnds);
        Grid straight = Make(new Random(3), 4, 3, OutsideRange.Extend);
        Grid refuses = Make(new Random(3), 4, 3, OutsideRange.Refuse);
        (double first, double second) = (held.First.Knots[^1] + 1, held.Second.Knots[0] - 1);

        Assert.Equal(held.At(first, second), held.Read(new Real(first), new Real(second)).Value);
        Assert.Equal(straight.At(first, second), straight.Read(new Real(first), new Real(second)).Value);
        Assert.Equal(held.At(first, second), refuses.Read(new Real(first), new Real(second)).Value);
    }

    /// <summary>The slopes of a bilinear cell are differences of its sides, by hand.</summary>
    [Fact]
    public void Read_InADual_BringsTheSlope()
    {
        var grid = new Grid(
            "t",
            new Grid.Axis("x", [0, 2]),
            new Grid.Axis("y", [0, 4]),
            new double[,]
            {
                { 0, 4 },
                { 6, 18 },
            },
            OutsideRange.Refuse
        );

        Dual<Real> byFirst = grid.Read(Dual<Real>.Variable(new Real(1)), Dual<Real>.Of(2));

        Close.Within(1e-15, 7, byFirst.Value.Value);
        Close.Within(1e-15, 5, byFirst.Slope.Value);
    }

    private static double[] Places(Random random, IReadOnlyList<double> knots) =>
        [.. knots, .. Enumerable.Range(0, 40).Select(_ => knots[0] + ((knots[^1] - knots[0]) * random.NextDouble()))];

    private static Grid Make(Random random, int rows, int columns, OutsideRange outside)
    {
        double[] first = Axis(random, rows);
        double[] second = Axis(random, columns);
        var values = new double[rows, columns];
        for (int i = 0; i < rows; i++)
        {
            for (int j = 0; j < columns; j++)
            {
                values[i, j] = random.NextDouble();
            }
        }

        return columns == 1
            ? Grid.FromFirstAxis(
                "t",
                new Grid.Axis("x", first),
                new Grid.Axis("y", [0]),
                Enumerable.Range(0, rows).Select(i => values[i, 0]),
                outside
            )
            : new Grid("t", new Grid.Axis("x", first), new Grid.Axis("y", second), values, outside);
    }

    private static double[] Axis(Random random, int count)
    {
        double at = 0;
        return [.. Enumerable.Range(0, count).Select(_ => at += 0.1 + random.NextDouble())];
    }
}

using FsCheck.Xunit;
using FuelMath.Formulas;
using MathNet.Numerics.LinearAlgebra;

namespace FuelMath.Tests.Networks;

/// <summary>Sparse elimination against a dense one of a general numerics library.</summary>
public sealed class EliminationTests
{
    /// <summary>Conductances over three decades: the dense solution keeps twelve digits.</summary>
    [Property(MaxTest = 50)]
    public void Solve_RandomConductances_EqualsTheDenseSolution(int seed)
    {
        var random = new Random(seed);
        int nodes = random.Next(2, 30);
        EqualsTheDenseSolution(random, nodes, Joined(random, nodes, nodes / 2));
    }

    /// <summary>Three times as many pairs as nodes: what is left after the first steps is treated as full.</summary>
    [Fact]
    public void Solve_Tangle_EqualsTheDenseSolution()
    {
        var random = new Random(1);
        (int A, int B)[] edges = Joined(random, 150, 300);
        Assert.InRange(new Elimination(150, edges).Rest, 24, 100);

        EqualsTheDenseSolution(random, 150, edges);
    }

    /// <summary>In lanes the rest that is treated as full takes another way through the same operations.</summary>
    [Fact]
    public void Solve_TangleInLanes_GivesTheSameBits()
    {
        var random = new Random(2);
        (int A, int B)[] edges = Joined(random, 120, 240);
        var order = new Elimination(120, edges);
        double[] values = [.. Enumerable.Range(0, order.Slots).Select(_ => 0.5 + random.NextDouble())];
        double[] right = [.. Enumerable.Range(0, 120).Select(_ => random.NextDouble() - 0.5)];
        Real[] one = [.. right.Select(r => new Real(r))];
        Lane[] several = [.. right.Select(Lane.Of)];

        order.Solve([.. values.Select(v => new Real(v))], one);
        order.Solve([.. values.Select(Lane.Of)], several);

        Assert.All(one.Zip(several), pair => Assert.Equal(pair.First.Value, pair.Second[Lane.Count - 1]));
    }

    /// <summary>A ladder fills in by a fixed number of places a rung, whatever its length.</summary>
    [Theory]
    [InlineData(100)]
    [InlineData(10_000)]
    public void Slots_OfALadder_GrowWithItsLength(int rungs)
    {
        IEnumerable<(int, int)> edges = Enumerable
            .Range(0, rungs)
            .SelectMany(i => new[] { (2 * i, (2 * i) + 1), (2 * i, (2 * i) + 2), ((2 * i) + 1, (2 * i) + 3) });

        var order = new Elimination((2 * rungs) + 2, edges);

        Assert.Equal(0, order.Rest);
        Assert.InRange(order.Slots, 8 * rungs, 14 * rungs);
    }

    /// <summary>Four thousand pairs in a tangle of two thousand nodes: places for less than a tenth of all pairs.</summary>
    [Fact]
    public void Slots_OfATangle_AreFarFewerThanOfAFullMatrix() =>
        Assert.InRange(new Elimination(2000, Joined(new Random(3), 2000, 2000)).Slots, 10_000, 400_000);

    /// <summary>A tree, and so many more pairs.</summary>
    private static (int A, int B)[] Joined(Random random, int nodes, int more) =>
        [
            .. Enumerable.Range(1, nodes - 1).Select(i => (i, random.Next(i))),
            .. Enumerable
                .Range(0, more)
                .Select(_ => (random.Next(nodes), random.Next(nodes)))
                .Where(e => e.Item1 != e.Item2),
        ];

    private static void EqualsTheDenseSolution(Random random, int nodes, (int A, int B)[] edges)
    {
        var order = new Elimination(nodes, edges);
        var matrix = new Real[order.Slots];
        Matrix<double> dense = Matrix<double>.Build.Dense(nodes, nodes);
        void Add(int slot, int row, int column, double value)
        {
            matrix[slot] += value;
            dense[column, column] += value;
            if (row >= 0)
            {
                dense[row, column] -= value;
            }
        }

        foreach ((int a, int b) in edges)
        {
            Add(order.Slot(a, b), a, b, Math.Pow(10, 3 * random.NextDouble()));
            Add(order.Slot(b, a), b, a, Math.Pow(10, 3 * random.NextDouble()));
        }

        Add(Elimination.Slot(random.Next(nodes)), -1, 0, 0);
        for (int i = 0; i < nodes; i += 3)
        {
            Add(Elimination.Slot(i), -1, i, 1 + random.NextDouble());
        }

        double[] right = [.. Enumerable.Range(0, nodes).Select(_ => random.NextDouble() - 0.5)];
        Real[] solved = [.. right.Select(r => new Real(r))];
        order.Solve(matrix, solved);

        Vector<double> expected = dense.Solve(Vector<double>.Build.Dense(right));
        double scale = expected.AbsoluteMaximum();
        Assert.All(Enumerable.Range(0, nodes), i => Close.WithinOf(scale, 1e-9, expected[i], solved[i].Value));
    }

    /// <summary>
    /// Two nodes joined by 1 that hang on 1e-27: a difference would lose what carries them. Both rise by the flow over it.
    /// </summary>
    [Fact]
    public void Solve_RegionOnATinyConductance_IsExact()
    {
        var order = new Elimination(2, [(0, 1)]);
        var matrix = new Real[order.Slots];
        matrix[order.Slot(0, 1)] = new Real(1);
        matrix[order.Slot(1, 0)] = new Real(1);
        matrix[Elimination.Slot(0)] = new Real(1e-27);
        Real[] right = [new Real(0), new Real(1e-22)];

        order.Solve(matrix, right);

        Close.Within(1e-15, 1e5, right[0].Value);
        Close.Within(1e-15, 1e5, right[1].Value);
    }
}

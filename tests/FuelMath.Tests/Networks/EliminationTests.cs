using FsCheck.Xunit;
using FuelMath.Networks;
using FuelMath.Scalars;
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
        (int A, int B)[] edges =
        [
            .. Enumerable.Range(1, nodes - 1).Select(i => (i, random.Next(i))),
            .. Enumerable
                .Range(0, nodes / 2)
                .Select(_ => (random.Next(nodes), random.Next(nodes)))
                .Where(e => e.Item1 != e.Item2),
        ];
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

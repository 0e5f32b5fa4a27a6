using System.Collections.Immutable;
using FuelMath.Statistics;

namespace FuelMath.Bench;

/// <summary>How the repeats of one injector scatter more than those of the others of its set.</summary>
/// <param name="Test">The test that found it.</param>
internal sealed record SetScatter(CochranTest Test)
{
    /// <summary>Whether chance gives such a scatter in less than 1 % of sets: not to be accepted as it is.</summary>
    internal bool IsOutlier => Test.PValue < CochranTest.Outlier;

    /// <summary>
    /// Finds the injectors whose scatter must not be pooled, the worst first, as long as two
    /// and half of them are left to say what is usual.
    /// </summary>
    internal static ImmutableArray<SetScatter?> Of(ImmutableArray<SetFlow> flows)
    {
        var found = new SetScatter?[flows.Length];
        List<int> pooled = [.. Enumerable.Range(0, flows.Length).Where(i => flows[i].Freedom > 0)];
        for (int least = Math.Max(3, (pooled.Count + 3) / 2); pooled.Count >= least; )
        {
            double[] squares = [.. pooled.Select(i => flows[i].LeastSquares)];
            if (squares.Max() == 0)
            {
                break;
            }

            CochranTest test = new(squares, [.. pooled.Select(i => flows[i].Freedom)]);
            if (test.PValue >= CochranTest.Straggler)
            {
                break;
            }

            found[pooled[test.Place]] = new(test);
            pooled.RemoveAt(test.Place);
        }

        return [.. found];
    }
}

using System.Globalization;
using FuelMath.Tests.Networks;

namespace FuelMath.Benchmarks;

/// <summary>
/// Draws random physical networks, solves each from a cold start and prints how many iterations that took, how many were
/// refused, why, and every one that is not explained.
/// </summary>
internal static class Stress
{
    internal static void Run(int networks)
    {
        var iterations = new int[networks];
        var refusals = new Exception?[networks];
        _ = Parallel.For(
            0,
            networks,
            seed =>
            {
                try
                {
                    iterations[seed] = new RandomNetwork(seed).Network.Solve().Iterations;
                }
                catch (Exception e) when (e is NoSolutionException or OutsideTableException)
                {
                    refusals[seed] = e;
                }
            }
        );
        Print(iterations.Where((_, seed) => refusals[seed] is null), networks);
        Exception[] infeasible = [.. refusals.OfType<NoSolutionException>().Where(IsExplained)];
        Write($"refused, with a draw that can't be met or a pump without a supply as proof: {infeasible.Length}");
        int unexplained = 0;
        for (int seed = 0; seed < networks; seed++)
        {
            if (refusals[seed] is { } refusal && !IsExplained(refusal))
            {
                unexplained++;
                Write($"seed {seed}: {refusal.Message}");
            }
        }

        Write($"not solved and not explained: {unexplained}");
    }

    private static bool IsExplained(Exception refusal) => refusal is NoSolutionException e && RandomNetwork.IsProof(e);

    private static void Print(IEnumerable<int> solved, int networks)
    {
        int[] sorted = [.. solved.Order()];
        Write($"networks {networks}, solved {sorted.Length}");
        Write(
            $"median {sorted[sorted.Length / 2]}, 95 % {sorted[^(sorted.Length / 20)]}, most {sorted[^1]} iterations"
        );
        int from = 0;
        foreach (int to in (int[])[4, 5, 6, 7, 8, 10, 12, 16, 20, 30, 50, 100, 200, 300, 1000])
        {
            int count = sorted.Count(i => i > from && i <= to);
            Write($"{from + 1, 4} to {to, 4}: {count, 6}");
            from = to;
        }
    }

    private static void Write(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}

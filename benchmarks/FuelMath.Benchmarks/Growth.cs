using System.Diagnostics;
using System.Globalization;
using FuelMath.Networks;
using FuelMath.Scalars;

namespace FuelMath.Benchmarks;

/// <summary>How preparing and solving grow with the size of a network.</summary>
internal static class Growth
{
    internal static void Run(string[] args)
    {
        _ = args;
        Print("two rails", FuelMath.Tests.Networks.TwoRails.Network, 0);
        foreach (int size in GrownNetwork.Sizes)
        {
            (Network network, double prepare) = Prepared(() => GrownNetwork.Ladder(size));
            Print("ladder", network, prepare);
        }

        foreach (int size in (int[])[400, 1000, 4000])
        {
            (Network network, double prepare) = Prepared(() => GrownNetwork.Tangle(size));
            Print("tangle", network, prepare);
        }
    }

    private static (Network Network, double Microseconds) Prepared(Func<Network> make)
    {
        double best = double.PositiveInfinity;
        Network made = make();
        for (int i = 0; i < 3; i++)
        {
            var watch = Stopwatch.StartNew();
            made = make();
            best = Math.Min(best, watch.Elapsed.TotalMicroseconds);
        }

        return (made, best);
    }

    private static void Print(string what, Network network, double prepare)
    {
        using NetworkWork<Real> work = network.Plan.Rent<Real>();
        double cold = Best(() => _ = work.Solve(warm: false));
        int iterations = (int)work.Iterations.Value;
        double warm = Best(() => _ = work.Solve(warm: true));
        double whole = Best(() => _ = network.Solve());
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{what} links {network.Links.Length}: prepare {prepare:g4} us, cold {cold:g4} us ({iterations} iterations), warm {warm:g4} us, whole {whole:g4} us, slots {network.Plan.Order.Slots}, rest {network.Plan.Order.Rest}"
            )
        );
    }

    /// <summary>Microseconds of a call: the best of some, each long enough to be timed.</summary>
    internal static double Best(Action call)
    {
        call();
        var watch = Stopwatch.StartNew();
        call();
        int calls = Math.Max(1, (int)(2000 / Math.Max(0.1, watch.Elapsed.TotalMicroseconds)));
        double best = double.PositiveInfinity;
        long until = Stopwatch.GetTimestamp() + (Stopwatch.Frequency);
        do
        {
            watch.Restart();
            for (int i = 0; i < calls; i++)
            {
                call();
            }

            best = Math.Min(best, watch.Elapsed.TotalMicroseconds / calls);
        } while (Stopwatch.GetTimestamp() < until);

        return best;
    }
}

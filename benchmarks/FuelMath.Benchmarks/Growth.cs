using System.Diagnostics;
using System.Globalization;
using FuelMath.Formulas;
using FuelMath.Tests.Networks;
using UnitsNet;

namespace FuelMath.Benchmarks;

/// <summary>
/// How preparing and solving grow with the size of a network, beside Newton's method on a dense matrix of a general
/// numerics library, in one run. Prints a table and writes a plot.
/// </summary>
internal static class Growth
{
    /// <summary>Larger ones take the dense matrix too long.</summary>
    private const int MostDense = 401;

    private const int Points = 4096;

    internal static void Run(string plot)
    {
        Console.WriteLine("| network | links | prepare | cold | iterations | warm | batch, per point | dense Newton |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|");
        _ = Row("two rails", TwoRails.Network, 0);
        List<double[]> rows = [];
        foreach (int size in GrownNetwork.Sizes)
        {
            (Network network, double prepare) = Prepared(() => GrownNetwork.Ladder(size));
            rows.Add(Row("ladder", network, prepare));
        }

        foreach (int size in (int[])[400, 1000, 4000])
        {
            (Network network, double prepare) = Prepared(() => GrownNetwork.Tangle(size));
            _ = Row("tangle", network, prepare);
        }

        GrowthPlot.Write(plot, rows);
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

    /// <summary>Links, then microseconds: cold, warm, batch a point, dense; the last not a number where it was left out.</summary>
    private static double[] Row(string what, Network network, double prepare)
    {
        using NetworkWork<Real> work = network.Plan.Rent<Real>();
        double cold = Best(() => _ = work.Solve(warm: false));
        int iterations = (int)work.Iterations.Value;
        double dense = double.NaN;
        if (network.Lines.Length <= MostDense)
        {
            var newton = new DenseNewton(network.Plan);
            newton.Solve();
            newton.Compare(work);
            dense = Best(newton.Solve);
        }

        double warm = Warm(network, work);
        double batch = network.Lines.Length <= MostDense ? Batch(network) : double.NaN;

        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"| {what} | {network.Lines.Length} | {prepare:g3} | {cold:g3} | {iterations} | {warm:g3} | {batch:g3} | {dense:g4} |"
            )
        );
        return [network.Lines.Length, cold, warm, batch, dense];
    }

    /// <summary>To and fro between two pressures of the first given node, 2 kPa apart.</summary>
    internal static double Warm(Network network, NetworkWork<Real> work)
    {
        NetworkPlan plan = network.Plan;
        int node = plan.Unknown;
        double given = plan.Nodes[node].PressureSi;
        bool high = false;
        return Best(() =>
        {
            high = !high;
            work.SetPressure(node, new Real(given + (high ? 2e3 : 0)));
            _ = work.Solve(warm: true);
        });
    }

    /// <summary>Points within 2 kPa of the description, from its state, on one core.</summary>
    internal static double Batch(Network network)
    {
        Network.Node node = network.Plan.Nodes[network.Plan.Unknown];
        NetworkBatch batch = new NetworkBatch(network, Points).WithPressure(
            node.Name,
            Enumerable
                .Range(0, Points)
                .Select(i => new GaugePressure(Pressure.FromPascals(node.PressureSi + (2e3 * i / Points))))
        );
        BatchRunner runner = batch.Runner(network.Solve());
        return Best(() => _ = runner.RunOnOneCore(Points)) / Points;
    }

    /// <summary>Microseconds of a call: the best of some, each long enough to be timed.</summary>
    internal static double Best(Action call)
    {
        // Until the compiler has brought out its best.
        long warm = Stopwatch.GetTimestamp() + (Stopwatch.Frequency / 4);
        do
        {
            call();
        } while (Stopwatch.GetTimestamp() < warm);

        var watch = Stopwatch.StartNew();
        call();
        int calls = Math.Max(1, (int)(1000 / Math.Max(0.1, watch.Elapsed.TotalMicroseconds)));
        double best = double.PositiveInfinity;
        long until = Stopwatch.GetTimestamp() + (Stopwatch.Frequency / 2);
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

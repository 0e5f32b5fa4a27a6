using System.Globalization;
using System.Text.Json;
using FuelMath.Formulas;
using FuelMath.Tests.Networks;

namespace FuelMath.Benchmarks;

/// <summary>
/// The same networks solved by a general pipe-network engine, by ours, and by Newton's method on a dense matrix of a
/// general numerics library, in one run on one core. Prints one table and writes it to a file that the docs include.
/// </summary>
internal static class SideBySide
{
    /// <summary>The engine's friction law makes both solve the same equations; the flows agree to this part of the greatest.</summary>
    private const double Same = 1e-5;

    internal static void Run(string file)
    {
        List<string> lines =
        [
            "| Network | Links | Engine, cold | Engine, again | Ours, cold | Ours, warm | Ours, batch | Dense Newton, cold | Engine to ours, cold |",
            "|---|---|---|---|---|---|---|---|---|",
        ];
        string about;
        if (OutsideEngine.Time() is { } engine)
        {
            JsonElement[] all = [.. engine.GetProperty("networks").EnumerateArray()];
            foreach (JsonElement described in all)
            {
                // A first time that does not count: the compiler brings out its best code in the background.
                Check(described);
                _ = Row(described);
            }

            lines.AddRange(all.Select(Row));
            about =
                $"Engine: epanet-js, engine version {Version(engine.GetProperty("engine").GetInt32())}, in Node {engine.GetProperty("node").GetString()}.";
        }
        else
        {
            lines.Add(Row("12 links and 4 injectors", TwoRails.Network, double.NaN, double.NaN));
            lines.Add(Row("ladder of rails", GrownNetwork.Ladder(41), double.NaN, double.NaN));
            lines.Add(Row("ladder of rails", GrownNetwork.Ladder(401), double.NaN, double.NaN));
            about = "The engine was not timed: there was no Node.";
        }

        string text =
            string.Join('\n', lines)
            + string.Create(
                CultureInfo.InvariantCulture,
                $"\n\nMicroseconds, one core, vectors of {WidestLane()} numbers. {about}\n"
            );
        Console.Write(text);
        File.WriteAllText(file, text);
    }

    private static string Row(JsonElement described) =>
        Row(
            described.GetProperty("name").GetString()!,
            new OracleNetwork(described, Pipe.FrictionLaw.ColebrookStraightPassage).Network,
            Microseconds(described, "cold"),
            Microseconds(described, "warm")
        );

    private static string Row(string name, Network network, double engineCold, double engineWarm)
    {
        using NetworkWork<Real> work = network.Plan.Rent<Real>();
        double cold = Growth.Best(() => _ = work.Solve(warm: false));
        var newton = new DenseNewton(network.Plan);
        newton.Solve();
        newton.Compare(work);
        double dense = Growth.Best(newton.Solve);
        double warm = Growth.Warm(network, work);
        double batch = Growth.Batch(network);
        return $"| {name} | {network.Lines.Length} | {Show(engineCold)} | {Show(engineWarm)} | {Show(cold)} | {Show(warm)} "
            + $"| {Show(batch)} | {Show(dense)} | {Show(engineCold / cold)} |";
    }

    /// <summary>With the engine's friction law ours finds the engine's flows, or the times say nothing.</summary>
    private static void Check(JsonElement described)
    {
        var engine = new OracleNetwork(described, Pipe.FrictionLaw.SwameeJainCubicPassage);
        NetworkState state = engine.Network.Solve();
        foreach ((string link, double flow) in engine.Flow)
        {
            double ours = state.FlowIn(link).LitersPerHour;
            if (!(Math.Abs(ours - flow) <= Same * engine.FlowScale))
            {
                throw new InvalidOperationException($"'{link}': {ours} L/h, and {flow} L/h by the engine.");
            }
        }
    }

    /// <summary>20305 is what the engine calls its release 2.3.5.</summary>
    private static string Version(int number) => $"{number / 10000}.{number / 100 % 100}.{number % 100}";

    private static double Microseconds(JsonElement described, string start) =>
        described.GetProperty("engine").GetProperty(start).GetProperty("microseconds").GetDouble();

    private static int WidestLane() =>
        System.Runtime.Intrinsics.Vector512.IsHardwareAccelerated ? 8 : System.Numerics.Vector<double>.Count;

    /// <summary>Two digits are what a shared machine is good for.</summary>
    private static string Show(double value) =>
        double.IsNaN(value) ? ""
        : value >= 100 ? (Math.Round(value / Digits(value)) * Digits(value)).ToString("0", CultureInfo.InvariantCulture)
        : value.ToString("g2", CultureInfo.InvariantCulture);

    private static double Digits(double value) => Math.Pow(10, Math.Floor(Math.Log10(value)) - 1);
}

using System.Diagnostics;
using System.Globalization;

namespace FuelMath.Benchmarks;

/// <summary>
/// Times as ratios to a calibration loop of plain doubles, kept in a file: "name,ratio" by line. A ratio more than a quarter
/// above the one kept is a regression. Each is the median of rounds in which loop and measure alternate, in processor time.
/// </summary>
internal static class Ratios
{
    private const int Rounds = 25;
    private const double Allowed = 1.25;

    /// <summary>Measures and writes the file.</summary>
    internal static void Write(string file)
    {
        File.WriteAllLines(file, Measure().Select(m => FormattableString.Invariant($"{m.Name},{m.Ratio:0.0000}")));
        Console.WriteLine($"Wrote {file}");
    }

    /// <summary>Measures and compares with the file; says which are slower, and whether none is.</summary>
    internal static bool Check(string file)
    {
        Dictionary<string, double> kept = File.ReadLines(file)
            .Select(line => line.Split(','))
            .ToDictionary(p => p[0], p => double.Parse(p[1], CultureInfo.InvariantCulture), StringComparer.Ordinal);
        bool holds = true;
        foreach ((string name, double ratio) in Measure())
        {
            bool isKnown = kept.TryGetValue(name, out double before);
            bool isSlower = isKnown && ratio > Allowed * before;
            holds &= !isSlower;
            string verdict =
                isSlower ? "SLOWER"
                : isKnown ? ""
                : "new";
            Console.WriteLine(
                FormattableString.Invariant($"{name, -24}{before, 10:0.0000}{ratio, 10:0.0000}  {verdict}")
            );
        }

        return holds;
    }

    private static IEnumerable<(string Name, double Ratio)> Measure()
    {
        int calibrations = Repeats(Calibrate);
        foreach ((string name, Action action) in Measures())
        {
            int repeats = Repeats(action);
            double[] ratios = new double[Rounds];
            for (int round = 0; round < Rounds; round++)
            {
                double unit = Time(Calibrate, calibrations);
                ratios[round] = Time(action, repeats) / unit;
            }

            Array.Sort(ratios);
            yield return (name, ratios[Rounds / 2]);
        }
    }

    private static IEnumerable<(string Name, Action Action)> Measures()
    {
        foreach ((string name, _, Action column) in new ColumnRatios.Log(4096).Pairs())
        {
            yield return ("column: " + name, column);
        }

        var network = new NetworkBenchmarks();
        network.Setup();
        yield return ("network: cold", network.Cold_Real);
        yield return ("network: warm", network.Warm_Real);
        yield return ("network: warm in vectors", network.Warm_WideLane);
        var system = new SystemBenchmarks();
        system.Load();
        yield return ("system: open loop", () => system.Solve_OpenLoop());
        yield return ("system: held lambda", () => system.Solve_HoldLambda());
    }

    /// <summary>A thousand logarithms, roots and quotients, each waiting for the last.</summary>
    private static void Calibrate()
    {
        double x = 1.5;
        for (int i = 0; i < 1000; i++)
        {
            x = 1 + (Math.Sqrt(x) / (2 + Math.Log(x)));
        }

        GC.KeepAlive(x);
    }

    /// <summary>
    /// How often for about 10 ms, once the compiler has brought out its best, which it does in the background, in two steps and
    /// only while no other method is new: a whole system takes twenty times as long before.
    /// </summary>
    private static int Repeats(Action action)
    {
        long warm = Stopwatch.GetTimestamp() + (3 * Stopwatch.Frequency / 2);
        while (Stopwatch.GetTimestamp() < warm)
        {
            _ = ColumnRatios.Time(action, 50);
            Thread.Sleep(10);
        }

        double once = double.MaxValue;
        for (int i = 0; i < 200; i++)
        {
            once = Math.Min(once, Math.Max(1e-7, ColumnRatios.Time(action, 5)));
        }

        return Math.Max(1, (int)(0.01 / once));
    }

    private static double Time(Action action, int repeats) => ColumnRatios.Time(action, repeats);
}

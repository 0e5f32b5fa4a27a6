using System.Diagnostics;
using System.Globalization;
using UnitsNet;

namespace FuelMath.Benchmarks;

/// <summary>
/// What whole systems cost beside a single warm solve: the first solves of a process, a Monte Carlo run, and the creation of a
/// system by its switched pumps. Run in a process of its own; elapsed times are the least of some runs.
/// </summary>
internal static class WholeSystems
{
    private const int Trials = 10_000;

    internal static void Run()
    {
        FirstSolves();
        foreach (string name in (string[])["time-trial-car", "training-stand", "circuit-car"])
        {
            MonteCarlo(name);
        }

        Creation();
    }

    /// <summary>Nothing is compiled yet: the solves of the first second, as they come.</summary>
    private static void FirstSolves()
    {
        (FuelSystem? system, OperatingPoint? point) = (null, null);
        Say("first document read", Processor(() => (system, point) = Read("time-trial-car")), "ms of processor time");
        Say("first solve", Processor(() => system!.Solve(point!)), "ms of processor time");
        Say("first verdict", Processor(() => _ = system!.Solve(point!).Verdict), "ms of processor time");
        foreach ((int from, int to) in ((int, int)[])[(2, 30), (30, 300), (300, 3000), (3000, 30000)])
        {
            double[] times = [.. Enumerable.Range(from, to - from).Select(_ => Elapsed(() => system!.Solve(point!)))];
            Array.Sort(times);
            Say($"solves {from} to {to}, median", 1e3 * times[times.Length / 2], "us");
        }

        double first = double.PositiveInfinity;
        for (int i = 0; i < 30; i++)
        {
            FuelSystem other = Read("time-trial-car").System;
            first = Math.Min(first, Elapsed(() => other.Solve(point!)));
        }

        Say("first solve of a further system", 1e3 * first, "us");
    }

    private static void MonteCarlo(string name)
    {
        (FuelSystem system, OperatingPoint point) = Read(name);
        var source = new DataSource("Workshop-class", "invented");
        UncertainInput[] inputs =
        [
            UncertainInput.EachInjectorFlow(Ratio.FromPercent(1), FuelMath.Statistics.SpreadShape.Normal, source),
            UncertainInput.DeadTime(Duration.FromMicroseconds(30), FuelMath.Statistics.SpreadShape.Rectangular, source),
            UncertainInput.PumpFlow(Ratio.FromPercent(3), FuelMath.Statistics.SpreadShape.Normal, source),
            UncertainInput.RegulatorSetPoint(
                Pressure.FromKilopascals(3),
                FuelMath.Statistics.SpreadShape.Triangular,
                source
            ),
            UncertainInput.FuelDensity(Ratio.FromPercent(0.5), FuelMath.Statistics.SpreadShape.Normal, source),
        ];
        void Go() => _ = new SystemMonteCarlo(system, point, inputs, Trials, 1, null, CancellationToken.None);
        (double elapsed, double processor) = (double.PositiveInfinity, double.PositiveInfinity);
        for (int i = 0; i < 20; i++)
        {
            processor = Math.Min(processor, Processor(() => elapsed = Math.Min(elapsed, Elapsed(Go))));
        }

        long before = GC.GetTotalAllocatedBytes(precise: true);
        Go();
        long bytes = (GC.GetTotalAllocatedBytes(precise: true) - before) / Trials;
        Say($"{name}, {Trials} trials", elapsed, "ms elapsed");
        Say($"{name}, {Trials} trials", processor, "ms of processor time");
        Say($"{name}, a trial", bytes, "bytes");
    }

    /// <summary>Each pump with a switch doubles the sets of running pumps, each of which is prepared.</summary>
    private static void Creation()
    {
        FuelSystem system = Read("circuit-car").System;
        Line[] lines = [.. system.Network.Lines];
        int pumps = lines.Count(l => l.Part is Pump);
        for (int switched = 0; switched <= Math.Min(pumps, 3); switched++)
        {
            int left = switched;
            var network = new Network(
                system.Network.Nodes,
                lines.Select(l =>
                    l.Part is not Pump ? l
                    : left-- > 0 ? l.SwitchedBy(PumpSwitch.ManifoldAbove(Gauge(-12 - left), Gauge(-30 - left), false))
                    : new Line(l.Name, l.From, l.To, l.Part)
                )
            );
            double best = double.PositiveInfinity;
            for (int i = 0; i < 500; i++)
            {
                best = Math.Min(best, Elapsed(() => system.WithNetwork(network)));
            }

            long before = GC.GetAllocatedBytesForCurrentThread();
            _ = system.WithNetwork(network);
            Say($"{switched} switched pumps, creation", 1e3 * best, "us");
            Say($"{switched} switched pumps, creation", GC.GetAllocatedBytesForCurrentThread() - before, "bytes");
        }
    }

    private static GaugePressure Gauge(double kilopascals) => new(Pressure.FromKilopascals(kilopascals));

    private static (FuelSystem System, OperatingPoint Point) Read(string name)
    {
        string file = Path.Combine(AppContext.BaseDirectory, "data", name);
        OperatingPoint[] points = [.. OperatingListDocument.ReadFile(file + "-points.json")];
        return (SystemDocument.ReadFile(file + ".json"), Array.Find(points, p => p.Name == "peak power") ?? points[1]);
    }

    private static double Elapsed(Action action)
    {
        long start = Stopwatch.GetTimestamp();
        action();
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }

    private static double Processor(Action action)
    {
        TimeSpan start = Environment.CpuUsage.TotalTime;
        action();
        return (Environment.CpuUsage.TotalTime - start).TotalMilliseconds;
    }

    private static void Say(string what, double value, string unit) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what, -44}{value, 10:0.0} {unit}"));
}

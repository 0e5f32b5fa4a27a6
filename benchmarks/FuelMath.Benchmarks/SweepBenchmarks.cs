using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace FuelMath.Benchmarks;

/// <summary>
/// A map of engine speed by manifold pressure of each bundled system, on all cores, time per point: point by point, and
/// as a sweep, which solves several at once. The claim is the ratio.
/// </summary>
[MemoryDiagnoser]
[ShortRunJob]
public class SweepBenchmarks
{
    private const int Axis = 64;
    private const int Points = Axis * Axis;

    private FuelSystem system = null!;
    private OperatingPoint conditions = null!;
    private RotationalSpeed[] speeds = [];
    private AbsolutePressure[] manifolds = [];

    [Params("time-trial-car", "training-stand")]
    public string Name { get; set; } = "";

    [Params(FuelCommand.CommandKind.OpenLoop, FuelCommand.CommandKind.HoldLambda)]
    public FuelCommand.CommandKind Command { get; set; }

    [GlobalSetup]
    public void Load()
    {
        string folder = Path.Combine(AppContext.BaseDirectory, "data");
        system = SystemDocument.ReadFile(Path.Combine(folder, $"{Name}.json"));
        OperatingPoint peak = OperatingListDocument
            .ReadFile(Path.Combine(folder, $"{Name}-points.json"))
            .Single(p => p.Name == "peak power");
        Lambda lambda = Lambda.FromRatio(0.85);
        conditions = peak.WithCommand(
            Command == FuelCommand.CommandKind.OpenLoop ? FuelCommand.OpenLoop(lambda) : FuelCommand.HoldLambda(lambda)
        );
        speeds = [.. Enumerable.Range(1, Axis).Select(i => peak.Speed * (0.3 + (0.7 * i / Axis)))];
        manifolds =
        [
            .. Enumerable
                .Range(1, Axis)
                .Select(i => new AbsolutePressure(peak.Air.Manifold.AboveVacuum * (0.5 + (0.5 * i / Axis)))),
        ];
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Points)]
    public SystemState[] PointByPoint()
    {
        var states = new SystemState[Points];
        Parallel.For(0, Points, i => states[i] = system.Solve(conditions.At(speeds[i / Axis], manifolds[i % Axis])));
        return states;
    }

    [Benchmark(OperationsPerInvoke = Points)]
    public Sweep AsASweep() => new(system, conditions, speeds, manifolds, CancellationToken.None);
}

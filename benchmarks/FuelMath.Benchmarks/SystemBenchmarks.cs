using BenchmarkDotNet.Attributes;

namespace FuelMath.Benchmarks;

/// <summary>The bundled time-trial car at peak power: one solve, by how the mixture is commanded.</summary>
[MemoryDiagnoser]
public class SystemBenchmarks
{
    private FuelSystem system = null!;
    private OperatingPoint held = null!;
    private OperatingPoint open = null!;
    private OperatingPoint cut = null!;

    [GlobalSetup]
    public void Load()
    {
        string folder = Path.Combine(AppContext.BaseDirectory, "data");
        system = SystemDocument.ReadFile(Path.Combine(folder, "time-trial-car.json"));
        OperatingPoint peak = OperatingListDocument
            .ReadFile(Path.Combine(folder, "time-trial-car-points.json"))
            .Single(p => p.Name == "peak power");
        held = peak.WithCommand(FuelCommand.HoldLambda(Lambda.FromRatio(0.82)));
        open = peak.WithCommand(FuelCommand.OpenLoop(Lambda.FromRatio(0.82)));
        cut = peak.WithCommand(FuelCommand.Cut);
    }

    [Benchmark(Baseline = true)]
    public SystemState Solve_OpenLoop() => system.Solve(open);

    [Benchmark]
    public SystemState Solve_HoldLambda() => system.Solve(held);

    [Benchmark]
    public SystemState Solve_FuelCut() => system.Solve(cut);
}

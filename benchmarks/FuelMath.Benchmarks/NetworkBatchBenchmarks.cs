using BenchmarkDotNet.Attributes;
using FuelMath.Tests.Networks;
using UnitsNet;

namespace FuelMath.Benchmarks;

/// <summary>
/// Two rails of 12 links and 4 injectors: a state from a cold start, into a buffer from the last state, and at many points.
/// The claims are ratios, and that a buffer allocates nothing.
/// </summary>
[MemoryDiagnoser]
[ShortRunJob]
public class NetworkBatchBenchmarks
{
    private const int Points = 4096;

    private readonly Network.Buffer buffer = new(TwoRails.Network);
    private readonly NetworkState start = TwoRails.Network.Solve();
    private readonly NetworkBatch batch = new NetworkBatch(TwoRails.Network, Points).WithPressure(
        "tank",
        Enumerable.Range(0, Points).Select(i => Gauge(2e3 * i / Points))
    );

    private bool high;

    [Benchmark(Baseline = true)]
    public NetworkState Solve_Cold() => TwoRails.Network.Solve();

    [Benchmark]
    public int Solve_IntoBuffer()
    {
        high = !high;
        buffer.SetPressure("tank", Gauge(high ? 2e3 : 0));
        TwoRails.Network.Solve(buffer);
        return buffer.Iterations;
    }

    /// <summary>On all cores.</summary>
    [Benchmark(OperationsPerInvoke = Points)]
    public NetworkBatch.Result Solve_Batch() => batch.Solve(start, null, CancellationToken.None);

    private static GaugePressure Gauge(double pascals) => new(Pressure.FromPascals(pascals));
}

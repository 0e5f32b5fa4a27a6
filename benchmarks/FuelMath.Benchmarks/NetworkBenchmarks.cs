using BenchmarkDotNet.Attributes;
using FuelMath.Formulas;
using FuelMath.Tests.Networks;

namespace FuelMath.Benchmarks;

/// <summary>
/// Two rails, 12 links and 4 groups of injectors, at eight operating points from idle to held open: time per point, exact
/// Colebrook, one core. The claims are ratios: a lane of 512 bits costs at most a quarter of one number per point, and
/// nothing is allocated but the state that a public solve hands out.
/// </summary>
[MemoryDiagnoser]
public class NetworkBenchmarks
{
    private const int Points = 8;
    private static readonly double[] Manifold = [-60e3, -40e3, -20e3, 0, 30e3, 60e3, 90e3, 120e3];
    private static readonly double[] Commanded = [2e-7, 6e-7, 1e-6, 2e-6, 3e-6, 4e-6, 6e-6, 2e-5];

    private readonly NetworkPlan plan = TwoRails.Network.Plan;
    private NetworkWork<Real>[] ones = [];
    private NetworkWork<Lane>[] lanes = [];
    private NetworkWork<WideLane>[] wides = [];
    private int manifold;
    private int regulator;
    private int[] injectors = [];
    private bool other;

    [GlobalSetup]
    public void Setup()
    {
        ones = [.. Enumerable.Range(0, Points).Select(_ => plan.Rent<Real>())];
        lanes = [.. Enumerable.Range(0, Points / Lane.Count).Select(_ => plan.Rent<Lane>())];
        wides = [plan.Rent<WideLane>()];
        (manifold, regulator) = (plan.Node("manifold"), plan.Link("regulator"));
        injectors = [.. TwoRails.Injectors.Select(name => plan.Link(name))];
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Points)]
    public void Cold_Real() => InReal(warm: false);

    [Benchmark(OperationsPerInvoke = Points)]
    public void Cold_Lane() => InLanes(lanes, warm: false);

    [Benchmark(OperationsPerInvoke = Points)]
    public void Cold_WideLane() => InLanes(wides, warm: false);

    /// <summary>From a state with a tenth less or more fuel, and 5 kPa of manifold pressure beside it.</summary>
    [Benchmark(OperationsPerInvoke = Points)]
    public void Warm_Real() => InReal(warm: true);

    [Benchmark(OperationsPerInvoke = Points)]
    public void Warm_Lane() => InLanes(lanes, warm: true);

    [Benchmark(OperationsPerInvoke = Points)]
    public void Warm_WideLane() => InLanes(wides, warm: true);

    [Benchmark]
    public NetworkState Public_Solve() => TwoRails.Network.Solve();

    private void InReal(bool warm)
    {
        other = !other;
        for (int i = 0; i < Points; i++)
        {
            Set(ones[i], new Real(Manifold[i]), new Real(Commanded[i]));
            ones[i].Solve(warm);
        }
    }

    private void InLanes<T>(NetworkWork<T>[] works, bool warm)
        where T : struct, ILane<T>
    {
        other = !other;
        for (int i = 0; i < works.Length; i++)
        {
            int first = i * T.Count;
            Set(works[i], T.Load(Manifold.AsSpan(first)), T.Load(Commanded.AsSpan(first)));
            works[i].Solve(warm);
        }
    }

    private void Set<T>(NetworkWork<T> work, T reference, T commanded)
        where T : struct, IScalar<T>
    {
        T pressure = other ? reference + 5e3 : reference;
        T flow = other ? 1.1 * commanded : commanded;
        work.SetPressure(manifold, pressure);
        work.Set(regulator, [pressure]);
        foreach (int injector in injectors)
        {
            work.Set(injector, [T.Of(1.8e-8), flow]);
        }
    }
}

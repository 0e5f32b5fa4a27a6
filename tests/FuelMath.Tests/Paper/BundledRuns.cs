using FuelMath.Samples.Assessment;
using FuelMath.Tests.House;

namespace FuelMath.Tests.Paper;

/// <summary>What the sample makes of the three bundled systems, each once.</summary>
internal static class BundledRuns
{
    private static readonly Dictionary<string, Lazy<Assessed>> Read = new[]
    {
        "time-trial-car",
        "training-stand",
        "circuit-car",
    }.ToDictionary(
        name => name,
        name => new Lazy<Assessed>(() => Assessed.Read(PathOf($"{name}.json"), null, null, new DateOnly(2026, 11, 20)))
    );

    internal static TheoryData<string> Names => [.. Read.Keys];

    internal static Assessed Of(string name) => Read[name].Value;

    internal static string PathOf(string file) =>
        Path.Combine(Repository.Root, "docs", "samples", "Assessment", "data", file);
}

using FuelMath.Tests.House;
using Json.Schema;

namespace FuelMath.Tests.Documents;

/// <summary>The bundled documents and the published schemas.</summary>
internal static class TestFiles
{
    private const string Data = "docs/samples/Assessment/data";

    internal static string Read(string path) => File.ReadAllText(Path.Combine(Repository.Root, path));

    internal static string System(string name) => Read($"{Data}/{name}.json");

    internal static string Points(string name) => Read($"{Data}/{name}-points.json");

    internal static string Schema(string name) => Read($"docs/schemas/{name}.schema.json");

    internal static void WriteSchema(string name, string schema) =>
        File.WriteAllText(Path.Combine(Repository.Root, $"docs/schemas/{name}.schema.json"), schema);

    /// <summary>Each schema once: its address may be registered once.</summary>
    internal static JsonSchema SystemSchema { get; } = JsonSchema.FromText(Schema("fuel-system"));

    internal static JsonSchema PointsSchema { get; } = JsonSchema.FromText(Schema("operating-list"));

    internal static JsonSchema BenchSchema { get; } = JsonSchema.FromText(Schema("bench-record"));

    internal static JsonSchema NetworkSchema { get; } = JsonSchema.FromText(Schema("network"));

    internal static JsonSchema BriefSchema { get; } = JsonSchema.FromText(Schema("system-brief"));

    internal static JsonSchema LinePlanSchema { get; } = JsonSchema.FromText(Schema("line-plan"));
}

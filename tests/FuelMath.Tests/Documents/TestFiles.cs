using FuelMath.Tests.House;

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
}

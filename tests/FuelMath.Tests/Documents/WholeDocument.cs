using System.Text.Json.Nodes;
using FuelMath.Tests.House;
using Json.Schema;

namespace FuelMath.Tests.Documents;

/// <summary>The documents under docs/data, which hold every property together: what reads each, and its schema.</summary>
internal sealed class WholeDocument
{
    private const string Folder = "docs/data";

    private readonly Func<string, string> readAndWrite;

    private WholeDocument(string name, string schema, Func<string, string> readAndWrite) =>
        (Name, SchemaName, this.readAndWrite) = (name, schema, readAndWrite);

    internal static WholeDocument[] All { get; } =
    [
        new("fuel-system", "fuel-system", Systems),
        new("fuel-system-two-stroke", "fuel-system", Systems),
        new("fuel-system-rotary", "fuel-system", Systems),
        new("operating-list", "operating-list", t => OperatingListDocument.Write(OperatingListDocument.Read(t))),
        new("bench-record", "bench-record", t => BenchDocument.Write(BenchDocument.Read(t))),
        new("line-plan", "line-plan", t => LinePlanDocument.Write(LinePlanDocument.Read(t))),
        new("network", "network", Networks),
        new("network-second", "network", Networks),
        new("system-brief", "system-brief", t => BriefDocument.Write(BriefDocument.Read(t))),
    ];

    /// <summary>The name of its file, without the ending.</summary>
    internal string Name { get; }

    internal string SchemaName { get; }

    internal string Path => $"{Folder}/{Name}.json";

    internal string Text => TestFiles.Read(Path);

    internal JsonSchema Schema => SchemaOf(SchemaName);

    internal static string[] Files =>
        [
            .. Directory
                .GetFiles(System.IO.Path.Combine(Repository.Root, Folder), "*.json")
                .Select(f => System.IO.Path.GetFileNameWithoutExtension(f))
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>The canonical text of what was read.</summary>
    internal string Written(string text) => readAndWrite(text);

    /// <summary>The refusal of a text; null where it is read.</summary>
    internal DocumentException? Refusal(JsonNode document)
    {
        try
        {
            _ = readAndWrite(document.ToJsonString());
            return null;
        }
        catch (DocumentException refusal)
        {
            return refusal;
        }
    }

    private static JsonSchema SchemaOf(string name) =>
        name switch
        {
            "fuel-system" => TestFiles.SystemSchema,
            "operating-list" => TestFiles.PointsSchema,
            "bench-record" => TestFiles.BenchSchema,
            "line-plan" => TestFiles.LinePlanSchema,
            "network" => TestFiles.NetworkSchema,
            _ => TestFiles.BriefSchema,
        };

    private static string Systems(string text) => SystemDocument.Write(SystemDocument.Read(text));

    private static string Networks(string text) => NetworkDocument.Write(NetworkDocument.Read(text));
}

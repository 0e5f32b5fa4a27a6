using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A list of operating points as a JSON document, as strict as <see cref="SystemDocument"/>.</summary>
/// <seealso href="../guide/documents.html">Documents</seealso>
public static class OperatingListDocument
{
    private const string Address = "https://fuelmath.example/schemas/operating-list.schema.json";

    /// <summary>The JSON Schema of the documents, draft 2020-12.</summary>
    public static string Schema =>
        SchemaDefinitions.Document(OperatingPointShape.Shape, Address, "FuelMath operating list");

    /// <summary>Reads a list.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The operating points in their order.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="DocumentException">The document is not an operating list; the message says where and why.</exception>
    public static ImmutableArray<OperatingPoint> Read(string json) => Read(DocumentBytes.Of(json));

    /// <summary>Reads a list from UTF-8 bytes.</summary>
    /// <param name="utf8">The document.</param>
    /// <returns>The operating points in their order.</returns>
    /// <exception cref="DocumentException">The document is not an operating list; the message says where and why.</exception>
    public static ImmutableArray<OperatingPoint> Read(ReadOnlyMemory<byte> utf8) =>
        OperatingPointShape.Shape.Read(JsonTree.Read(utf8)).Points;

    /// <summary>Reads a list from a file.</summary>
    /// <param name="path">Where the file is.</param>
    /// <returns>The operating points in their order.</returns>
    /// <exception cref="DocumentException">The file is not an operating list; the message says where and why.</exception>
    /// <exception cref="IOException">The file can't be read.</exception>
    public static ImmutableArray<OperatingPoint> ReadFile(string path) => Read(DocumentBytes.OfFile(path));

    /// <summary>Writes a list in its canonical form.</summary>
    /// <param name="points">The operating points; names differ.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="points"/> is null.</exception>
    /// <exception cref="ArgumentException">Two points share a name, or a name is longer than 200 characters.</exception>
    public static string Write(IEnumerable<OperatingPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        return OperatingPointShape.Shape.Write(new OperatingList(points)).Render();
    }
}

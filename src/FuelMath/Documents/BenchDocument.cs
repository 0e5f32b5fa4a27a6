using FuelMath.Bench;

namespace FuelMath;

/// <summary>
/// Raw readings of injectors as a JSON document, as strict as <see cref="SystemDocument"/>. A quantity is written in
/// the unit in which the instrument showed it.
/// </summary>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/DocumentExamples.cs" region="BenchDocument" />
/// </example>
/// <seealso href="../guide/documents.html">Documents</seealso>
public static class BenchDocument
{
    private const string Address = "https://fuelmath.example/schemas/bench-record.schema.json";

    /// <summary>The JSON Schema of the documents, draft 2020-12.</summary>
    public static string Schema => SchemaDefinitions.Document(BenchRecordShape.Shape, Address, "FuelMath bench record");

    /// <summary>Reads a record.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The record.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="DocumentException">The document is not a bench record; the message says where and why.</exception>
    public static BenchRecord Read(string json) => Read(DocumentBytes.Of(json));

    /// <summary>Reads a record from UTF-8 bytes.</summary>
    /// <param name="utf8">The document.</param>
    /// <returns>The record.</returns>
    /// <exception cref="DocumentException">The document is not a bench record; the message says where and why.</exception>
    public static BenchRecord Read(ReadOnlyMemory<byte> utf8)
    {
        JsonItem root = JsonTree.Read(utf8);
        BenchRecord record = BenchRecordShape.Shape.Read(root);
        FuelShape.List.RefuseUnused(root);
        return record;
    }

    /// <summary>Reads a record from a file.</summary>
    /// <param name="path">The path of the file.</param>
    /// <returns>The record.</returns>
    /// <exception cref="DocumentException">The file is not a bench record; the message says where and why.</exception>
    /// <exception cref="IOException">The file can't be read.</exception>
    public static BenchRecord ReadFile(string path) => Read(DocumentBytes.OfFile(path));

    /// <summary>Writes a record.</summary>
    /// <param name="record">The record.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="record"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// Two different fluids share a name, or a document can't represent one.
    /// </exception>
    public static string Write(BenchRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return BenchRecordShape.Shape.Write(record).Render();
    }
}

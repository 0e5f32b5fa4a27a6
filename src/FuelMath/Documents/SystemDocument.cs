namespace FuelMath;

/// <summary>A fuel system as a JSON document, with units in the text.</summary>
/// <remarks>
/// <para>
/// Reading is strict: unknown, repeated and missing properties are errors, and each error names the place, what is
/// allowed and what was found. Documents are limited in size, depth and number of values, so that hostile input costs
/// little. Writing gives canonical text: reading and writing it again gives the same text. Two systems are equal when
/// their canonical texts are equal.
/// </para>
/// <para>A document of 1 MiB holds a system a hundred times larger than a real one.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/DocumentExamples.cs" region="SystemDocument" />
/// </example>
/// <seealso href="../guide/documents.html">Documents</seealso>
public static class SystemDocument
{
    /// <summary>The address that names the schema of the documents.</summary>
    private const string Address = "https://fuelmath.example/schemas/fuel-system.schema.json";

    /// <summary>The JSON Schema of the documents, draft 2020-12.</summary>
    public static string Schema => SchemaDefinitions.Document(SystemShape.Shape, Address, "FuelMath fuel system");

    /// <summary>Reads a system.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The system.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="DocumentException">The document is not a fuel system; the message says where and why.</exception>
    public static FuelSystem Read(string json) => Read(DocumentBytes.Of(json));

    /// <summary>Reads a system from UTF-8 bytes.</summary>
    /// <param name="utf8">The document.</param>
    /// <returns>The system.</returns>
    /// <exception cref="DocumentException">The document is not a fuel system; the message says where and why.</exception>
    public static FuelSystem Read(ReadOnlyMemory<byte> utf8)
    {
        JsonItem root = JsonTree.Read(utf8);
        FuelSystem system = SystemShape.Shape.Read(root);
        FuelShape.List.RefuseUnused(root);
        InjectorShape.List.RefuseUnused(root);
        return system;
    }

    /// <summary>Reads a system from a file.</summary>
    /// <param name="path">Where the file is.</param>
    /// <returns>The system.</returns>
    /// <exception cref="DocumentException">The file is not a fuel system; the message says where and why.</exception>
    /// <exception cref="IOException">The file can't be read.</exception>
    public static FuelSystem ReadFile(string path) => Read(DocumentBytes.OfFile(path));

    /// <summary>Writes a system in its canonical form.</summary>
    /// <param name="system">The system.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="system"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// Two different fuels or injectors share a name, or a fuel has properties that documents can't represent.
    /// </exception>
    public static string Write(FuelSystem system)
    {
        ArgumentNullException.ThrowIfNull(system);
        return SystemShape.Shape.Write(system).Render();
    }
}

namespace FuelMath;

/// <summary>A system brief as a JSON document, as strict as <see cref="SystemDocument"/>.</summary>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/AssessmentExamples.cs" region="Brief" />
/// </example>
/// <seealso href="../guide/documents.html">Documents</seealso>
public static class BriefDocument
{
    private const string Address = "https://fuelmath.example/schemas/system-brief.schema.json";

    /// <summary>The JSON Schema of the documents, draft 2020-12.</summary>
    public static string Schema => SchemaDefinitions.Document(BriefShape.Shape, Address, "FuelMath system brief");

    /// <summary>Reads a brief.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The brief.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="DocumentException">The document is not a brief; the message says where and why.</exception>
    public static SystemBrief Read(string json) => Read(DocumentBytes.Of(json));

    /// <summary>Reads a brief from UTF-8 bytes.</summary>
    /// <param name="utf8">The document.</param>
    /// <returns>The brief.</returns>
    /// <exception cref="DocumentException">The document is not a brief; the message says where and why.</exception>
    public static SystemBrief Read(ReadOnlyMemory<byte> utf8)
    {
        JsonItem root = JsonTree.Read(utf8);
        SystemBrief brief = BriefShape.Shape.Read(root);
        FuelShape.List.RefuseUnused(root);
        return brief;
    }

    /// <summary>Reads a brief from a file.</summary>
    /// <param name="path">The path of the file.</param>
    /// <returns>The brief.</returns>
    /// <exception cref="DocumentException">The file is not a brief; the message says where and why.</exception>
    /// <exception cref="IOException">The file can't be read.</exception>
    public static SystemBrief ReadFile(string path) => Read(DocumentBytes.OfFile(path));

    /// <summary>Writes a brief in its canonical form.</summary>
    /// <param name="brief">The brief.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="brief"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// Two different fuels share a name, or a fuel has properties that documents can't represent.
    /// </exception>
    public static string Write(SystemBrief brief)
    {
        ArgumentNullException.ThrowIfNull(brief);
        return BriefShape.Shape.Write(brief).Render();
    }
}

namespace FuelMath;

/// <summary>
/// A network as a JSON document, with the same names for its parts as a system, as strict as
/// <see cref="SystemDocument"/>.
/// </summary>
/// <remarks>It needs no engine and no injectors and can represent any pipe network.</remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/DocumentExamples.cs" region="NetworkDocument" />
/// </example>
/// <seealso href="../guide/documents.html">Documents</seealso>
public static class NetworkDocument
{
    private const string Address = "https://fuelmath.example/schemas/network.schema.json";

    /// <summary>The JSON Schema of the documents, draft 2020-12.</summary>
    public static string Schema => SchemaDefinitions.Document(NetworkShape.Shape, Address, "FuelMath network");

    /// <summary>Reads a network.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The network.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="DocumentException">The document is not a network; the message says where and why.</exception>
    public static Network Read(string json) => Read(DocumentBytes.Of(json));

    /// <summary>Reads a network from UTF-8 bytes.</summary>
    /// <param name="utf8">The document.</param>
    /// <returns>The network.</returns>
    /// <exception cref="DocumentException">The document is not a network; the message says where and why.</exception>
    public static Network Read(ReadOnlyMemory<byte> utf8) => NetworkShape.Read(JsonTree.Read(utf8));

    /// <summary>Reads a network from a file.</summary>
    /// <param name="path">Where the file is.</param>
    /// <returns>The network.</returns>
    /// <exception cref="DocumentException">The file is not a network; the message says where and why.</exception>
    /// <exception cref="IOException">The file can't be read.</exception>
    public static Network ReadFile(string path) => Read(DocumentBytes.OfFile(path));

    /// <summary>Writes a network in its canonical form.</summary>
    /// <param name="network">The network.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="network"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// A line has a part that the caller defined, or a name is longer than 200 characters; the message names it.
    /// </exception>
    public static string Write(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        return NetworkShape.Shape.Write(network).Render();
    }
}

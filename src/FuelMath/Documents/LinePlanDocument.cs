namespace FuelMath;

/// <summary>A line plan as a JSON document, as strict as <see cref="SystemDocument"/>.</summary>
/// <remarks>
/// A plan with mismatched joints is read and written like any other: check it with <see cref="LinePlan.Check"/>;
/// <see cref="LinePlan.Bill"/> lists the parts to buy.
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/DocumentExamples.cs" region="LinePlanDocument" />
/// </example>
/// <seealso href="../guide/documents.html">Documents</seealso>
public static class LinePlanDocument
{
    private const string Address = "https://fuelmath.example/schemas/line-plan.schema.json";

    /// <summary>The JSON Schema of the documents, draft 2020-12.</summary>
    public static string Schema => SchemaDefinitions.Document(LinePlanShape.Shape, Address, "FuelMath line plan");

    /// <summary>Reads a line plan.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The plan, checked joint by joint.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="DocumentException">The document is not a line plan; the message says where and why.</exception>
    public static LinePlan Read(string json) => Read(DocumentBytes.Of(json));

    /// <summary>Reads a line plan from UTF-8 bytes.</summary>
    /// <param name="utf8">The document.</param>
    /// <returns>The plan, checked joint by joint.</returns>
    /// <exception cref="DocumentException">The document is not a line plan; the message says where and why.</exception>
    public static LinePlan Read(ReadOnlyMemory<byte> utf8) => LinePlanShape.Shape.Read(JsonTree.Read(utf8));

    /// <summary>Reads a line plan from a file.</summary>
    /// <param name="path">Where the file is.</param>
    /// <returns>The plan, checked joint by joint.</returns>
    /// <exception cref="DocumentException">The file is not a line plan; the message says where and why.</exception>
    /// <exception cref="IOException">The file can't be read.</exception>
    public static LinePlan ReadFile(string path) => Read(DocumentBytes.OfFile(path));

    /// <summary>Writes a line plan in its canonical form.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    /// <exception cref="ArgumentException">A name is longer than the 200 characters that a document takes.</exception>
    public static string Write(LinePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return LinePlanShape.Shape.Write(plan).Render();
    }
}

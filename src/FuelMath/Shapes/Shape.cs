namespace FuelMath;

/// <summary>
/// The representation of a value in a document, from which reading, writing and the published schema follow.
/// </summary>
internal abstract class Shape<T>
{
    /// <summary>The expected value as a noun: <c>a length, for example "1 mm"</c>.</summary>
    internal abstract string Wanted { get; }

    internal abstract T Read(JsonItem item);

    internal abstract JsonText Write(T value);

    internal abstract JsonText Schema(SchemaDefinitions definitions);

    /// <summary>
    /// The refusal of a value whose sign is not allowed, which the schema refuses, too; null where it is. A part's own refusal,
    /// which may know a narrower range, comes first.
    /// </summary>
    internal virtual DocumentException? RefuseSign(JsonItem item) => null;

    /// <summary>A list of such values.</summary>
    internal ListShape<T> List(int least, int most) => new(this, least, most);

    private protected JsonItem Expect(JsonItem item, JsonItemKind kind) =>
        item.Kind == kind ? item : throw item.RefuseKind(Wanted);
}

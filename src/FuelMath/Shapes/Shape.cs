namespace FuelMath;

/// <summary>
/// How a value stands in a document. Reading, writing and the published schema all follow from the one description.
/// </summary>
internal abstract class Shape<T>
{
    /// <summary>What must stand there, as a noun: <c>a length, for example "1 mm"</c>.</summary>
    internal abstract string Wanted { get; }

    internal abstract T Read(JsonItem item);

    internal abstract JsonText Write(T value);

    internal abstract JsonText Schema(SchemaDefinitions definitions);

    /// <summary>A list of such values.</summary>
    internal ListShape<T> List(int least, int most) => new(this, least, most);

    private protected JsonItem Expect(JsonItem item, JsonItemKind kind) =>
        item.Kind == kind ? item : throw item.Refuse($"Must be {Wanted}.");
}

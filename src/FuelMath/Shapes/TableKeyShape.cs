namespace FuelMath;

/// <summary>The key of a table: the schema lists the keys, and the part refuses another one in words of its own.</summary>
internal sealed class TableKeyShape<T> : Shape<T>
{
    private readonly Shape<T> shape;
    private readonly IEnumerable<T> keys;

    internal TableKeyShape(Shape<T> shape, IEnumerable<T> keys) => (this.shape, this.keys) = (shape, keys);

    internal override string Wanted => shape.Wanted;

    internal override T Read(JsonItem item) => shape.Read(item);

    internal override JsonText Write(T value) => shape.Write(value);

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object(("enum", JsonText.List(keys.Select(shape.Write))));
}

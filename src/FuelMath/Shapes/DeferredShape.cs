namespace FuelMath;

/// <summary>A shape that is looked up on use, so that an object can contain others of its own kind.</summary>
internal sealed class DeferredShape<T> : Shape<T>
{
    private readonly Func<Shape<T>> shape;

    internal DeferredShape(string wanted, Func<Shape<T>> shape)
    {
        Wanted = wanted;
        this.shape = shape;
    }

    internal override string Wanted { get; }

    internal override T Read(JsonItem item) => shape().Read(item);

    internal override JsonText Write(T value) => shape().Write(value);

    internal override JsonText Schema(SchemaDefinitions definitions) => shape().Schema(definitions);
}

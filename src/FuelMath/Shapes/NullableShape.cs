namespace FuelMath;

/// <summary>A value that may be left out of an object, so that null stands for none.</summary>
internal sealed class NullableShape<T> : Shape<T?>
    where T : struct
{
    private readonly Shape<T> shape;

    internal NullableShape(Shape<T> shape) => this.shape = shape;

    internal override string Wanted => shape.Wanted;

    internal override T? Read(JsonItem item) => shape.Read(item);

    internal override DocumentException? RefuseSign(JsonItem item) => shape.RefuseSign(item);

    internal override JsonText Write(T? value) => shape.Write(value!.Value);

    internal override JsonText Schema(SchemaDefinitions definitions) => shape.Schema(definitions);
}

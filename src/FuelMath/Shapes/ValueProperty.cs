namespace FuelMath;

/// <summary>A property with a value of a shape. One that may be left out has a default.</summary>
internal sealed class ValueProperty<TOwner, TValue> : Property<TOwner>
{
    private readonly Shape<TValue> shape;
    private readonly Func<TOwner, TValue> get;
    private readonly Func<TValue, bool> isLeftOut;
    private readonly TValue whenAbsent;

    internal ValueProperty(string name, string description, Shape<TValue> shape, Func<TOwner, TValue> get)
        : base(name, description, true)
    {
        (this.shape, this.get) = (shape, get);
        isLeftOut = _ => false;
        whenAbsent = default!;
    }

    internal ValueProperty(
        string name,
        string description,
        Shape<TValue> shape,
        Func<TOwner, TValue> get,
        Func<TValue, bool> isLeftOut,
        TValue whenAbsent
    )
        : base(name, description, false) =>
        (this.shape, this.get, this.isLeftOut, this.whenAbsent) = (shape, get, isLeftOut, whenAbsent);

    internal override string Wanted => shape.Wanted;

    internal override bool IsIn(TOwner owner) => IsRequired || !isLeftOut(get(owner));

    internal TValue Read(JsonItem owner) => owner.Member(Name) is { } item ? shape.Read(item) : whenAbsent;

    internal override DocumentException? RefuseSign(JsonItem item) => shape.RefuseSign(item);

    internal override JsonText Write(TOwner owner) => shape.Write(get(owner));

    internal override JsonText Schema(SchemaDefinitions definitions) => shape.Schema(definitions);
}

namespace FuelMath;

/// <summary>The properties of one object while it is read.</summary>
internal readonly struct Fields<TOwner>
{
    private readonly JsonItem item;

    internal Fields(JsonItem item) => this.item = item;

    /// <summary>Whether the object has it.</summary>
    internal bool Has(Property<TOwner> property) => item.Member(property.Name) is not null;

    /// <summary>Reads one of them.</summary>
    internal TValue Of<TValue>(ValueProperty<TOwner, TValue> property) => property.Read(item);
}

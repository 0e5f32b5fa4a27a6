namespace FuelMath;

/// <summary>A property of an object that represents a <typeparamref name="TOwner"/>.</summary>
internal abstract class Property<TOwner>
{
    private protected Property(string name, string description, bool isRequired)
    {
        Name = name;
        Parameter = name;
        Description = description;
        IsRequired = isRequired;
    }

    internal string Name { get; }

    /// <summary>
    /// The constructor's parameter that it is passed to, so that a refusal can be assigned to this property.
    /// </summary>
    internal string Parameter { get; init; }

    internal string Description { get; }

    internal bool IsRequired { get; }

    internal abstract string Wanted { get; }

    /// <summary>Whether the owner has a value for it, so that it is written.</summary>
    internal abstract bool IsIn(TOwner owner);

    internal abstract JsonText Write(TOwner owner);

    /// <summary>Checks a value that is not kept.</summary>
    internal virtual void Check(JsonItem item) { }

    /// <summary>The refusal of a value whose sign is not allowed; null where it is.</summary>
    internal virtual DocumentException? RefuseSign(JsonItem item) => null;

    internal abstract JsonText Schema(SchemaDefinitions definitions);
}

namespace FuelMath;

/// <summary>A property of an object that stands for a <typeparamref name="TOwner"/>.</summary>
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

    /// <summary>The constructor's parameter that it goes to, so that a refusal points at it.</summary>
    internal string Parameter { get; init; }

    internal string Description { get; }

    internal bool IsRequired { get; }

    internal abstract string Wanted { get; }

    /// <summary>Whether the owner has a value for it, so that it is written.</summary>
    internal abstract bool IsIn(TOwner owner);

    internal abstract JsonText Write(TOwner owner);

    /// <summary>Refuses a value that only has to be checked, not kept.</summary>
    internal virtual void Check(JsonItem item) { }

    internal abstract JsonText Schema(SchemaDefinitions definitions);
}

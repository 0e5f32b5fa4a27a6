namespace FuelMath;

/// <summary>A piece with two ends that joins two ends which do not fit each other.</summary>
/// <remarks>It may be used in either direction.</remarks>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public sealed class Adapter
{
    /// <summary>Describes an adapter by its ends.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="first">One end.</param>
    /// <param name="second">The other end.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentNullException">An end is null.</exception>
    public Adapter(string name, FittingEnd first, FittingEnd second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        Name = Guard.Name(name);
        (First, Second) = (first, second);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>One end.</summary>
    public FittingEnd First { get; }

    /// <summary>The other end.</summary>
    public FittingEnd Second { get; }

    /// <summary>Formats its name and ends.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}: {First} to {Second}";
}

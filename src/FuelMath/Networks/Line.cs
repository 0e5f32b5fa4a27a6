namespace FuelMath;

/// <summary>A part between two nodes; flow counts positive from the first to the second.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class Line
{
    /// <summary>Puts a part between two nodes.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="from">The node that it starts from.</param>
    /// <param name="to">The node that it leads to.</param>
    /// <param name="part">What fuel passes in it.</param>
    /// <exception cref="ArgumentException">A name is blank, both nodes are one, or the part is a fitting that loses nothing.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    public Line(string name, string from, string to, FlowPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        Name = Guard.Name(name, nameof(name));
        From = Guard.Name(from, nameof(from));
        To = Guard.Name(to, nameof(to));
        Part = part.WhyNoLine is { } why ? throw new ArgumentException(why, nameof(part)) : part;
        if (string.Equals(from, to, StringComparison.Ordinal))
        {
            throw new ArgumentException($"Line '{name}' must join two nodes; both ends are '{from}'.", nameof(to));
        }
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The node that it starts from.</summary>
    public string From { get; }

    /// <summary>The node that it leads to.</summary>
    public string To { get; }

    /// <summary>What fuel passes in it.</summary>
    public FlowPart Part { get; }

    /// <summary>Gives its name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}

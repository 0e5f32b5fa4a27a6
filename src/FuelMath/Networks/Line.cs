namespace FuelMath;

/// <summary>A part between two nodes; flow counts positive from the first to the second.</summary>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed class Line
{
    /// <summary>Puts a part between two nodes.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="from">The node that it starts from.</param>
    /// <param name="to">The node that it leads to.</param>
    /// <param name="part">The part in it.</param>
    /// <exception cref="ArgumentException">
    /// A name is blank, both nodes are the same, or the part is a fitting without loss.
    /// </exception>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    public Line(string name, string from, string to, FlowPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        Name = Guard.Name(name);
        From = Guard.Name(from, part: name);
        To = Guard.Name(to, part: name);
        Part = part.WhyNoLine is { } why
            ? throw new RefusedArgumentException(RefusalCode.NoLoss, why, nameof(part))
            : part;
        if (string.Equals(from, to, StringComparison.Ordinal))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotDifferent,
                $"Line '{name:part}' must join two nodes; both ends are '{from:node}'.",
                nameof(to)
            );
        }
    }

    private Line(Line other, FlowPart part, PumpSwitch? by) =>
        (Name, From, To, Part, Switch, Origin) = (other.Name, other.From, other.To, part, by, other.Origin);

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The node that it starts from.</summary>
    public string From { get; }

    /// <summary>The node that it leads to.</summary>
    public string To { get; }

    /// <summary>The part in it.</summary>
    public FlowPart Part { get; }

    /// <summary>The law of its part, created once.</summary>
    internal LawSettings Law => field ??= Part.Law;

    /// <summary>What it was made from; null where that says nothing of its own.</summary>
    internal ILineOrigin? Origin { get; private init; }

    /// <summary>The switch of its pump; null where it always runs.</summary>
    public PumpSwitch? Switch { get; }

    /// <summary>The same line with a switched pump; while it is stopped, its check valve closes the line.</summary>
    /// <param name="pumpSwitch">The switch.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pumpSwitch"/> is null.</exception>
    /// <exception cref="ArgumentException">The line holds no pump.</exception>
    public Line SwitchedBy(PumpSwitch pumpSwitch)
    {
        ArgumentNullException.ThrowIfNull(pumpSwitch);
        return Law.IsPump
            ? new(this, Part, pumpSwitch)
            : throw new RefusedArgumentException(
                RefusalCode.PumpNeeded,
                $"Only a pump joins and leaves; line '{Name:part}' holds none.",
                nameof(pumpSwitch)
            );
    }

    /// <summary>The same line, and what it was made from.</summary>
    internal Line MadeFrom(ILineOrigin origin) => new(this, Part, Switch) { Origin = origin };

    /// <summary>The same line with another part and the same switch.</summary>
    internal Line With(FlowPart part) => new(this, part, Switch);

    /// <summary>The same part and switch with another end node.</summary>
    internal Line Ending(string to)
    {
        var line = new Line(Name, From, to, Part);
        return Switch is null ? line : line.SwitchedBy(Switch);
    }

    /// <summary>The same line with another part and without a switch.</summary>
    internal Line Unswitched(FlowPart part) => new(this, part, null);

    /// <summary>Gives its name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}

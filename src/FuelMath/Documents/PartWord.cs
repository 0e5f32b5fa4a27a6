namespace FuelMath;

/// <summary>A word of a line with the shape of the part that it stands for.</summary>
internal sealed class PartWord
{
    private readonly Func<Fields<Line>, FlowPart> read;

    private PartWord(Property<Line> property, Func<Fields<Line>, FlowPart> read) =>
        (Property, this.read) = (property, read);

    /// <summary>The property of a line that holds the part.</summary>
    internal Property<Line> Property { get; }

    /// <summary>A word for parts of one type.</summary>
    internal static PartWord Of<T>(string word, Shape<T> shape)
        where T : FlowPart => Of(word, shape, part => part as T);

    /// <summary>A word for parts that hold one of a type.</summary>
    /// <param name="word">The word.</param>
    /// <param name="shape">Its shape.</param>
    /// <param name="get">What is written of a part; null where it is none of these.</param>
    internal static PartWord Of<T>(string word, Shape<T> shape, Func<FlowPart, T?> get)
        where T : FlowPart
    {
        ValueProperty<Line, T> property = new(
            word,
            $"The {word}, where the part is one.",
            shape,
            l => get(l.Part)!,
            l => get(l.Part) is not null,
            null!
        )
        {
            Parameter = "part",
        };
        return new(property, f => f.Of(property));
    }

    /// <summary>The part that a line has under this word.</summary>
    internal FlowPart Read(Fields<Line> line) => read(line);
}

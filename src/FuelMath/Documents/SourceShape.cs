namespace FuelMath;

/// <summary>Where numbers come from: a key of the list of sources, and a place in the work.</summary>
internal static class SourceShape
{
    private static readonly ValueProperty<DataSource, string> Key = new ValueProperty<DataSource, string>(
        "key",
        "Key of the work in the list of sources.",
        TextShape.Name,
        s => s.Key
    );

    private static readonly ValueProperty<DataSource, string> Locator = new ValueProperty<DataSource, string>(
        "locator",
        "Table, figure, page or row in the work.",
        TextShape.Note,
        s => s.Locator
    );

    internal static ObjectShape<DataSource> Shape { get; } =
        new ObjectShape<DataSource>(
            "source",
            "Where numbers come from.",
            [Key, Locator],
            f => new(f.Of(Key), f.Of(Locator))
        );

    /// <summary>The property "source" of a part.</summary>
    internal static ValueProperty<T, DataSource> Of<T>(Func<T, DataSource> get) =>
        new ValueProperty<T, DataSource>("source", "Where the numbers come from.", Shape, get);
}

namespace FuelMath;

/// <summary>The source of numbers: a key of the list of sources, and a place in the work.</summary>
internal static class SourceShape
{
    private static readonly ObjectShape<DataSource> Shape = new(o =>
    {
        o.Is("source", "Where numbers come from.");
        var key = o.Required("key", TextShape.Name, s => s.Key).Says("Key of the work in the list of sources.");
        var locator = o.Required("locator", TextShape.Note, s => s.Locator)
            .Says("Table, figure, page or row in the work.");
        return f => new(f.Of(key), f.Of(locator));
    });

    /// <summary>The property "source" of a part.</summary>
    internal static ValueProperty<T, DataSource> Source<T>(this ObjectBuilder<T> o, Func<T, DataSource> get) =>
        o.Required("source", Shape, get).Says("Where the numbers come from.");
}

namespace FuelMath;

/// <summary>One kind of a union: how it reads and writes, whatever type stands behind it.</summary>
internal sealed class UnionCase<T>
    where T : class
{
    private UnionCase(
        string word,
        Func<T, bool> holds,
        Func<JsonItem, T> read,
        Func<T, JsonText> write,
        Func<SchemaDefinitions, JsonText> schema
    )
    {
        Word = word;
        Holds = holds;
        Read = read;
        Write = write;
        Schema = schema;
    }

    internal string Word { get; }

    internal Func<T, bool> Holds { get; }

    internal Func<JsonItem, T> Read { get; }

    internal Func<T, JsonText> Write { get; }

    internal Func<SchemaDefinitions, JsonText> Schema { get; }

    /// <summary>A case held by a type of its own.</summary>
    internal static UnionCase<T> Of<TCase>(ObjectShape<TCase> shape)
        where TCase : class, T => Of(shape, value => value is TCase, value => (TCase)value);

    /// <summary>A case that is told from the others by looking.</summary>
    internal static UnionCase<T> Of(ObjectShape<T> shape, Func<T, bool> holds) => Of(shape, holds, value => value);

    private static UnionCase<T> Of<TCase>(ObjectShape<TCase> shape, Func<T, bool> holds, Func<T, TCase> cast)
        where TCase : class, T =>
        new(
            shape.Properties.OfType<WordProperty<TCase>>().First(p => p.Name == "kind").Word,
            holds,
            shape.Read,
            value => shape.Write(cast(value)),
            shape.Schema
        );
}

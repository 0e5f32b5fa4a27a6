namespace FuelMath.Formulas;

/// <summary>A scalar that holds several numbers, with what a batch needs to load and store them.</summary>
/// <typeparam name="T">The scalar type.</typeparam>
internal interface ILane<T> : IScalar<T>
    where T : struct, ILane<T>
{
    /// <summary>Number of elements.</summary>
    static abstract int Count { get; }

    /// <summary>Takes the first numbers of a span that holds enough.</summary>
    static abstract T Load(ReadOnlySpan<double> from);

    /// <summary>Writes the numbers to the start of a span that has room.</summary>
    static abstract void Store(T value, Span<double> to);

    /// <summary>Takes numbers from places of a span: as many places as it holds, or more.</summary>
    static abstract T Gather(ReadOnlySpan<double> from, ReadOnlySpan<int> places);

    /// <summary>The largest of the numbers.</summary>
    static abstract double Greatest(T value);

    /// <summary>Where a is b or less; nowhere for what is not a number.</summary>
    static abstract Mask<T> LessOrEqual(T a, T b);

    /// <summary>How many of some numbers are what a row holds or less.</summary>
    static abstract T CountAtMost(ReadOnlySpan<double> numbers, T most);

    /// <summary>Reads a table of records of four numbers, for each row a record of its own.</summary>
    /// <remarks>
    /// The records stand one after the other; <c>at</c> counts them from zero, and whatever it is, nothing beyond the table
    /// is read. Out come the first numbers of the records, the second ones, and so on.
    /// </remarks>
    static abstract void Pick(ReadOnlySpan<double> records, T at, out T first, out T second, out T third, out T fourth);

    /// <summary>a b + c, rounded once, on every machine.</summary>
    static abstract T MultiplyAdd(T a, T b, T c);
}

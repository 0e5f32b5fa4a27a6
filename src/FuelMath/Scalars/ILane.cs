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

    /// <summary>a b + c, rounded once, on every machine.</summary>
    static abstract T MultiplyAdd(T a, T b, T c);
}

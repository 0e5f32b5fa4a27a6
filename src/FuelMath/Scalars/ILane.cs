namespace FuelMath.Formulas;

/// <summary>A reading that holds several numbers: what a batch needs to fill it and to empty it.</summary>
/// <typeparam name="T">The scalar type.</typeparam>
internal interface ILane<T> : IScalar<T>
    where T : struct, ILane<T>
{
    /// <summary>How many numbers it holds.</summary>
    static abstract int Count { get; }

    /// <summary>Takes the first numbers of a span that holds enough.</summary>
    static abstract T Load(ReadOnlySpan<double> from);

    /// <summary>Writes the numbers to the start of a span that has room.</summary>
    static abstract void Store(T value, Span<double> to);

    /// <summary>a b + c, rounded once, on every machine.</summary>
    static abstract T MultiplyAdd(T a, T b, T c);
}

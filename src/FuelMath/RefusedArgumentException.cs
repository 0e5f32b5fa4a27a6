namespace FuelMath;

/// <summary>
/// Thrown when an argument that is not a single number is not what is allowed, or does not fit another: a name, a list, a table,
/// parts that do not go together.
/// </summary>
/// <remarks>
/// A number outside what is allowed is a <see cref="RefusedValueException"/>. Both say as data what they refuse, as every
/// exception of this library does: <see cref="FuelMath.Refusal.Of"/>.
/// </remarks>
/// <seealso href="../start/exceptions.html">Exceptions</seealso>
public sealed class RefusedArgumentException : ArgumentException, IExplained
{
    internal RefusedArgumentException(
        RefusalCode code,
        RefusalText sentence,
        string? paramName = null,
        string? part = null,
        Exception? inner = null
    )
        : base(RefusalWords.Of(sentence, part), paramName, inner) =>
        Refusal = sentence.ToRefusal(
            RefusalKind.Argument,
            code,
            paramName ?? "arguments",
            RefusalWords.Of(sentence, part),
            part,
            inner
        );

    /// <summary>What is refused, as data.</summary>
    public Refusal Refusal { get; }
}

namespace FuelMath;

/// <summary>Thrown when an object is in no state to give what was asked of it: an empty tank its fuel, a stalled pump its flow.</summary>
/// <seealso href="../start/exceptions.html">Exceptions</seealso>
public sealed class RefusedOperationException : InvalidOperationException, IExplained
{
    /// <summary>Creates one, for code that builds on this library.</summary>
    /// <param name="code">What is wrong.</param>
    /// <param name="sentence">What keeps the object from answering, in a sentence; not blank.</param>
    /// <exception cref="ArgumentNullException"><paramref name="sentence"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="sentence"/> is blank.</exception>
    public RefusedOperationException(RefusalCode code, string sentence)
        : this(code, RefusalWords.Given(sentence), null, null) { }

    internal RefusedOperationException(
        RefusalCode code,
        RefusalText sentence,
        string? part = null,
        Exception? inner = null
    )
        : base(RefusalWords.Of(sentence, part), inner) =>
        Refusal = sentence.ToRefusal(
            RefusalKind.Operation,
            code,
            "operation",
            RefusalWords.Of(sentence, part),
            part,
            inner
        );

    /// <summary>What is refused, as data.</summary>
    public Refusal Refusal { get; }
}

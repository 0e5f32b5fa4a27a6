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
    /// <summary>Creates one, for code that builds on this library.</summary>
    /// <param name="code">What is wrong.</param>
    /// <param name="sentence">What is allowed, then what was given, in a sentence; not blank.</param>
    /// <param name="paramName">The parameter; not blank.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A text that must not be blank is blank.</exception>
    public RefusedArgumentException(RefusalCode code, string sentence, string paramName)
        : this(code, RefusalWords.Given(sentence), RefusalWords.Named(paramName), null, null) { }

    /// <summary>Creates one with what was given and what is allowed, for code that builds on this library.</summary>
    /// <param name="code">What is wrong.</param>
    /// <param name="sentence">What is allowed, then what was given, in a sentence; not blank.</param>
    /// <param name="paramName">The parameter; not blank.</param>
    /// <param name="given">What was given, as text.</param>
    /// <param name="allowed">What is allowed, as texts; empty where it is no list.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A text that must not be blank is blank.</exception>
    public RefusedArgumentException(
        RefusalCode code,
        string sentence,
        string paramName,
        string given,
        IEnumerable<string> allowed
    )
        : this(code, RefusalWords.Given(sentence, given, allowed), RefusalWords.Named(paramName), null, null) { }

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

namespace FuelMath;

/// <summary>Thrown when an argument is outside what is allowed: not finite, negative, outside a range.</summary>
/// <remarks>
/// <see cref="ArgumentException.ParamName"/> is the parameter, <see cref="ArgumentOutOfRangeException.ActualValue"/>
/// the value as the caller gave it, a quantity or a number. The message uses its unit, as <see cref="Refusal.Unit"/> says, and
/// invariant culture.
/// </remarks>
/// <seealso href="../start/exceptions.html">Exceptions</seealso>
public sealed class RefusedValueException : ArgumentOutOfRangeException, IExplained
{
    /// <summary>
    /// Creates one for a pure number or a count, for code that builds on this library. The limits themselves are allowed.
    /// </summary>
    /// <param name="code">What is wrong.</param>
    /// <param name="sentence">What is allowed, then what was given, in a sentence; not blank.</param>
    /// <param name="paramName">The parameter; not blank.</param>
    /// <param name="value">The number as it was given; it may be not finite, since that may be why it is refused.</param>
    /// <param name="minimum">The least that is allowed; null where there is no such limit.</param>
    /// <param name="maximum">The most that is allowed; null where there is no such limit.</param>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is blank.</exception>
    public RefusedValueException(
        RefusalCode code,
        string sentence,
        string paramName,
        double value,
        double? minimum,
        double? maximum
    )
        : this(code, RefusalWords.Given(sentence, value, minimum, maximum), value, RefusalWords.Named(paramName), null)
    { }

    internal RefusedValueException(
        RefusalCode code,
        RefusalText sentence,
        object actualValue,
        string paramName,
        string? part = null
    )
        : base(paramName, actualValue, sentence.ToString())
    {
        Sentence = sentence;
        Refusal = sentence.ToRefusal(RefusalKind.Value, code, paramName, RefusalWords.Of(sentence, part), part);
    }

    /// <summary>The refusal, as data.</summary>
    public Refusal Refusal { get; }

    /// <inheritdoc />
    public override string Message => $"{Refusal.Message} (Parameter '{ParamName}')";

    /// <summary>The sentence, without the part that refuses.</summary>
    internal RefusalText Sentence { get; }
}

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

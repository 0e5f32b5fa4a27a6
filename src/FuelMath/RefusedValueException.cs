namespace FuelMath;

/// <summary>Thrown when an argument is outside what is allowed: not finite, negative, outside a range.</summary>
/// <remarks>
/// <see cref="ArgumentException.ParamName"/> is the parameter, <see cref="ArgumentOutOfRangeException.ActualValue"/>
/// the value as the caller gave it, a quantity or a number. The message uses the caller's unit and invariant culture.
/// </remarks>
public sealed class RefusedValueException : ArgumentOutOfRangeException, IExplained
{
    private readonly string sentence;
    private readonly RefusedRange range;

    internal RefusedValueException(string paramName, object actualValue, RefusedRange range, string unit, string? part)
        : base(paramName, actualValue, range.Sentence)
    {
        this.range = range;
        sentence = part is null ? range.Sentence : $"{range.Sentence} Part: '{part}'.";
        Refusal = new(RefusalKind.Value, paramName, sentence)
        {
            Part = part,
            Value = range.Value,
            Minimum = range.Minimum,
            Maximum = range.Maximum,
            IsMinimumExcluded = range.IsMinimumExcluded,
            Unit = unit,
        };
    }

    /// <summary>The refusal, as data.</summary>
    public Refusal Refusal { get; }

    /// <inheritdoc />
    public override string Message => $"{sentence} (Parameter '{ParamName}')";

    /// <summary>Value and range.</summary>
    internal RefusedRange Range => range;
}

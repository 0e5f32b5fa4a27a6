namespace FuelMath;

/// <summary>A text is not a quantity of the required kind.</summary>
/// <remarks>The message says what is allowed and what was given, in invariant culture.</remarks>
/// <seealso href="../start/exceptions.html">Exceptions</seealso>
public sealed partial class QuantityTextException : FormatException, IExplained
{
    internal QuantityTextException(TextProblem problem, string kind, RefusalText sentence)
        : base(sentence.ToString())
    {
        Refusal = sentence
            .Then($"{problem:problem}")
            .ToRefusal(RefusalKind.Text, RefusalCode.NotAQuantity, kind, sentence.ToString());
        Problem = problem;
        Kind = kind;
    }

    /// <summary>The problem.</summary>
    public TextProblem Problem { get; }

    /// <summary>The required kind of quantity, for example <c>volume flow</c>.</summary>
    public string Kind { get; }

    Refusal IExplained.Refusal => Refusal;

    private Refusal Refusal { get; }
}

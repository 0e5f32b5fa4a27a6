namespace FuelMath;

/// <summary>A text is not a quantity of the wanted kind.</summary>
/// <remarks>The message says what is allowed and what came, in invariant culture.</remarks>
public sealed class QuantityTextException : FormatException, IExplained
{
    internal QuantityTextException(QuantityTextProblem problem, string kind, string message)
        : base(message)
    {
        Problem = problem;
        Kind = kind;
    }

    /// <summary>What is wrong.</summary>
    public QuantityTextProblem Problem { get; }

    /// <summary>The kind of quantity that was wanted, for example <c>volume flow</c>.</summary>
    public string Kind { get; }

    Refusal IExplained.Refusal => new(RefusalKind.Text, Kind, Message);
}

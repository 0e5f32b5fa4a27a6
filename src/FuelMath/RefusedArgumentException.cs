namespace FuelMath;

/// <summary>
/// Thrown when an argument that is not a single number is not what is allowed, or does not fit another: a name, a list, a table,
/// parts that do not go together.
/// </summary>
/// <remarks>
/// A number outside what is allowed is a <see cref="RefusedValueException"/>. Both say as data what they refuse, as every
/// exception of this library does: <see cref="FuelMath.Refusal.Of"/>.
/// </remarks>
public sealed class RefusedArgumentException : ArgumentException, IExplained
{
    internal RefusedArgumentException(string message)
        : this(message, null, null) { }

    internal RefusedArgumentException(string message, string? paramName)
        : this(message, paramName, null) { }

    internal RefusedArgumentException(string message, string? paramName, Exception? inner)
        : base(message, paramName, inner) => Refusal = new(RefusalKind.Argument, paramName ?? "arguments", message);

    /// <summary>What is refused, as data.</summary>
    public Refusal Refusal { get; }
}

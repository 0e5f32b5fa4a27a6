namespace FuelMath;

/// <summary>Thrown when a needed property is not given and not estimated.</summary>
/// <seealso href="../start/exceptions.html">Exceptions</seealso>
public sealed class UnknownPropertyException : InvalidOperationException, IRefusal, IExplained
{
    /// <summary>Creates an exception.</summary>
    /// <param name="property">The property as a noun, with its owner.</param>
    /// <param name="reason">The reason why it is not known; empty when none was given.</param>
    public UnknownPropertyException(string property, string reason)
        : this(property, reason, null) { }

    internal UnknownPropertyException(RefusalText property, RefusalText reason, string? what)
        : base($"{property} is not known{(reason.ToString().Length == 0 ? "." : $": {reason}")}")
    {
        Property = property.ToString();
        Reason = reason.ToString();
        Refusal = property
            .Then(reason)
            .ToRefusal(RefusalKind.Property, RefusalCode.PropertyUnknown, what ?? Property, Message);
    }

    /// <summary>The property as a noun, with its owner.</summary>
    public string Property { get; }

    /// <summary>The reason why it is not known; empty when none was given.</summary>
    public string Reason { get; }

    Refusal IExplained.Refusal => Refusal;

    private Refusal Refusal { get; }
}

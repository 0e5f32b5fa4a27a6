namespace FuelMath;

/// <summary>Thrown when a needed property is not given and not estimated.</summary>
public sealed class UnknownPropertyException : InvalidOperationException, IRefusal
{
    /// <summary>Creates an exception.</summary>
    /// <param name="property">The property as a noun, with its owner.</param>
    /// <param name="reason">The reason why it is not known; empty when none was given.</param>
    public UnknownPropertyException(string property, string reason)
        : base(string.IsNullOrEmpty(reason) ? $"{property} is not known." : $"{property} is not known: {reason}")
    {
        Property = property;
        Reason = reason;
    }

    /// <summary>The property as a noun, with its owner.</summary>
    public string Property { get; }

    /// <summary>The reason why it is not known; empty when none was given.</summary>
    public string Reason { get; }
}

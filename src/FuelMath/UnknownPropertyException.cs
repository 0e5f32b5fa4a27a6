namespace FuelMath;

/// <summary>A property was needed that nobody gave and that is not estimated.</summary>
public sealed class UnknownPropertyException : InvalidOperationException, IRefusal
{
    /// <summary>Says what is not known.</summary>
    /// <param name="property">The property, as a noun, with what has it.</param>
    /// <param name="reason">Why it is not known; empty when no reason was given.</param>
    public UnknownPropertyException(string property, string reason)
        : base(string.IsNullOrEmpty(reason) ? $"{property} is not known." : $"{property} is not known: {reason}")
    {
        Property = property;
        Reason = reason;
    }

    /// <summary>The property, as a noun, with what has it.</summary>
    public string Property { get; }

    /// <summary>Why it is not known; empty when no reason was given.</summary>
    public string Reason { get; }
}

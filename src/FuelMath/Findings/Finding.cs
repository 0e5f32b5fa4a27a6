using FuelMath.Internal;
using FuelMath.Sources;

namespace FuelMath.Findings;

/// <summary>One thing that a reader should act on: what, how much, against which limit, from where, and what to do.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class Finding
{
    /// <summary>Sets down a finding.</summary>
    /// <param name="severity">How much it matters.</param>
    /// <param name="what">What was found, a short clause that names the part; not blank.</param>
    /// <param name="value">The value found, with its unit.</param>
    /// <param name="limit">The limit it was held against, with its unit; "none" where there is none.</param>
    /// <param name="limitSource">Where the limit comes from.</param>
    /// <param name="action">What to do, a sentence; not blank.</param>
    /// <exception cref="ArgumentException">A text is null or blank.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="limitSource"/> is null.</exception>
    public Finding(Severity severity, string what, string value, string limit, DataSource limitSource, string action)
    {
        ArgumentNullException.ThrowIfNull(limitSource);
        Severity = severity;
        What = Guard.Name(what, nameof(what));
        Value = Guard.Name(value, nameof(value));
        Limit = Guard.Name(limit, nameof(limit));
        LimitSource = limitSource;
        Action = Guard.Name(action, nameof(action));
    }

    /// <summary>How much it matters.</summary>
    public Severity Severity { get; }

    /// <summary>What was found.</summary>
    public string What { get; }

    /// <summary>The value found, with its unit.</summary>
    public string Value { get; }

    /// <summary>The limit it was held against, with its unit.</summary>
    public string Limit { get; }

    /// <summary>Where the limit comes from.</summary>
    public DataSource LimitSource { get; }

    /// <summary>What to do.</summary>
    public string Action { get; }

    /// <summary>Formats the finding as one line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Severity}: {What}: {Value} (limit {Limit}, {LimitSource}). {Action}";
}

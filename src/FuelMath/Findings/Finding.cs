using UnitsNet;

namespace FuelMath;

/// <summary>One thing that a reader should act on: what, how much, against which limit, from where, and what to do.</summary>
/// <remarks>
/// A program reads <see cref="Code"/>, <see cref="Part"/>, <see cref="ValueQuantity"/> and <see cref="LimitQuantity"/>; the
/// texts beside them are for people and may change.
/// </remarks>
public sealed class Finding
{
    /// <summary>Creates a finding.</summary>
    /// <param name="code">What kind of finding it is; <see cref="FindingCode.Custom"/> for one of an application's own.</param>
    /// <param name="severity">How much it matters.</param>
    /// <param name="part">The part, stage, node or chamber that it is about, by its name; not blank.</param>
    /// <param name="what">What was found, a short clause that names the part; not blank.</param>
    /// <param name="value">The value found, with its unit.</param>
    /// <param name="limit">The limit it was held against, with its unit; "none" where there is none.</param>
    /// <param name="limitSource">Where the limit comes from.</param>
    /// <param name="action">What to do, a sentence; not blank.</param>
    /// <exception cref="ArgumentException">A text is null or blank.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="limitSource"/> is null.</exception>
    public Finding(
        FindingCode code,
        Severity severity,
        string part,
        string what,
        string value,
        string limit,
        DataSource limitSource,
        string action
    )
    {
        ArgumentNullException.ThrowIfNull(limitSource);
        Code = code;
        Severity = severity;
        Part = Guard.Name(part);
        What = Guard.Name(what);
        Value = Guard.Name(value);
        Limit = Guard.Name(limit);
        LimitSource = limitSource;
        Action = Guard.Name(action);
    }

    private Finding(Finding other, bool isNotKnown, IQuantity? value, IQuantity? limit)
        : this(
            other.Code,
            other.Severity,
            other.Part,
            other.What,
            other.Value,
            other.Limit,
            other.LimitSource,
            other.Action
        ) => (IsNotKnown, ValueQuantity, LimitQuantity) = (isNotKnown, value, limit);

    /// <summary>What kind of finding it is: the same for ever, whatever the words.</summary>
    public FindingCode Code { get; }

    /// <summary>How much it matters.</summary>
    public Severity Severity { get; }

    /// <summary>The part, stage, node or chamber that it is about, by its name.</summary>
    public string Part { get; }

    /// <summary>What was found.</summary>
    public string What { get; }

    /// <summary>The value found, with its unit.</summary>
    public string Value { get; }

    /// <summary>The value found, as a quantity; null where it is not a number.</summary>
    public IQuantity? ValueQuantity { get; }

    /// <summary>The limit it was held against, with its unit.</summary>
    public string Limit { get; }

    /// <summary>The limit as a quantity, of two that which was passed; null where it is not a number.</summary>
    public IQuantity? LimitQuantity { get; }

    /// <summary>Where the limit comes from.</summary>
    public DataSource LimitSource { get; }

    /// <summary>What to do.</summary>
    public string Action { get; }

    /// <summary>Whether it says what could not be judged, instead of what was found.</summary>
    public bool IsNotKnown { get; }

    internal static Finding Of(
        FindingCode code,
        Severity severity,
        string part,
        string what,
        Shown value,
        Shown limit,
        DataSource source,
        string action
    ) =>
        new(
            new(code, severity, part, what, value.Text, limit.Text, source, action),
            false,
            value.Quantity,
            limit.Quantity
        );

    /// <summary>The same finding with its numbers as quantities.</summary>
    /// <param name="value">The value found.</param>
    /// <param name="limit">The limit it was held against; null where there is none.</param>
    /// <returns>A new finding.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="value"/> is null.</exception>
    public Finding WithQuantities(IQuantity value, IQuantity? limit)
    {
        ArgumentNullException.ThrowIfNull(value);
        return new(this, IsNotKnown, value, limit);
    }

    /// <summary>The same finding as one that says what could not be judged: a verdict on it is not "holds" where it matters.</summary>
    /// <returns>A new finding.</returns>
    public Finding AsNotKnown() => new(this, true, ValueQuantity, LimitQuantity);

    internal Finding WithSeverity(Severity severity) =>
        new(
            new(Code, severity, Part, What, Value, Limit, LimitSource, Action),
            IsNotKnown,
            ValueQuantity,
            LimitQuantity
        );

    /// <summary>Formats the finding as one line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Severity}: {What}: {Value} (limit {Limit}, {LimitSource}). {Action}";
}

using UnitsNet;

namespace FuelMath;

/// <summary>A finding: what was found, its value, the limit with its source, and what to do.</summary>
/// <remarks>
/// For programs there are <see cref="Code"/>, <see cref="Part"/>, <see cref="ValueQuantity"/> and
/// <see cref="LimitQuantity"/>; the texts are for people and may change.
/// </remarks>
/// <seealso href="../guide/findings.html">Findings</seealso>
public sealed class Finding
{
    /// <summary>Creates a finding.</summary>
    /// <param name="code">The kind of finding; <see cref="FindingCode.Custom"/> for an application's own.</param>
    /// <param name="severity">Its severity.</param>
    /// <param name="part">The name of the part, stage, node or chamber concerned; not blank.</param>
    /// <param name="what">What was found, a short clause that names the part; not blank.</param>
    /// <param name="value">The value found, with its unit.</param>
    /// <param name="limit">The limit that applies, with its unit; "none" where there is none.</param>
    /// <param name="limitSource">Where the limit comes from.</param>
    /// <param name="action">What to do, a sentence; not blank.</param>
    /// <exception cref="ArgumentException">A text is null or blank.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="limitSource"/> is null.</exception>
    internal Finding(
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

    /// <summary>The kind of finding: stable, whatever the words.</summary>
    public FindingCode Code { get; }

    /// <summary>Its severity.</summary>
    public Severity Severity { get; }

    /// <summary>The name of the part, stage, node or chamber concerned.</summary>
    public string Part { get; }

    /// <summary>What was found.</summary>
    public string What { get; }

    /// <summary>The value found, with its unit.</summary>
    public string Value { get; }

    /// <summary>The value found, as a quantity; null where it is not a number.</summary>
    public IQuantity? ValueQuantity { get; }

    /// <summary>The limit that applies, with its unit.</summary>
    public string Limit { get; }

    /// <summary>The limit as a quantity, of two limits the one exceeded; null where it is not a number.</summary>
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
    )
    {
        int digits = Shown.FurtherDigits(value, limit);
        return new(
            new(code, severity, part, what, value.Text(digits), limit.Text(digits), source, action),
            false,
            value.Quantity,
            limit.Quantity
        );
    }

    /// <summary>The same finding with its numbers as quantities.</summary>
    /// <param name="value">The value found.</param>
    /// <param name="limit">The limit that applies; null where there is none.</param>
    /// <returns>A new finding.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="value"/> is null.</exception>
    public Finding WithQuantities(IQuantity value, IQuantity? limit)
    {
        ArgumentNullException.ThrowIfNull(value);
        return new(this, IsNotKnown, value, limit);
    }

    /// <summary>
    /// The same finding as one that says what could not be judged: a warning of this kind makes a verdict "not known".
    /// </summary>
    /// <returns>A new finding.</returns>
    public Finding AsNotKnown() => new(this, true, ValueQuantity, LimitQuantity);

    /// <summary>
    /// The same finding of a state that a failed sensor would leave: a danger is a warning, because the sensor corrects it
    /// while it works.
    /// </summary>
    internal Finding IfSensorFails() =>
        new(
            new(
                Code,
                Severity == Severity.Danger ? Severity.Warning : Severity,
                Part,
                $"If the sensor fails: {What}",
                Value,
                Limit,
                LimitSource,
                Action
            ),
            IsNotKnown,
            ValueQuantity,
            LimitQuantity
        );

    /// <summary>Formats the finding as one line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Severity}: {What}: {Value} (limit {Limit}, {LimitSource}). {Action}";
}

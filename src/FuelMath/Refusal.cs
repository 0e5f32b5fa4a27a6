using System.Collections.Immutable;

namespace FuelMath;

/// <summary>
/// What an exception of this library refuses, as data: what, where, the value, the range and the unit.
/// </summary>
/// <remarks>
/// For applications that show refusals in their own words. Numbers are in <see cref="Unit"/>; properties that do not
/// apply are null.
/// </remarks>
/// <example>
/// <code source="../../tests/FuelMath.Examples/RefusalExamples.cs" region="Refusal" />
/// </example>
/// <seealso href="../guide/refusals.html">Refusals</seealso>
public sealed partial class Refusal
{
    internal Refusal(RefusalKind kind, RefusalCode code, string what, string message) =>
        (Kind, Code, What, Message) = (kind, code, what, message);

    /// <summary>The kind of exception.</summary>
    public RefusalKind Kind { get; }

    /// <summary>What is wrong. Codes stay when words change.</summary>
    public RefusalCode Code { get; }

    /// <summary>What was refused: a parameter, an axis of data, a property, what was sought, a kind of quantity.</summary>
    public string What { get; }

    /// <summary>The name of the part that refuses; null where there is none or its name is not known.</summary>
    public string? Part { get; internal init; }

    /// <summary>All parts that it is about, by their names; empty where it names none.</summary>
    public ImmutableArray<string> Parts
    {
        get =>
            !field.IsDefault ? field
            : Part is null ? []
            : [Part];
        internal init;
    }

    /// <summary>The node or line where a solution fails; null elsewhere.</summary>
    public string? Node { get; internal init; }

    /// <summary>The place in a document, for example <c>$.lines.pump.flow</c>; null outside documents.</summary>
    public string? DocumentPath { get; internal init; }

    /// <summary>The given value, in <see cref="Unit"/>; null where it is not a number.</summary>
    public double? Value { get; internal init; }

    /// <summary>The smallest allowed value, in <see cref="Unit"/>; null where there is no such limit.</summary>
    public double? Minimum { get; internal init; }

    /// <summary>The largest allowed value, in <see cref="Unit"/>; null where there is no such limit.</summary>
    public double? Maximum { get; internal init; }

    /// <summary>Whether <see cref="Minimum"/> itself is excluded, as in "greater than zero".</summary>
    public bool IsMinimumExcluded { get; internal init; }

    /// <summary>Whether <see cref="Maximum"/> itself is excluded, as in "less than the period".</summary>
    public bool IsMaximumExcluded { get; internal init; }

    /// <summary>
    /// The unit of the numbers: the caller's, or one of the trade where that is an SI unit that no gauge shows (kPa for Pa, L/h for
    /// m³/s); empty for a pure number or without numbers.
    /// </summary>
    public string Unit { get; internal init; } = "";

    /// <summary>What was given where it is a text: a name, a choice, a kind of part; null where it is none.</summary>
    public string? Given { get; internal init; }

    /// <summary>What it does not fit, by its name; null where there is none.</summary>
    public string? Other { get; internal init; }

    /// <summary>The names, choices or units that are allowed; empty where they are no list.</summary>
    public ImmutableArray<string> Allowed { get; internal init; } = [];

    /// <summary>The place in a list, from zero; null where it is no list.</summary>
    public int? Index { get; internal init; }

    /// <summary>The refusal that this one rests on, as that of a trial; null where there is none.</summary>
    public Refusal? Cause { get; internal init; }

    /// <summary>Whatever else the message shows, by name.</summary>
    public ImmutableArray<Fact> Facts { get; internal init; } = [];

    /// <summary>The message for people.</summary>
    public string Message { get; }

    /// <summary>Gets the refusal of an exception.</summary>
    /// <param name="exception">The exception.</param>
    /// <returns>The refusal; null for an exception that is not of this library.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="exception"/> is null.</exception>
    public static Refusal? Of(Exception exception)
    {
        ArgumentNullException.ThrowIfNull(exception);
        return (exception as IExplained)?.Refusal;
    }

    /// <summary>Gives the message for people.</summary>
    /// <returns>The message.</returns>
    public override string ToString() => Message;

    /// <summary>The same, at its place in a document.</summary>
    internal Refusal InDocument(DocumentException document) =>
        new(RefusalKind.Document, Code, What, document.Message)
        {
            DocumentPath = document.Path,
            Part = Part ?? document.Part,
            Parts = Part is null && document.Part is { } name ? [name] : Parts,
            Node = Node,
            Value = Value,
            Minimum = Minimum,
            Maximum = Maximum,
            IsMinimumExcluded = IsMinimumExcluded,
            IsMaximumExcluded = IsMaximumExcluded,
            Unit = Unit,
            Given = Given ?? document.Found,
            Other = Other,
            Allowed = Allowed,
            Index = Index,
            Cause = Cause,
            Facts =
            [
                .. Facts,
                new Fact("line", NumberEcho.Of(document.Line), document.Line, ""),
                new Fact("column", NumberEcho.Of(document.Column), document.Column, ""),
                new Fact("found", document.Found, null, ""),
            ],
        };
}

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
public sealed class Refusal
{
    internal Refusal(RefusalKind kind, string what, string message) => (Kind, What, Message) = (kind, what, message);

    /// <summary>The kind of refusal.</summary>
    public RefusalKind Kind { get; }

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

    /// <summary>The unit of the numbers as the caller gave it; empty for a pure number or without numbers.</summary>
    public string Unit { get; internal init; } = "";

    /// <summary>The message for people.</summary>
    public string Message { get; }

    /// <summary>Gets the refusal of an exception.</summary>
    /// <param name="exception">The exception.</param>
    /// <returns>The refusal; null for an exception that is not of this library.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="exception"/> is null.</exception>
    public static Refusal? Of(Exception exception)
    {
        ArgumentNullException.ThrowIfNull(exception);
        return exception switch
        {
            IExplained explained => explained.Refusal,
            OutsideTableException table => OfTable(table),
            UnknownPropertyException property => new(RefusalKind.Property, property.Property, property.Message)
            {
                Part = Quoted(property.Property),
            },
            NoSolutionException solution => new(RefusalKind.Solution, solution.Sought, solution.Message)
            {
                Part = Quoted(solution.Sought),
                Node = solution.Where.Length == 0 ? null : solution.Where,
            },
            DocumentException document => OfDocument(document),
            _ => null,
        };
    }

    /// <summary>Gives the message for people.</summary>
    /// <returns>The message.</returns>
    public override string ToString() => Message;

    private static Refusal OfTable(OutsideTableException table)
    {
        int open = table.Axis.EndsWith(')') ? table.Axis.LastIndexOf(" (", StringComparison.Ordinal) : -1;
        return new(RefusalKind.Table, open < 0 ? table.Axis : table.Axis[..open], table.Message)
        {
            Part = Quoted(table.Table),
            Value = table.Value,
            Minimum = table.Minimum,
            Maximum = table.Maximum,
            Unit = open < 0 ? "" : table.Axis[(open + 2)..^1],
        };
    }

    private static Refusal OfDocument(DocumentException document)
    {
        Refusal? inner = document.InnerException is { } cause ? Of(cause) : null;
        return new(RefusalKind.Document, inner?.What ?? document.Path, document.Message)
        {
            DocumentPath = document.Path,
            Part = inner?.Part ?? document.Part,
            Node = inner?.Node,
            Value = inner?.Value,
            Minimum = inner?.Minimum,
            Maximum = inner?.Maximum,
            IsMinimumExcluded = inner is { IsMinimumExcluded: true },
            Unit = inner?.Unit ?? "",
        };
    }

    /// <summary>The name between quotes, as messages name a part.</summary>
    private static string? Quoted(string text)
    {
        string[] pieces = text.Split('\'');
        return pieces.Length > 2 ? pieces[1] : null;
    }
}

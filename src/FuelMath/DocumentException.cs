using System.Globalization;

namespace FuelMath;

/// <summary>Thrown when a document is invalid; states the place, what is allowed and what was found.</summary>
/// <seealso href="../start/exceptions.html">Exceptions</seealso>
public sealed class DocumentException : Exception, IExplained
{
    private readonly Refusal own;

    /// <summary>Creates an exception.</summary>
    /// <param name="path">The place in the document, as a JSON path, for example <c>$.hoses[1].bore</c>.</param>
    /// <param name="line">The line, counted from one.</param>
    /// <param name="column">The character in the line, counted from one.</param>
    /// <param name="allowed">What is allowed there; a sentence.</param>
    /// <param name="found">What was found, as a noun.</param>
    public DocumentException(string path, int line, int column, string allowed, string found)
        : this(RefusalCode.DocumentInvalid, path, line, column, allowed, found, null, null) { }

    internal DocumentException(
        RefusalCode code,
        string path,
        int line,
        int column,
        RefusalText allowed,
        string found,
        string? part,
        Exception? cause
    )
        : base(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{path}, line {line}, column {column}: {allowed} Found {found}.{Named(part, allowed.ToString())}"
            ),
            cause
        )
    {
        own = allowed.ToRefusal(RefusalKind.Document, code, path, Message, part);
        Part = part;
        Path = path;
        Line = line;
        Column = column;
        Allowed = allowed.ToString();
        Found = found;
    }

    /// <summary>The place in the document, as a JSON path.</summary>
    public string Path { get; }

    /// <summary>The line, counted from one.</summary>
    public int Line { get; }

    /// <summary>The character in the line, counted from one.</summary>
    public int Column { get; }

    /// <summary>What is allowed there.</summary>
    public string Allowed { get; }

    /// <summary>What was found.</summary>
    public string Found { get; }

    /// <summary>The part that the place belongs to, by its name; null where none around it has one.</summary>
    public string? Part { get; }

    Refusal IExplained.Refusal => ((InnerException is { } cause ? Refusal.Of(cause) : null) ?? own).InDocument(this);

    private static string Named(string? part, string allowed) =>
        part is null || allowed.Contains("Part: '", StringComparison.Ordinal) ? "" : $" Part: '{part}'.";
}

namespace FuelMath.Workbooks;

/// <summary>Why a cell has no number: the kind that a spreadsheet shows, and the words for a reader.</summary>
public sealed class CellError
{
    internal CellError(CellErrorKind kind, string message) => (Kind, Message) = (kind, message);

    /// <summary>The kind of error; an add-in gives its host the host's own value for it.</summary>
    public CellErrorKind Kind { get; }

    /// <summary>What was wrong and what is allowed.</summary>
    public string Message { get; }

    /// <summary>Gives the error as a cell shows it, for example <c>#NUM!</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Kind switch
        {
            CellErrorKind.Number => "#NUM!",
            CellErrorKind.NotAvailable => "#N/A",
            _ => "#VALUE!",
        };

    internal static CellError Value(string message) => new(CellErrorKind.Value, message);

    internal static CellError Number(string message) => new(CellErrorKind.Number, message);

    internal static CellError NotAvailable(string message) => new(CellErrorKind.NotAvailable, message);
}

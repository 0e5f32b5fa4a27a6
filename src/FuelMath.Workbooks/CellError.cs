namespace FuelMath.Workbooks;

/// <summary>Why a cell has no number: the error that a spreadsheet shows, and a message.</summary>
/// <seealso href="../guide/add-ins.html">Functions for an add-in</seealso>
public sealed class CellError
{
    internal CellError(CellErrorKind kind, string message) => (Kind, Message) = (kind, message);

    /// <summary>The kind of error; an add-in converts it to the host's error value.</summary>
    public CellErrorKind Kind { get; }

    /// <summary>The error and what is allowed.</summary>
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

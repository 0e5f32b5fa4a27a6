namespace FuelMath.Workbooks;

/// <summary>The kinds of error that a spreadsheet shows in a cell.</summary>
public enum CellErrorKind
{
    /// <summary><c>#VALUE!</c>: something of the wrong kind, such as a text that is no quantity, or arrays that do not fit.</summary>
    Value,

    /// <summary><c>#NUM!</c>: a number outside the range of the formula, or one without a result.</summary>
    Number,

    /// <summary><c>#N/A</c>: nothing there, such as an empty cell, a place outside a table, or a name that is not known.</summary>
    NotAvailable,
}

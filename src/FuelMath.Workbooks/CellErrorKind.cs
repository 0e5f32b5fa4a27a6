namespace FuelMath.Workbooks;

/// <summary>The kinds of error that a spreadsheet shows in a cell.</summary>
/// <seealso href="../guide/add-ins.html">Functions for an add-in</seealso>
public enum CellErrorKind
{
    /// <summary>
    /// <c>#VALUE!</c>: a value of the wrong kind, such as a text that is not a quantity, or arrays of different size.
    /// </summary>
    Value,

    /// <summary><c>#NUM!</c>: a number outside the range of the formula, or without a result.</summary>
    Number,

    /// <summary>
    /// <c>#N/A</c>: a missing value, such as an empty cell, a point outside a table, or an unknown name.
    /// </summary>
    NotAvailable,
}

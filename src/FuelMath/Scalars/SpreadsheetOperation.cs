namespace FuelMath.Formulas;

/// <summary>What a node of a spreadsheet formula does.</summary>
internal enum SpreadsheetOperation
{
    Constant,
    Input,
    Sum,
    Product,
    Negative,
    Less,
    Call,
    Step,
}

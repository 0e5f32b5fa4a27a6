namespace FuelMath.Formulas;

/// <summary>One operation of a formula for spreadsheet text.</summary>
internal sealed class SpreadsheetNode
{
    internal static readonly SpreadsheetNode Zero = Constant(0);

    private SpreadsheetNode(
        SpreadsheetOperation operation,
        string name,
        double number,
        params SpreadsheetNode[] operands
    ) => (Operation, Name, Number, Operands) = (operation, name, number, operands);

    internal SpreadsheetOperation Operation { get; }

    /// <summary>The operator, the function's name or the input's reference.</summary>
    internal string Name { get; }

    internal double Number { get; }

    internal SpreadsheetNode[] Operands { get; }

    /// <summary>The symbol of a named step; null elsewhere.</summary>
    internal Symbol? Symbol { get; private init; }

    /// <summary>Where the formula of a named step comes from.</summary>
    internal DataSource? Source { get; private init; }

    internal static SpreadsheetNode Input(string reference) => new(SpreadsheetOperation.Input, reference, 0);

    internal static SpreadsheetNode Constant(double value) => new(SpreadsheetOperation.Constant, "", value);

    internal static SpreadsheetNode Sum(SpreadsheetNode a, SpreadsheetNode b) =>
        new(SpreadsheetOperation.Sum, "+", 0, a, b);

    internal static SpreadsheetNode Difference(SpreadsheetNode a, SpreadsheetNode b) =>
        new(SpreadsheetOperation.Sum, "-", 0, a, b);

    internal static SpreadsheetNode Product(SpreadsheetNode a, SpreadsheetNode b) =>
        new(SpreadsheetOperation.Product, "*", 0, a, b);

    internal static SpreadsheetNode Quotient(SpreadsheetNode a, SpreadsheetNode b) =>
        new(SpreadsheetOperation.Product, "/", 0, a, b);

    internal static SpreadsheetNode Negative(SpreadsheetNode a) => new(SpreadsheetOperation.Negative, "-", 0, a);

    internal static SpreadsheetNode Less(SpreadsheetNode a, SpreadsheetNode b) =>
        new(SpreadsheetOperation.Less, "<", 0, a, b);

    internal static SpreadsheetNode Call(string function, params SpreadsheetNode[] arguments) =>
        new(SpreadsheetOperation.Call, function, 0, arguments);

    internal static SpreadsheetNode Step(SpreadsheetNode value, Symbol symbol, DataSource? source) =>
        new(SpreadsheetOperation.Step, "", 0, value) { Symbol = symbol, Source = source };
}

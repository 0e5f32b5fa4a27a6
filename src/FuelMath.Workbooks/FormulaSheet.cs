using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>The sheet of one formula: inputs with their ranges, bounds, constants, each step, and the result.</summary>
internal sealed class FormulaSheet
{
    /// <summary>Relative tolerance at the end of a range, the same as in a checked call.</summary>
    private const double EdgeTolerance = 1e-9;

    private readonly FormulaInfo formula;
    private readonly FormulaInfo.CallUnits units;
    private readonly ImmutableArray<double> numbers;
    private readonly List<string> checks = [];

    /// <summary>Creates the sheet.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="units">The units of inputs and result.</param>
    /// <param name="name">The name of the sheet.</param>
    /// <param name="numbers">The values of the inputs, in those units; null for the formula's example.</param>
    internal FormulaSheet(
        FormulaInfo formula,
        FormulaInfo.CallUnits units,
        string name,
        ImmutableArray<double>? numbers
    )
    {
        (this.formula, this.units) = (formula, units);
        this.numbers =
            numbers
            ??
            [
                .. formula.Example.Arguments.Select(
                    (x, i) => formula.Arguments[i].Quantity is var q ? q.FromSi(x, q.UnitOf(units)) : x
                ),
            ];
        Sheet = new(name, 14, 46, 18, 12, 18, 12, 14, 14, 10, 50);
        Sheet.Add(CellLook.Title, formula.Summary);
        Sheet.Add(CellLook.Note, $"{formula.Name}. Change the shaded numbers; everything else follows.");
        Sheet.Add(CellLook.Note, FormulaSheets.Caution);
        Sheet.Skip();
        Sheet.Add(
            CellLook.Head,
            "Symbol",
            "Meaning",
            "Value",
            "Unit",
            "SI value",
            "SI unit",
            "From",
            "To",
            "Check",
            "Source"
        );
        ImmutableArray<string> inputs = [.. formula.Arguments.Select(Input)];
        foreach (FormulaInfo.Bound bound in formula.Bounds)
        {
            Bound(bound, inputs);
        }

        foreach (FormulaInfo.Constant constant in formula.Constants)
        {
            int row = Sheet.Add(CellLook.Words, "", $"fixed inside: {constant.Name}");
            Sheet.Put('E', row, Cell.Of(constant.Value, CellLook.Plain));
            Sheet.Put('F', row, Cell.Of(constant.Unit, CellLook.Plain));
        }

        Steps(inputs);
        Result = Answer();
        if (numbers is null)
        {
            Example();
        }
    }

    internal Sheet Sheet { get; }

    /// <summary>The cells of the input values, in the order of the arguments.</summary>
    internal ImmutableArray<string> Inputs { get; private set; } = [];

    /// <summary>The cell of the result.</summary>
    internal string Result { get; }

    private string Last { get; set; } = "";

    private string Input(FormulaInfo.Argument argument, int index)
    {
        FormulaQuantity quantity = argument.Quantity;
        string unit = quantity.UnitOf(units);
        int row = Sheet.Add(CellLook.Words, quantity.Symbol.Name, quantity.Symbol.Meaning);
        string given = Sheet.At('C', row);
        (double low, double high) = (quantity.FromSi(argument.Minimum, unit), quantity.FromSi(argument.Maximum, unit));
        Sheet.Put('C', row, Cell.Of(numbers[index], CellLook.Input));
        Sheet.Put('D', row, Cell.Of(unit, CellLook.Plain));
        Sheet.Put('E', row, Cell.Live(quantity.ToSi(SpreadsheetText.Input(given), unit).ToFormula(), CellLook.Plain));
        Sheet.Put('F', row, Cell.Of(quantity.Unit, CellLook.Plain));
        Sheet.Put('G', row, Cell.Of(low, CellLook.Plain));
        Sheet.Put('H', row, Cell.Of(high, CellLook.Plain));
        // As a checked call compares: in SI units, with a tolerance for conversion to another unit and back.
        string si = Sheet.At('E', row);
        string least = Number(argument.Minimum - (EdgeTolerance * Math.Abs(argument.Minimum)));
        string most = Number(argument.Maximum + (EdgeTolerance * Math.Abs(argument.Maximum)));
        string range = $"AND({si}>={least},{si}<={most})";
        Check(row, $"IF(ISNUMBER({given}),{range},FALSE)");
        Sheet.Limit(given, low, high, $"{argument.Name}, {unit}");
        Inputs = Inputs.Add(given);
        return Sheet.At('E', row);
    }

    private void Bound(FormulaInfo.Bound bound, ImmutableArray<string> inputs)
    {
        string Of(string name) => inputs[formula.Arguments.ToList().FindIndex(a => a.Name == name)];
        SpreadsheetText limit = SpreadsheetText.Of(bound.Factor);
        foreach (string name in bound.Times)
        {
            limit *= SpreadsheetText.Input(Of(name));
        }

        foreach (string name in bound.DividedBy)
        {
            limit /= SpreadsheetText.Input(Of(name));
        }

        int row = Sheet.Add(CellLook.Words, "", $"bound: {bound}");
        Sheet.Put('E', row, Cell.Live(limit.ToFormula(), CellLook.Plain));
        Sheet.Put(
            'F',
            row,
            Cell.Of(formula.Arguments.First(a => a.Name == bound.Argument).Quantity.Unit, CellLook.Plain)
        );
        string sign = $"{(bound.IsAbove ? ">" : "<")}{(bound.IsStrict ? "" : "=")}";
        Check(row, $"{Of(bound.Argument)}{sign}{Sheet.At('E', row)}");
    }

    private void Check(int row, string condition)
    {
        Sheet.Put('I', row, Cell.Live($"IF({condition},\"ok\",\"outside\")", CellLook.Plain));
        checks.Add($"{Sheet.At('I', row)}=\"ok\"");
    }

    private void Steps(ImmutableArray<string> inputs)
    {
        Sheet.Skip();
        Sheet.Add(CellLook.Head, "Step", "Meaning", "", "", "SI value", "SI unit", "", "", "", "Source");
        SpreadsheetText[] given = [.. inputs.Select(SpreadsheetText.Input)];
        int first = Sheet.Row;
        ImmutableArray<SpreadsheetText.Cell> cells = formula
            .At<SpreadsheetText>(given)
            .ToCells(i => Sheet.At('E', first + i));
        foreach (SpreadsheetText.Cell cell in cells)
        {
            int row = cell.Symbol is { } symbol
                ? Sheet.Add(CellLook.Words, symbol.Name, symbol.Meaning)
                : Sheet.Add(CellLook.Words, "", "part of a step below");
            Sheet.Put('E', row, Cell.Live(cell.Formula, CellLook.Plain));
            Sheet.Put('F', row, Cell.Of(cell.Symbol?.Unit ?? "", CellLook.Plain));
            Sheet.Put('J', row, Cell.Of(cell.Source?.ToString() ?? "", CellLook.Words));
        }

        Last = cells[^1].Reference;
    }

    private string Answer()
    {
        Sheet.Skip();
        FormulaQuantity result = formula.Result;
        int row = Sheet.Add(CellLook.Words, result.Symbol.Name, $"result: {result.Symbol.Meaning}");
        string unit = result.UnitOf(units);
        string value = result.FromSi(SpreadsheetText.Input(Last), unit).ToFormula();
        Sheet.Put('C', row, Cell.Live($"IF(AND({string.Join(",", checks)}),{value},NA())", CellLook.Result));
        Sheet.Put('D', row, Cell.Of(unit, CellLook.Plain));
        Sheet.Put('J', row, Cell.Of(string.Join("; ", formula.Sources), CellLook.Words));
        return Sheet.At('C', row);
    }

    private void Example()
    {
        FormulaQuantity result = formula.Result;
        string unit = result.UnitOf(units);
        int row = Sheet.Add(CellLook.Words, "", "the same for the numbers that the sheet came with, from outside");
        Sheet.Put('C', row, Cell.Of(result.FromSi(formula.Example.Expected, unit), CellLook.Plain));
        Sheet.Put('D', row, Cell.Of(unit, CellLook.Plain));
        Sheet.Put('J', row, Cell.Of(formula.Example.Source.ToString(), CellLook.Words));
    }

    private static string Number(double value) => SpreadsheetText.Of(value).ToFormula();
}

using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>A workbook of formulas: contents where there are several, then a sheet for each formula.</summary>
internal static class FormulaSheets
{
    internal const string Caution =
        "A sheet helps to understand and to compare; it is no clearance to load an engine. A lean cylinder destroys an"
        + " engine, leaking fuel burns people: release the pressure first, keep flames away, and let local codes, the"
        + " makers' data and licensed practice come first.";

    /// <summary>Creates the workbook.</summary>
    /// <param name="formulas">One or more formulas.</param>
    /// <param name="units">The units of inputs and results.</param>
    /// <param name="numbers">The values of the inputs of each formula; null for its example.</param>
    internal static Workbook Workbook(
        IReadOnlyList<FormulaInfo> formulas,
        FormulaInfo.CallUnits units,
        Func<FormulaInfo, ImmutableArray<double>?> numbers
    )
    {
        if (!Enum.IsDefined(units))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotOneOf,
                $"Must be SI or customary; it was {units}.",
                nameof(units),
                units.ToString(),
                Enum.GetNames<FormulaInfo.CallUnits>()
            );
        }

        ImmutableArray<string> names = SheetNames.Of(
            formulas.Count == 1 ? [formulas[0].Name] : formulas.Select(f => f.Name).Prepend("Contents")
        );
        if (formulas.Count == 1)
        {
            return new([new FormulaSheet(formulas[0], units, names[0], numbers(formulas[0])).Sheet]);
        }

        FormulaSheet[] sheets = [.. formulas.Select((f, i) => new FormulaSheet(f, units, names[i + 1], numbers(f)))];
        return new([Contents(names[0], formulas, sheets, units), .. sheets.Select(s => s.Sheet)]);
    }

    private static Sheet Contents(
        string name,
        IReadOnlyList<FormulaInfo> formulas,
        FormulaSheet[] sheets,
        FormulaInfo.CallUnits units
    )
    {
        var contents = new Sheet(name, 34, 70, 16, 12);
        contents.Add(CellLook.Title, "Formulas of fuel delivery");
        contents.Add(CellLook.Note, Caution);
        contents.Skip();
        contents.Add(CellLook.Head, "Formula", "What it computes", "Result", "Unit");
        for (int i = 0; i < formulas.Count; i++)
        {
            FormulaInfo formula = formulas[i];
            int row = contents.Row;
            string link = $"HYPERLINK(\"#{sheets[i].Sheet.From("A1")}\",\"{formula.Name}\")";
            contents.Put('A', row, Cell.Live(link, CellLook.Plain));
            contents.Put('B', row, Cell.Of(formula.Summary, CellLook.Words));
            contents.Put('C', row, Cell.Live(sheets[i].Sheet.From(sheets[i].Result), CellLook.Result));
            contents.Put('D', row, Cell.Of(formula.Result.UnitOf(units), CellLook.Plain));
        }

        return contents;
    }

    internal static string UnitOf(this FormulaQuantity quantity, FormulaInfo.CallUnits units) =>
        units == FormulaInfo.CallUnits.Si ? quantity.Unit : quantity.CustomaryUnit;
}

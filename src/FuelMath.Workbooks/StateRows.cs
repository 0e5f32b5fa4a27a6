using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>Rows of a state's sheet: name, number, unit, whether it is given, solved or live, and a note.</summary>
internal sealed class StateRows(Sheet sheet)
{
    private readonly List<string> asSolved = [];

    internal Sheet Sheet => sheet;

    /// <summary>The spreadsheet condition that every given number is still that of the solved state.</summary>
    internal string AsSolved => asSolved.Count == 0 ? "TRUE" : $"AND({string.Join(",", asSolved)})";

    internal void Head(string title)
    {
        sheet.Skip();
        sheet.Add(CellLook.Head, title, "Value", "Unit", "Kind", "Where from");
    }

    /// <summary>Adds a number that a reader may change.</summary>
    internal SpreadsheetText Given(string what, double si, SheetUnit unit, string note)
    {
        double shown = unit.Show(si);
        string cell = Row(what, Cell.Of(shown, CellLook.Input), unit, "given", note);
        asSolved.Add($"{cell}={SpreadsheetText.Of(shown).ToFormula()}");
        return unit.Read(cell);
    }

    /// <summary>Adds a number of the solved state or a table, which does not change.</summary>
    internal SpreadsheetText Solved(string what, double si, SheetUnit unit, string note) =>
        unit.Read(Row(what, Cell.Of(unit.Show(si), CellLook.Solved), unit, "solved", note));

    /// <summary>Adds a number that is calculated from those above.</summary>
    internal SpreadsheetText Live(string what, SpreadsheetText si, SheetUnit unit, string note) =>
        unit.Read(LiveAt(what, si, unit, note, CellLook.Live));

    /// <summary>Adds a calculated result and returns its cell.</summary>
    internal string Result(string what, SpreadsheetText si, SheetUnit unit, string note) =>
        LiveAt(what, si, unit, note, CellLook.LiveResult);

    /// <summary>Adds a result of the solved state and returns its cell.</summary>
    internal string SolvedResult(string what, double si, SheetUnit unit, string note) =>
        Row(what, Cell.Of(unit.Show(si), CellLook.Solved), unit, "solved", note);

    private string LiveAt(string what, SpreadsheetText si, SheetUnit unit, string note, CellLook look) =>
        Row(what, Cell.Live(unit.Show(si).ToFormula(), look), unit, "live", note);

    private string Row(string what, Cell value, SheetUnit unit, string kind, string note)
    {
        int row = sheet.Add(CellLook.Words, what);
        sheet.Put('B', row, value);
        sheet.Put('C', row, Cell.Of(unit.Name, CellLook.Plain));
        sheet.Put('D', row, Cell.Of(kind, CellLook.Plain));
        sheet.Put('E', row, Cell.Of(note, CellLook.Live));
        return Sheet.At('B', row);
    }
}

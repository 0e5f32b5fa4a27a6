using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>Rows of a state's sheet: what it is, its number and unit, whether it is given, solved or live, and a note.</summary>
internal sealed class StateRows(Sheet sheet)
{
    private readonly List<string> asSolved = [];

    internal Sheet Sheet => sheet;

    /// <summary>Whether every given number is still the one that the state was solved for: a condition of cells.</summary>
    internal string AsSolved => asSolved.Count == 0 ? "TRUE" : $"AND({string.Join(",", asSolved)})";

    internal void Head(string title)
    {
        sheet.Skip();
        sheet.Add(CellLook.Head, title, "Value", "Unit", "Kind", "Where from");
    }

    /// <summary>A number that a reader may change.</summary>
    internal SpreadsheetText Given(string what, double si, SheetUnit unit, string note)
    {
        double shown = unit.Show(si);
        string cell = Row(what, Cell.Of(shown, CellLook.Input), unit, "given", note);
        asSolved.Add($"{cell}={SpreadsheetText.Of(shown).ToFormula()}");
        return unit.Read(cell);
    }

    /// <summary>A number that was found by solving the whole, or read from a table, and that stays.</summary>
    internal SpreadsheetText Solved(string what, double si, SheetUnit unit, string note) =>
        unit.Read(Row(what, Cell.Of(unit.Show(si), CellLook.Solved), unit, "solved", note));

    /// <summary>A number that follows from those above.</summary>
    internal SpreadsheetText Live(string what, SpreadsheetText si, SheetUnit unit, string note) =>
        unit.Read(LiveAt(what, si, unit, note, CellLook.Live));

    /// <summary>A number that the sheet is about, and where it stands.</summary>
    internal string Result(string what, SpreadsheetText si, SheetUnit unit, string note) =>
        LiveAt(what, si, unit, note, CellLook.LiveResult);

    /// <summary>A number of the solved state that the sheet is about, and where it stands.</summary>
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

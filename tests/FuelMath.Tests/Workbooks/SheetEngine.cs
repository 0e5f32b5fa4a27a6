using System.Globalization;

namespace FuelMath.Tests.Workbooks;

/// <summary>
/// A small spreadsheet engine, written for these tests from the rules of spreadsheets and not from the writer: sheets of
/// cells by reference, each a number, a text or a formula after an equals sign, calculated on demand.
/// </summary>
/// <remarks>A value is a double, a bool, a string, or an error as <see cref="SheetError"/>. A sign binds before a power.</remarks>
internal sealed class SheetEngine(IReadOnlyDictionary<(string Sheet, string Cell), string> cells)
{
    private readonly Dictionary<(string, string), object> values = [];

    internal object this[string sheet, string cell]
    {
        get
        {
            (string, string) key = (sheet, cell);
            if (values.TryGetValue(key, out object? known))
            {
                return known;
            }

            // A cell that needs itself finds this.
            values[key] = new SheetError("#CIRCULAR");
            return values[key] = Value(sheet, cells.GetValueOrDefault(key, ""));
        }
    }

    internal double Number(string sheet, string cell) =>
        this[sheet, cell] as double? ?? throw new InvalidOperationException($"{sheet}!{cell} is {this[sheet, cell]}");

    private object Value(string sheet, string content) =>
        content.StartsWith('=') ? new SheetParser(this, sheet, content[1..]).Evaluate()
        : double.TryParse(content, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) ? number
        : content;
}

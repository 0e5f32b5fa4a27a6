using System.Text.Json;
using FuelMath.Workbooks;

namespace FuelMath.Tests.Workbooks;

/// <summary>A workbook as a file, and beside it what every live cell comes to by the engine of these tests.</summary>
internal static class SheetFiles
{
    internal static void Write(Workbook book, string folder, string stem)
    {
        string path = Path.Combine(folder, stem);
        book.WriteFile(path + ".xlsx");
        var cells = WorkbookCells.Read(book);
        var engine = new SheetEngine(cells);
        var sheets = cells
            .GroupBy(c => c.Key.Sheet)
            .ToDictionary(g => g.Key, g => g.ToDictionary(c => c.Key.Cell, c => c.Value));
        var expected =
            from cell in cells
            where cell.Value.StartsWith('=') && engine[cell.Key.Sheet, cell.Key.Cell] is double
            select new
            {
                Name = $"{cell.Key.Sheet}!{cell.Key.Cell}",
                cell.Key.Sheet,
                cell.Key.Cell,
                Value = engine.Number(cell.Key.Sheet, cell.Key.Cell),
                Scale = 1,
            };
        File.WriteAllText(path + ".json", JsonSerializer.Serialize(new { sheets, expected }));
    }
}

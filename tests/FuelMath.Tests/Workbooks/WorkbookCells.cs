using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using FileBook = FuelMath.Workbooks.Workbook;

namespace FuelMath.Tests.Workbooks;

/// <summary>What a written file holds, read back cell by cell: numbers and texts as they are, a formula after "=".</summary>
internal static class WorkbookCells
{
    internal static Dictionary<(string Sheet, string Cell), string> Read(FileBook book)
    {
        using var stream = new MemoryStream();
        book.Write(stream);
        stream.Position = 0;
        using var document = SpreadsheetDocument.Open(stream, false);
        WorkbookPart part = document.WorkbookPart!;
        var cells = new Dictionary<(string, string), string>();
        foreach (Sheet sheet in part.Workbook!.Descendants<Sheet>())
        {
            var page = (WorksheetPart)part.GetPartById(sheet.Id!.Value!);
            foreach (Cell cell in page.Worksheet!.Descendants<Cell>())
            {
                cells[(sheet.Name!.Value!, cell.CellReference!.Value!)] = cell.CellFormula is { } formula
                    ? $"={formula.Text}"
                    : cell.InnerText;
            }
        }

        return cells;
    }

    internal static SheetEngine Calculate(FileBook book) => new(Read(book));
}

using System.Globalization;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using X = DocumentFormat.OpenXml.Spreadsheet;

namespace FuelMath.Workbooks;

/// <summary>Writes sheets as a file that a spreadsheet program opens and calculates.</summary>
internal static class WorkbookFile
{
    /// <summary>
    /// Height in points; not every host adjusts the row height to larger letters or texts of several lines.
    /// </summary>
    private const double TitleHeight = 21;

    private const double LineHeight = 13;

    internal static void Write(IReadOnlyList<Sheet> sheets, Stream stream)
    {
        using var document = SpreadsheetDocument.Create(stream, SpreadsheetDocumentType.Workbook);
        WorkbookPart book = document.AddWorkbookPart();
        book.Workbook = new X.Workbook();
        book.AddNewPart<WorkbookStylesPart>("styles").Stylesheet = CellStyles.Make();
        X.Sheets list = book.Workbook.AppendChild(new X.Sheets());
        uint id = 1;
        foreach (Sheet sheet in sheets)
        {
            WorksheetPart part = book.AddNewPart<WorksheetPart>(
                string.Create(CultureInfo.InvariantCulture, $"sheet{id}")
            );
            part.Worksheet = Page(sheet);
            list.AppendChild(
                new X.Sheet
                {
                    Id = book.GetIdOfPart(part),
                    SheetId = id++,
                    Name = sheet.Name,
                }
            );
        }

        // No formula has a stored value: request a full calculation.
        book.Workbook.AppendChild(new X.CalculationProperties { FullCalculationOnLoad = true });
    }

    private static X.Worksheet Page(Sheet sheet)
    {
        var page = new X.Worksheet(
            new X.SheetProperties(new X.PageSetupProperties { FitToPage = true }),
            new X.Columns(
                sheet.Widths.Select(
                    (w, i) =>
                        new X.Column
                        {
                            Min = (uint)i + 1,
                            Max = (uint)i + 1,
                            Width = w,
                            CustomWidth = true,
                        }
                )
            ),
            new X.SheetData(sheet.Rows.Select(r => Row(r.Key, r.Value, sheet.Widths)))
        );
        if (sheet.Limits.Count > 0)
        {
            page.AppendChild(
                new X.DataValidations(sheet.Limits.Select(Validation)) { Count = (uint)sheet.Limits.Count }
            );
        }

        page.AppendChild(
            new X.PageSetup
            {
                Orientation = X.OrientationValues.Landscape,
                FitToWidth = 1,
                FitToHeight = 0,
            }
        );
        return page;
    }

    private static X.Row Row(int index, SortedDictionary<int, Cell> cells, IReadOnlyList<double> widths)
    {
        var row = new X.Row(cells.Select(c => One(Sheet.At((char)('A' + c.Key), index), c.Value)))
        {
            RowIndex = (uint)index,
        };
        if (cells.Values.Any(c => c.Look == CellLook.Title))
        {
            (row.Height, row.CustomHeight) = (TitleHeight, true);
        }
        else if (cells.Max(c => Lines(c.Value, widths[c.Key])) is > 1 and var lines)
        {
            (row.Height, row.CustomHeight) = (LineHeight * lines, true);
        }

        return row;
    }

    /// <summary>The number of lines of a text; column widths are in digits, and letters are about as wide.</summary>
    private static int Lines(Cell cell, double width) =>
        cell is { Text: { } text, Look: CellLook.Words or CellLook.Head }
            ? (int)Math.Ceiling(1.1 * text.Length / width)
            : 1;

    private static X.Cell One(string reference, Cell cell)
    {
        var one = new X.Cell { CellReference = reference, StyleIndex = (uint)cell.Look };
        if (cell.Formula is { } formula)
        {
            one.CellFormula = new X.CellFormula(formula);
        }
        else if (cell.Number is { } number)
        {
            one.CellValue = new X.CellValue(number.ToString("R", CultureInfo.InvariantCulture));
        }
        else
        {
            one.DataType = X.CellValues.InlineString;
            one.InlineString = new X.InlineString(new X.Text(cell.Text!));
        }

        return one;
    }

    private static X.DataValidation Validation(CellLimit limit) =>
        new(
            new X.Formula1(limit.Minimum.ToString("R", CultureInfo.InvariantCulture)),
            new X.Formula2(limit.Maximum.ToString("R", CultureInfo.InvariantCulture))
        )
        {
            Type = X.DataValidationValues.Decimal,
            Operator = X.DataValidationOperatorValues.Between,
            ErrorStyle = X.DataValidationErrorStyleValues.Warning,
            AllowBlank = false,
            ShowInputMessage = true,
            ShowErrorMessage = true,
            Prompt = limit.Prompt,
            SequenceOfReferences = new ListValue<StringValue> { InnerText = limit.Reference },
        };
}

using System.Globalization;
using System.Text.Json;
using FuelMath.Formulas;
using FuelMath.Tests.Formulas;
using FuelMath.Workbooks;

namespace FuelMath.Tests.Workbooks;

/// <summary>
/// Every formula as cells of a written file, calculated by a small engine of these tests. Two whole spreadsheet engines do
/// the same on demand: see <c>tests/spreadsheets</c>.
/// </summary>
public sealed class SheetPointsTests
{
    private const int Times = 6;

    /// <summary>The operations are those of the number, in their order, and decimals hold every bit: nothing may differ.</summary>
    [Fact]
    public void EveryFormula_AtRandomPoints_IsThatOfReal()
    {
        foreach (SheetPoints points in Drawn())
        {
            SheetEngine engine = WorkbookCells.Calculate(points.Workbook);
            for (int i = 0; i < FormulaCatalog.All.Length; i++)
            {
                string name = FormulaCatalog.All[i].Name;
                Assert.Equal(points.Expected[name], engine.Number("Contents", SheetPoints.Row(i)));
            }
        }
    }

    [Fact]
    public void EveryCell_IsShorterThanItsLimit()
    {
        int longest = WorkbookCells
            .Read(FormulaSheets.Workbook(FormulaCatalog.All, FormulaInfo.CallUnits.Customary, _ => null))
            .Values.Max(v => v.Length - 1);

        Assert.InRange(longest, 1, FuelMath.Formulas.SpreadsheetText.MostCharacters);
    }

    /// <summary>Writes what the scripts of <c>tests/spreadsheets</c> calculate, when asked.</summary>
    [Fact]
    public void Files_AskedFor_AreWritten()
    {
        if (Environment.GetEnvironmentVariable("WRITE_SHEETS") is not { Length: > 0 } folder)
        {
            return;
        }

        // One to look at.
        Workbook
            .FromTopic(FormulaInfo.FormulaTopic.Openings, FormulaInfo.CallUnits.Customary)
            .WriteFile(Path.Combine(folder, "openings.xlsx"));
        int number = 0;
        foreach (SheetPoints points in Drawn())
        {
            string stem = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"points{++number}"));
            points.Workbook.WriteFile(stem + ".xlsx");
            var sheets = WorkbookCells
                .Read(points.Workbook)
                .GroupBy(c => c.Key.Sheet)
                .ToDictionary(g => g.Key, g => g.ToDictionary(c => c.Key.Cell, c => c.Value));
            var expected = FormulaCatalog.All.Select(
                (f, i) =>
                    new
                    {
                        f.Name,
                        Cell = SheetPoints.Row(i),
                        Value = points.Expected[f.Name],
                        Scale = FormulaCase.Named(f.Name).Terms,
                    }
            );
            File.WriteAllText(stem + ".json", JsonSerializer.Serialize(new { sheets, expected }));
        }
    }

    private static SheetPoints[] Drawn()
    {
        var random = new Random(
            DrawnCasesAttribute.Seed is { } seed ? (int)(seed % int.MaxValue) : Random.Shared.Next()
        );
        return [.. Enumerable.Range(0, Times).Select(_ => new SheetPoints(random))];
    }
}

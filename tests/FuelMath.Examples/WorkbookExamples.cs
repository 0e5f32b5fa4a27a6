using System.Collections.Immutable;
using FuelMath.Formulas;
using FuelMath.Workbooks;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class WorkbookExamples
{
    [Fact]
    public void FormulaAsCells()
    {
        #region Cells
        // 800 cm3/min at 3 bar, asked for at 4 bar: the inputs stand in B1 to B5, steps from B6 on.
        FormulaInfo carried = FormulaCatalog.Named("Orifice.CarriedVolumeFlow");
        SpreadsheetText[] inputs = [.. Enumerable.Range(1, 5).Select(row => SpreadsheetText.Input($"B{row}"))];
        ImmutableArray<SpreadsheetText.Cell> cells = carried
            .At<SpreadsheetText>(inputs)
            .ToCells(step => $"B{6 + step}");
        string cell = $"{cells[0]}"; // B6 =B1*SQRT(B4/B2*(B3/B5))
        #endregion

        Assert.Equal("B6 =B1*SQRT(B4/B2*(B3/B5))", cell);
    }

    [Fact]
    public void TopicAsWorkbook()
    {
        string path = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid()}.xlsx");
        #region Topic
        Workbook openings = Workbook.FromTopic(FormulaInfo.FormulaTopic.Openings, FormulaInfo.CallUnits.Customary);
        openings.WriteFile(path);

        // One formula, filled with numbers of your own.
        Workbook carried = Workbook.FromFormula(
            FormulaCatalog.Named("Orifice.CarriedVolumeFlow"),
            FormulaInfo.CallUnits.Customary,
            [800, 300, 740, 400, 740]
        );
        string first = openings.SheetNames[0]; // "Contents"
        string only = carried.SheetNames[0]; // "Orifice.CarriedVolumeFlow"
        #endregion

        Assert.True(new FileInfo(path).Length > 5000);
        File.Delete(path);
        Assert.Equal("Contents", first);
        Assert.Single(carried.SheetNames);
        Assert.Equal("Orifice.CarriedVolumeFlow", only);
    }

    [Fact]
    public void AssessmentAsWorkbook()
    {
        string path = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid()}.xlsx");
        FuelSystem system = BundledCar.System;
        OperatingPoint point = BundledCar.Points[0];
        #region Assessment
        var assessment = new SystemAssessment(system, [point]);
        Workbook book = Workbook.FromAssessment(assessment);
        string sheets = string.Join(", ", book.SheetNames); // "Assessment, cranking, cold, low voltage, Findings"
        book.WriteFile(path);
        #endregion

        Assert.True(new FileInfo(path).Length > 5000);
        File.Delete(path);
        Assert.Equal("Assessment, cranking, cold, low voltage, Findings", sheets);
    }
}

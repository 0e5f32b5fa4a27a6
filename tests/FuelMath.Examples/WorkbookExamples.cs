using System.Collections.Immutable;
using FuelMath.Formulas;
using FuelMath.Workbooks;

namespace FuelMath.Examples;

public sealed class WorkbookExamples
{
    [Fact]
    public void FormulaAsCells()
    {
        #region Cells
        // 800 cm3/min at 3 bar, asked for at 4 bar: the inputs stand in B1 to B5, steps from B6 on.
        FormulaInfo carried = FormulaCatalogue.Named("Orifice.CarriedVolumeFlow");
        SpreadsheetText[] inputs = [.. Enumerable.Range(1, 5).Select(row => SpreadsheetText.Input($"B{row}"))];
        ImmutableArray<SpreadsheetCell> cells = carried.At<SpreadsheetText>(inputs).ToCells(step => $"B{6 + step}");
        #endregion

        Assert.Equal("B6 =B1*SQRT(B4/B2*(B3/B5))", string.Join("; ", cells));
    }

    [Fact]
    public void TopicAsWorkbook()
    {
        string path = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid()}.xlsx");
        #region Topic
        Workbook openings = Workbook.FromTopic(FormulaTopic.Openings, FormulaUnits.Customary);
        openings.WriteFile(path);

        // One formula, filled with numbers of your own.
        Workbook carried = Workbook.FromFormula(
            FormulaCatalogue.Named("Orifice.CarriedVolumeFlow"),
            FormulaUnits.Customary,
            [800, 300, 740, 400, 740]
        );
        #endregion

        Assert.True(new FileInfo(path).Length > 5000);
        File.Delete(path);
        Assert.Equal("Contents", openings.SheetNames[0]);
        Assert.Equal("Orifice.CarriedVolumeFlow", Assert.Single(carried.SheetNames));
    }
}

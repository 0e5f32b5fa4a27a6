using UnitsNet;

namespace FuelMath.Examples;

/// <summary>The sheet of an assessment, on paper and as files. The data are invented.</summary>
public sealed class SheetExamples
{
    [Fact]
    public void Sheet()
    {
        SystemAssessment assessment = Assess();

        #region Sheet
        TuningSheet sheet = TuningSheet.FromDated(assessment, new DateOnly(2026, 11, 20));

        Verdict.Outcome verdict = sheet.Stages[0].Kind; // DoNotRun
        foreach (string line in sheet.ToLines(TuningSheet.PageWidth))
        {
            Console.WriteLine(line); // SHEET FOR TUNING, VERDICT, what to do, then the tables
        }
        #endregion

        Assert.Equal(assessment.Verdict.Kind, sheet.Stages[0].Kind);
    }

    [Fact]
    public void Files()
    {
        var sheet = new TuningSheet(Assess());

        #region Files
        SheetTable table = sheet.Tables[0];
        string csv = table.ToCsv(); // flow,fluid,at [degC],across it [bar],...
        SheetTable back = SheetTable.FromCsv(table.Name, csv);
        decimal? volumeFlow = back.Rows[0][4].Number; // 570 cm3/min
        #endregion

        Assert.Equal(table.Rows[0][4].Number, volumeFlow);
    }

    [Fact]
    public void Tables()
    {
        SystemAssessment assessment = Assess();

        #region Tables
        AssessmentTables tables = new(assessment);
        int count = tables.All.Length; // 10
        foreach (SheetTable table in tables.All)
        {
            Console.WriteLine(string.Join(Environment.NewLine, table.ToLines(TuningSheet.PageWidth)));
        }
        #endregion

        Assert.Contains(tables.All, t => t.Name == "path-pressures");
    }

    [Fact]
    public void Findings()
    {
        SystemAssessment assessment = Assess();

        #region Findings
        string gravest = assessment.Findings[0].What; // "Fuel boils at 'tank'"
        foreach (SystemAssessment.GroupedFinding finding in assessment.Findings)
        {
            string where = string.Join("; ", finding.Occurrences.Select(o => $"{o.Place}: {o.Finding.Value}"));
            Console.WriteLine($"{finding.Severity}: {finding.What} ({where}). {finding.Action}");
        }
        #endregion

        Assert.Equal("Fuel boils at 'tank'", gravest);
    }

    private static SystemAssessment Assess() => new(BundledCar.System, BundledCar.Points);
}

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
        decimal? volumeFlow = back.Rows[0][4].Number; // cm3/min
        #endregion

        Assert.Equal(table.Rows[0][4].Number, volumeFlow);
    }

    [Fact]
    public void Findings()
    {
        SystemAssessment assessment = Assess();

        #region Findings
        foreach (SystemAssessment.GroupedFinding finding in assessment.Findings)
        {
            string where = string.Join("; ", finding.Occurrences.Select(o => $"{o.Place}: {o.Finding.Value}"));
            Console.WriteLine($"{finding.Severity}: {finding.What} ({where}). {finding.Action}");
        }
        #endregion

        Assert.NotEmpty(assessment.Findings);
    }

    private static SystemAssessment Assess() =>
        new(
            SystemExamples.Build(),
            [
                new(
                    "cruise",
                    RotationalSpeed.FromRevolutionsPerMinute(2500),
                    new IntakeAir(
                        manifold: new AbsolutePressure(Pressure.FromKilopascals(55)),
                        ambient: new AbsolutePressure(Pressure.FromKilopascals(100)),
                        charge: Temperature.FromDegreesCelsius(30)
                    ),
                    fuel: Temperature.FromDegreesCelsius(25),
                    supply: ElectricPotential.FromVolts(13.8),
                    FuelCommand.HoldLambda(Lambda.FromRatio(1))
                ),
            ]
        );
}

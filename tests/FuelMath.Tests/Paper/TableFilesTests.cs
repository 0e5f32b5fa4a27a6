using System.Globalization;
using System.Text.Json;
using FuelMath.Samples.Assessment;

namespace FuelMath.Tests.Paper;

/// <summary>Every table of the bundled systems, as CSV and JSON, gives back the numbers that were printed.</summary>
public sealed class TableFilesTests
{
    public static TheoryData<string> Names => BundledRuns.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryTable_ReadBack_HoldsTheSameCells(string name)
    {
        SheetTable[] tables = [.. SheetFolder.Tables(BundledRuns.Of(name))];
        Assert.InRange(tables.Length, 15, 40);
        Assert.All(
            tables,
            table =>
            {
                AssertSame(table, SheetTable.FromCsv(table.Name, table.ToCsv()));
                AssertSame(table, SheetTable.FromJson(table.ToJson()));
            }
        );
    }

    /// <summary>Read by another reader than ours: numbers are numbers of JSON, and those that a print shows.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void EveryNumber_InJson_IsThatOfThePrint(string name) =>
        Assert.All(
            SheetFolder.Tables(BundledRuns.Of(name)),
            table =>
            {
                using var read = JsonDocument.Parse(table.ToJson());
                JsonElement rows = read.RootElement.GetProperty("rows");
                for (int r = 0; r < table.Rows.Length; r++)
                {
                    for (int c = 0; c < table.Columns.Length; c++)
                    {
                        JsonElement cell = rows[r][c];
                        SheetTable.Cell printed = table.Rows[r][c];
                        Assert.Equal(
                            printed.Text,
                            cell.ValueKind switch
                            {
                                JsonValueKind.Number => cell.GetRawText(),
                                JsonValueKind.Null => "",
                                _ => cell.GetString(),
                            }
                        );
                        Assert.Equal(table.Columns[c].IsNumber && !printed.IsEmpty, printed.Number is not null);
                    }
                }
            }
        );

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryPrintedTable_ShowsEachCell(string name) =>
        Assert.All(
            SheetFolder.Tables(BundledRuns.Of(name)),
            table =>
            {
                string text = Squeezed(string.Concat(table.ToLines(TuningSheet.PageWidth)));
                Assert.All(
                    table.Rows.SelectMany(r => r).Where(c => c.Number is not null),
                    c => Assert.Contains(c.Text, text, StringComparison.Ordinal)
                );
                Assert.All(
                    table.ToLines(TuningSheet.PageWidth),
                    l => Assert.InRange(l.Length, 0, TuningSheet.PageWidth)
                );
            }
        );

    /// <summary>Names are names of files anywhere, and no two tables share one.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Names_AreThoseOfFiles_AndDiffer(string name)
    {
        string[] names = [.. SheetFolder.Tables(BundledRuns.Of(name)).Select(t => t.Name)];
        Assert.Equal(names.Length, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(
            names,
            n => Assert.True(n.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-'), n)
        );
    }

    /// <summary>A point's name heads a column: brackets, which hold units in a file, and repeated names do no harm.</summary>
    [Fact]
    public void PointsWithBracketsAndEqualNames_AreReadBack()
    {
        SystemAssessment of = BundledRuns.Of("circuit-car").Sheet.Assessment;
        OperatingPoint point = of.Points[2].Point;
        OperatingPoint Named(string name) => new(name, point.Speed, point.Air, point.Fuel, point.Supply, point.Command);
        AssessmentTables tables = new(new(of.System, [Named("a [b]"), Named("a (b)"), Named("node"), Named("node")]));
        SheetTable path = tables.Evidence.First(t => t.Name == "path-pressures");
        Assert.Equal(["node", "a (b)", "a (b), 2", "node, 2", "node, 3"], path.Columns.Select(c => c.Name));
        Assert.All(
            tables.All,
            table =>
            {
                AssertSame(table, SheetTable.FromCsv(table.Name, table.ToCsv()));
                AssertSame(table, SheetTable.FromJson(table.ToJson()));
            }
        );
    }

    /// <summary>With uncertain inputs the table of shares stands in what is behind the verdict, and in the whole text.</summary>
    [Fact]
    public void SharesOfUncertainInputs_StandInTheAppendix()
    {
        SystemAssessment of = BundledRuns.Of("circuit-car").Sheet.Assessment;
        SystemAssessment uncertain = new SystemAssessment(of.System, [of.Points[2].Point]).WithUncertainInputs([
            UncertainInput.PumpFlow(
                UnitsNet.Ratio.FromPercent(5),
                Statistics.SpreadShape.Normal,
                new DataSource("Workshop-class", "invented")
            ),
        ]);
        Assessed assessed = Assessed.Of(uncertain, null, null, null);
        SheetTable shares = assessed.Tables.Evidence.Single(t => t.Name == "scatter");
        Assert.Contains(shares.Title, AllText.Of(assessed));
        string page = new HtmlPage(assessed).ToText();
        Assert.True(
            page.IndexOf("<h2>Appendix", StringComparison.Ordinal)
                < page.IndexOf(shares.Title, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void AssessmentTables_OfNothing_IsRefused() =>
        Assert.Throws<ArgumentNullException>("assessment", () => new AssessmentTables(null!));

    private static string Squeezed(string text) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $" {string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries))} "
        );

    private static void AssertSame(SheetTable one, SheetTable other)
    {
        Assert.Equal(
            one.Columns.Select(c => (c.Name, c.Unit, c.IsNumber)),
            other.Columns.Select(c => (c.Name, c.Unit, c.IsNumber))
        );
        Assert.Equal(
            one.Rows.SelectMany(r => r).Select(c => (c.Number, c.Text)),
            other.Rows.SelectMany(r => r).Select(c => (c.Number, c.Text))
        );
    }
}

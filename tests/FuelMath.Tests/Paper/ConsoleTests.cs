using FuelMath.Samples.Assessment;

namespace FuelMath.Tests.Paper;

/// <summary>What the console says at once: verdict, dangers and numbers to enter in 60 lines of 100 columns.</summary>
public sealed class ConsoleTests
{
    private static readonly string[] Files = ["out/x/assessment.html", "out/x/sheet.txt", "out/x/tables"];

    public static TheoryData<string> Names => BundledRuns.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Summary_FitsAScreen_AndSaysVerdictDangersAndNumbers(string name)
    {
        Assessed assessed = BundledRuns.Of(name);
        SystemAssessment assessment = assessed.Sheet.Assessment;
        IReadOnlyList<string> lines = new ConsoleSummary(assessed.Sheet, Files).Text();
        Fits(lines);
        Assert.Contains(Say.Verdict(assessment.Verdict.Kind).ToUpperInvariant(), lines[0], StringComparison.Ordinal);
        string all = string.Join(' ', string.Join(' ', lines).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.All(assessment.Points, p => Assert.Contains(p.Point.Name, all, StringComparison.Ordinal));
        Assert.All(
            assessment.Findings.Where(f => f.Severity >= Severity.Warning),
            f =>
            {
                Assert.Contains(f.What, all, StringComparison.Ordinal);
                Assert.Contains(
                    f.Occurrences,
                    o => all.Contains($"{f.What}: {o.Finding.Value}", StringComparison.Ordinal)
                );
            }
        );
        Assert.All(
            assessed.Sheet.Stages,
            s => Assert.Contains(s.Stage.ToUpperInvariant() + ":", all, StringComparison.Ordinal)
        );
        Assert.Contains("--all", lines[^1], StringComparison.Ordinal);
    }

    /// <summary>So many points that no screen holds them: what is left off is counted, dangers stay.</summary>
    [Fact]
    public void Summary_OfManyPoints_StillFits()
    {
        SystemAssessment few = BundledRuns.Of("time-trial-car").Sheet.Assessment;
        SystemAssessment many = new(
            few.System,
            Enumerable.Range(0, 8).SelectMany(_ => few.Points).Select(p => p.Point)
        );
        IReadOnlyList<string> lines = new ConsoleSummary(new TuningSheet(many), Files).Text();
        Fits(lines);
        Assert.Contains(lines, l => l.Contains("more points: see the page", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.Contains("DANGER", StringComparison.Ordinal));
    }

    [Fact]
    public void FirstAnswer_OfABrief_FitsAScreen()
    {
        BriefAssessment first = new(BriefDocument.ReadFile(BundledRuns.PathOf("circuit-car-brief.json")));
        Fits([.. BriefReport.Text(first)]);
        Assert.InRange(File.ReadAllLines(BundledRuns.PathOf("circuit-car-brief.json")).Length, 1, 39);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void AllText_HoldsEveryTable_InThePagesWidth(string name)
    {
        string[] lines = [.. AllText.Of(BundledRuns.Of(name))];
        Assert.All(lines, l => Assert.InRange(l.Length, 0, ConsoleSummary.Width));
        Assert.All(
            SheetFolder.Tables(BundledRuns.Of(name)),
            t => Assert.Contains(lines, l => t.Title.StartsWith(l.TrimEnd(), StringComparison.Ordinal) && l.Length > 0)
        );
    }

    private static void Fits(IReadOnlyList<string> lines)
    {
        Assert.InRange(lines.Count, 1, ConsoleSummary.Lines);
        Assert.All(lines, l => Assert.InRange(l.Length, 0, ConsoleSummary.Width));
    }
}

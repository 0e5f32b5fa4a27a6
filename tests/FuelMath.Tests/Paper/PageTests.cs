using System.Text.RegularExpressions;
using FuelMath.Samples.Assessment;

namespace FuelMath.Tests.Paper;

/// <summary>The page in the order in which somebody acts on it; what is drawn has words, and nothing is drawn of nothing.</summary>
public sealed partial class PageTests
{
    private static readonly string[] Order =
    [
        "<p class=\"verdict",
        "<table class=\"verdicts\"",
        "<h2>Dangers and warnings",
        "<h2>Sheet for tuning",
        "<h2>Operating points",
        "<h2>Pictures",
        "<h2>Appendix",
        "<h2>Cautions",
    ];

    public static TheoryData<string> Names => BundledRuns.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Page_HasItsPartsInOrder(string name)
    {
        string page = Page(name);
        int[] places = [.. Order.Select(o => page.IndexOf(o, StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
        Assert.DoesNotContain("NaN", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<pre", page, StringComparison.Ordinal);
    }

    /// <summary>Each table of the sheet and of the appendix once, each danger and warning once, each note once.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Page_HoldsEveryTableAndFindingOnce(string name)
    {
        Assessed assessed = BundledRuns.Of(name);
        string page = Page(name);
        Assert.All(
            SheetFolder.Tables(assessed).Where(t => t.Name is not ("verdicts" or "findings")),
            t => Assert.Single(Regex.Matches(page, $"id=\"table-{t.Name}\""))
        );
        Assert.All(
            assessed.Sheet.Assessment.Findings.Where(f => f.Severity >= Severity.Warning),
            f => Assert.Contains($"{f.Severity}: {Html.Escape(f.What)}.", page, StringComparison.Ordinal)
        );
        Assert.All(
            assessed.Sheet.Assessment.Findings.Where(f => f.Severity < Severity.Warning),
            f => Assert.Contains($"<li>{Html.Escape(f.What)} (", page, StringComparison.Ordinal)
        );
    }

    /// <summary>A finding that holds at several points is one finding: what differs from point to point is its value.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Findings_ThatDifferInANumberOnly_AreOne(string name) =>
        Assert.Empty(
            BundledRuns
                .Of(name)
                .Sheet.Assessment.Findings.GroupBy(f => (f.Severity, f.Code, f.Part, Number().Replace(f.What, "#")))
                .Where(g => g.Count() > 1)
                .Select(g => g.Key)
        );

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryPicture_HasWords_AndTakesThePagesColors(string name)
    {
        string page = Page(name);
        MatchCollection figures = Figure().Matches(page);
        Assert.InRange(figures.Count, 4, 12);
        Assert.All(
            figures,
            f =>
            {
                Assert.Matches("role=\"img\" aria-label=\"[^\"]{40,}\"", f.Value);
                Assert.Contains("<figcaption>", f.Value, StringComparison.Ordinal);
                Assert.Contains("var(--", f.Value, StringComparison.Ordinal);
                Assert.DoesNotMatch("(?:fill|stroke|color)=\"(?:#|rgb|black|white)", f.Value);
            }
        );
    }

    /// <summary>A pump that works has its picture, by name; the path names every part.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Pictures_NameEveryPumpAndPart(string name)
    {
        FuelSystem system = BundledRuns.Of(name).Sheet.Assessment.System;
        string page = Page(name);
        string path = Figure()
            .Matches(page)
            .Select(f => f.Value)
            .Single(f => f.StartsWith("<figure class=\"path", StringComparison.Ordinal));
        Assert.All(system.Network.Lines, l => Assert.Contains(Html.Escape(l.Name), path, StringComparison.Ordinal));
        Assert.All(
            system.Network.Lines.Where(l => l.Part is Pump),
            l => Assert.Contains($"({Html.Escape(l.Name)}) at", page, StringComparison.Ordinal)
        );
    }

    /// <summary>A point beyond all data: no empty chart, and no word of nothing found under an error.</summary>
    [Fact]
    public void Page_OfNoSolvedPoint_DrawsNothingAndSaysWhatIsMissing()
    {
        SystemAssessment of = BundledRuns.Of("circuit-car").Sheet.Assessment;
        OperatingPoint beyond = of.Points[5]
            .Point.At(UnitsNet.RotationalSpeed.FromRevolutionsPerMinute(20_000), of.Points[5].Point.Air.Manifold);
        Assessed assessed = Assessed.Of(new SystemAssessment(of.System, [beyond]), null, null, null);
        string page = new HtmlPage(assessed).ToText();
        Assert.Equal(Verdict.Outcome.NotKnown, assessed.Sheet.Assessment.Verdict.Kind);
        Assert.DoesNotContain("<svg", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<figure", page, StringComparison.Ordinal);
        Assert.DoesNotContain("None among", page, StringComparison.Ordinal);
        Assert.Contains(
            "No point was solved, so there is nothing to draw. What is missing:",
            page,
            StringComparison.Ordinal
        );
        Assert.Contains("The data do not reach this point", page, StringComparison.Ordinal);
        Assert.DoesNotContain(assessed.Tables.All, t => t.Rows.IsEmpty);
        Assert.DoesNotContain(
            new ConsoleSummary(assessed.Sheet, ["x"]).Text(),
            l => l.Contains("No danger", StringComparison.Ordinal)
        );
    }

    /// <summary>A set that must not run says so in place of "enter", on the page as on the sheet.</summary>
    [Fact]
    public void SheetOfASystemThatMustNotRun_SaysSoFirst()
    {
        string page = Page("time-trial-car");
        int sheet = page.IndexOf("<h2>Sheet for tuning", StringComparison.Ordinal);
        int table = page.IndexOf("<table", sheet, StringComparison.Ordinal);
        string head = page[sheet..table];
        Assert.Contains("DO NOT RUN THE ENGINE LIKE THIS", head, StringComparison.Ordinal);
        Assert.DoesNotContain("Enter these numbers", page, StringComparison.Ordinal);
    }

    private static string Page(string name) => new HtmlPage(BundledRuns.Of(name)).ToText();

    [GeneratedRegex("<figure.*?</figure>", RegexOptions.Singleline)]
    private static partial Regex Figure();

    [GeneratedRegex("(?<![A-Za-z'])[0-9]+([.][0-9]+)?(?![A-Za-z'])")]
    private static partial Regex Number();
}

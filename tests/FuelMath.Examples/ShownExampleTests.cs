namespace FuelMath.Examples;

/// <summary>Each example that a page shows compiles as shown, with the usings and givens of its page and nothing else.</summary>
public sealed class ShownExampleTests
{
    /// <summary>Examples without a result in a comment, and why.</summary>
    private static readonly Dictionary<string, string> WithoutResult = [];

    /// <summary>A reader sees what comes out: each example that computes shows a result behind the statement that gives it.</summary>
    [Fact]
    public void EveryExample_ShowsAResult()
    {
        string[] without =
        [
            .. ShownExample
                .All.Where(e => !e.IsMembers)
                .Select(e => e.Name)
                .Distinct()
                .Except(ShownResults.All.WithResult),
        ];

        string[] unlisted = [.. without.Except(WithoutResult.Keys)];
        Assert.True(unlisted.Length == 0, string.Join(Environment.NewLine, unlisted));
        Assert.Equal([], WithoutResult.Keys.Except(without));
    }

    /// <summary>What stands in a comment behind a statement is what the statement gave, to the last digit shown.</summary>
    [Fact]
    public void EveryExample_GivesWhatItShows()
    {
        IReadOnlyList<string> wrong = ShownResults.All.Wrong;

        Assert.True(wrong.Count == 0, string.Join(Environment.NewLine, wrong));
    }

    [Fact]
    public void EveryExample_CompilesAsShown()
    {
        string[] wrong = [.. from wrongly in ShownExample.Errors() select $"{wrongly.Example.Name}: {wrongly.Error}"];

        Assert.True(wrong.Length == 0, string.Join(Environment.NewLine, wrong));
    }

    /// <summary>The table of everyday questions gives the numbers of the examples below it.</summary>
    [Fact]
    public void Questions_GiveTheNumbersOfTheirExamples()
    {
        const string page = "docs/start/questions.md";
        string code = string.Concat(ShownExample.All.Where(e => e.Page == page).Select(e => e.Code));
        string[][] rows =
        [
            .. File.ReadLines(Path.Combine(Checkout.Root, page))
                .Where(l => l.StartsWith("| [", StringComparison.Ordinal))
                .Select(l => l.Split('|', StringSplitOptions.TrimEntries)),
        ];

        Assert.InRange(rows.Length, 20, 60);
        Assert.All(
            rows,
            row =>
                Assert.All(
                    ShownResult.Numbers(row[3]),
                    n => Assert.True(code.Contains(n.Number, StringComparison.Ordinal), $"{row[1]} {n.Number}")
                )
        );
    }

    /// <summary>Fewer than this finds would mean that the search for examples broke.</summary>
    [Fact]
    public void Examples_AreFound() => Assert.True(ShownExample.All.Length > 100, $"{ShownExample.All.Length}");
}

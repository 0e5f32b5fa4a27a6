namespace FuelMath.Tests.House;

/// <summary>Each room of the library has its tests and its page.</summary>
public sealed class RoomsTests
{
    /// <summary>Rooms that another page covers: helpers of the house, and the columns, which stand beside the formulas.</summary>
    private static readonly HashSet<string> WithoutAPage =
    [
        "Internal",
        "Findings",
        "Sources",
        "Text",
        "Shapes",
        "Columns",
    ];

    /// <summary>Rooms that are tested through those that use them.</summary>
    private static readonly HashSet<string> WithoutTests = ["Internal", "Findings", "Sources"];

    private static IEnumerable<string> Rooms =>
        SourceCode.Trees.Select(t => t.FilePath.Split('/')).Where(p => p.Length > 3).Select(p => p[2]).Distinct();

    [Fact]
    public void EveryRoom_HasTests() =>
        Offenders.None(
            Rooms.Where(r => !WithoutTests.Contains(r) && !Repository.Code($"tests/FuelMath.Tests/{r}/").Any())
        );

    [Fact]
    public void EveryRoom_HasAPage() =>
        Offenders.None(
            Rooms
                .Where(r => !WithoutAPage.Contains(r))
                .Select(r => $"docs/guide/{r.ToLowerInvariant()}.md")
                .Where(p => !Repository.Files.Contains(p))
        );

    /// <summary>A page says where its formulas and figures come from.</summary>
    [Fact]
    public void EveryPage_NamesItsSources() =>
        Offenders.None(
            Repository
                .Files.Where(f =>
                    f.StartsWith("docs/guide/", StringComparison.Ordinal) && f.EndsWith(".md", StringComparison.Ordinal)
                )
                .Where(f => !Repository.Read(f).Contains("ource", StringComparison.Ordinal))
        );
}

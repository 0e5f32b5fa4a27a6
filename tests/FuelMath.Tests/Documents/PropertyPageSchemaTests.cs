using FuelMath.Tests.House;

namespace FuelMath.Tests.Documents;

/// <summary>The page of all properties is that of the schemas, and none is missing on it.</summary>
public sealed class PropertyPageSchemaTests
{
    private const string Page = "docs/guide/every-property.md";
    private const string WholePage = "docs/guide/whole-documents.md";

    [Fact]
    public void Page_IsThatOfTheSchemas()
    {
        string page = PropertyPage.Text();
        if (Environment.GetEnvironmentVariable("WRITE_SCHEMAS") is not null)
        {
            File.WriteAllText(Path.Combine(Repository.Root, Page), page);
        }

        Assert.Equal(page, Repository.Read(Page).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void WholeDocuments_AreExplainedAsTheyAre()
    {
        string page = WholeDocumentPage.Text();
        if (Environment.GetEnvironmentVariable("WRITE_SCHEMAS") is not null)
        {
            File.WriteAllText(Path.Combine(Repository.Root, WholePage), page);
        }

        Assert.Equal(page, Repository.Read(WholePage).ReplaceLineEndings("\n"));
    }

    /// <summary>Counted from the schema's own list of definitions, not by the walk that makes the page.</summary>
    [Fact]
    public void Page_HoldsEveryProperty()
    {
        string page = Repository.Read(Page).ReplaceLineEndings("\n");
        Dictionary<string, string> sections = page.Split("\n### ")
            .Skip(1)
            .ToDictionary(s => s[..s.IndexOf('\n', StringComparison.Ordinal)], s => s, StringComparer.Ordinal);

        HashSet<string> all =
        [
            .. PropertyPage.Kinds.SelectMany(k => new SchemaWalk(PropertyPage.Schema(k.Schema)).Properties),
        ];

        Assert.True(all.Count > 500, $"{all.Count}");
        Offenders.None(
            all.Where(p =>
                !sections.TryGetValue(p[..p.IndexOf('.', StringComparison.Ordinal)], out string? section)
                || !section.Contains(
                    $"\n  \"{p[(p.IndexOf('.', StringComparison.Ordinal) + 1)..]}\": ",
                    StringComparison.Ordinal
                )
            )
        );
    }
}

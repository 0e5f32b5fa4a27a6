using System.Text.RegularExpressions;
using FuelMath.Formulas;

namespace FuelMath.Tests.House;

/// <summary>DocFX shows a missing region as nothing at all and calls it a success; these tests do not.</summary>
public sealed partial class DocsTests
{
    private static IEnumerable<string> Pages =>
        Repository.Files.Where(f => f.EndsWith(".md", StringComparison.Ordinal));

    [Fact]
    public void EverySnippet_NamesARegionThatExists() =>
        Offenders.None(
            from snippet in Repository.Find(Snippet(), [.. Pages, .. Repository.Code("src/")])
            let file = Resolve(snippet.Path, snippet.Match.Groups["file"].Value)
            let region = snippet.Match.Groups["region"].Value
            where string.IsNullOrWhiteSpace(Repository.Region(file, region))
            select $"{snippet.Path}: {file} has no region {region}"
        );

    [Fact]
    public void EveryRelativeLink_LeadsToAFile() =>
        Offenders.None(
            from link in Repository.Find(Link(), Pages)
            let target = link.Match.Groups["target"].Value
            where target.Length > 0 && !target.Contains(':', StringComparison.Ordinal)
            let file = Resolve(link.Path, target)
            where
                !File.Exists(Path.Combine(Repository.Root, file))
                && !Directory.Exists(Path.Combine(Repository.Root, file))
            // The reference is built from the code's comments.
            where !file.StartsWith("docs/api/", StringComparison.Ordinal)
            select $"{link.Path}: {target}"
        );

    /// <summary>A page that no table of contents names is built but never found.</summary>
    [Fact]
    public void EveryGuidePage_IsInTheTableOfContents()
    {
        string contents = Repository.Read("docs/guide/toc.yml");

        Offenders.None(
            Repository
                .Files.Where(f =>
                    f.StartsWith("docs/guide/", StringComparison.Ordinal) && f.EndsWith(".md", StringComparison.Ordinal)
                )
                .Where(f => !contents.Contains($"href: {Path.GetFileName(f)}", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void EveryException_IsOnThePageOfExceptions()
    {
        string page = Repository.Read("docs/start/exceptions.md");

        Offenders.None(
            new[] { typeof(FuelSystem), typeof(FuelMath.Exercises.Exercise), typeof(FuelMath.Workbooks.Workbook) }
                .SelectMany(t => t.Assembly.GetExportedTypes())
                .Where(t => t.IsSubclassOf(typeof(Exception)))
                .Select(t => $"<xref:{t.FullName}>")
                .Where(t => !page.Contains(t, StringComparison.Ordinal))
        );
    }

    /// <summary>The page of formulas lists each class that holds one.</summary>
    [Fact]
    public void EveryClassOfFormulas_IsOnThePageOfFormulas()
    {
        string page = Repository.Read("docs/guide/formulas.md");

        Offenders.None(
            FormulaCatalog
                .All.Select(f => $"<xref:FuelMath.Formulas.{f.Name.Split('.')[0]}>")
                .Distinct()
                .Where(t => !page.Contains(t, StringComparison.Ordinal))
        );
    }

    /// <summary>A page of any section is in that section's navigation.</summary>
    [Theory]
    [InlineData("start")]
    [InlineData("teach")]
    public void EveryPage_IsInTheNavigationOfItsSection(string section)
    {
        string contents = Repository.Read($"docs/{section}/toc.yml");

        Offenders.None(
            Repository
                .Files.Where(f =>
                    f.StartsWith($"docs/{section}/", StringComparison.Ordinal)
                    && f.EndsWith(".md", StringComparison.Ordinal)
                )
                .Where(f => !contents.Contains($"href: {Path.GetFileName(f)}", StringComparison.Ordinal))
        );
    }

    private static string Resolve(string from, string target) =>
        Path.GetRelativePath(
                Repository.Root,
                Path.GetFullPath(target, Path.Combine(Repository.Root, Path.GetDirectoryName(from)!))
            )
            .Replace('\\', '/');

    [GeneratedRegex(
        """
            \[!code-csharp\[[^\]]*\]\((?<file>[^#?)]+)\#(?<region>[^)]+)\)\]
            |<code\ source="(?<file>[^"]+)"\ region="(?<region>[^"]+)"\s*/>
            """,
        RegexOptions.IgnorePatternWhitespace
    )]
    private static partial Regex Snippet();

    [GeneratedRegex(@"(?<!code-csharp\[[^\]]*)\]\((?<target>[^#)\s]*)(#[^)]*)?\)")]
    private static partial Regex Link();
}

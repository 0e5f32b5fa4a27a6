using System.Text.RegularExpressions;

namespace FuelMath.Tests.House;

/// <summary>Each picture and each included table says in DEVELOPERS.md how it is made again.</summary>
public sealed class PicturesTests
{
    private static readonly string[] Folders = ["docs/images", "docs/includes"];

    private static string Section
    {
        get
        {
            string page = Repository.Read("DEVELOPERS.md").ReplaceLineEndings("\n");
            int start = page.IndexOf("## Pictures and measured tables", StringComparison.Ordinal);
            return page[start..page.IndexOf("\n## ", start + 1, StringComparison.Ordinal)];
        }
    }

    [Fact]
    public void EveryPictureAndIncludedTable_IsListed()
    {
        string section = Section;
        Offenders.None(
            Folders
                .SelectMany(f => Directory.EnumerateFileSystemEntries(Path.Combine(Repository.Root, f)))
                .Select(f => Path.GetRelativePath(Repository.Root, f).Replace('\\', '/'))
                .Where(f => !section.Contains($"`{f}`", StringComparison.Ordinal))
        );
    }

    /// <summary>Files and test classes that the list names are there.</summary>
    [Fact]
    public void WhatIsListed_IsThere()
    {
        string[] names = [.. Regex.Matches(Section, "`([^` ]+)`").Select(m => m.Groups[1].Value).Distinct()];
        string[] classes =
        [
            .. Directory
                .EnumerateFiles(Path.Combine(Repository.Root, "tests"), "*.cs", SearchOption.AllDirectories)
                .Select(f => Path.GetFileNameWithoutExtension(f)),
        ];
        Offenders.None(
            names.Where(n =>
                (n.StartsWith("docs/", StringComparison.Ordinal) && !Path.Exists(Path.Combine(Repository.Root, n)))
                || (Regex.IsMatch(n, "(Tests|Examples)$") && !classes.Contains(n))
            )
        );
    }
}

using System.Reflection;
using System.Text.RegularExpressions;

namespace FuelMath.Tests.House;

/// <summary>The checkout that these tests were built from.</summary>
internal static class Repository
{
    private static readonly string[] NotOurs =
    [
        ".git",
        ".vs",
        ".idea",
        "bin",
        "obj",
        "_site",
        "artifacts",
        "out",
        "TestResults",
        "BenchmarkDotNet.Artifacts",
        "node_modules",
    ];

    internal static string Root { get; } =
        typeof(Repository)
            .Assembly.GetCustomAttributes<AssemblyMetadataAttribute>()
            .Single(a => a.Key == "RepoRoot")
            .Value!;

    /// <summary>Every file that is written by hand: path relative to the root, with forward slashes.</summary>
    internal static IReadOnlyList<string> Files { get; } =
    [.. Walk(Root).Select(p => Path.GetRelativePath(Root, p).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    /// <summary>The keys of <c>docs/sources.md</c>, in the order of the file.</summary>
    internal static IReadOnlyList<string> SourceKeys { get; } =
    [
        .. File.ReadLines(Path.Combine(Root, "docs", "sources.md"))
            .Where(l => l.StartsWith("## ", StringComparison.Ordinal))
            .Select(l => l[3..].Trim()),
    ];

    internal static string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    /// <summary>The code files under a folder.</summary>
    internal static IEnumerable<string> Code(string folder) =>
        Files.Where(p => p.StartsWith(folder, StringComparison.Ordinal) && p.EndsWith(".cs", StringComparison.Ordinal));

    /// <summary>The text between a region's marks, without its common indentation; null when there is none.</summary>
    internal static string? Region(string path, string name)
    {
        if (!File.Exists(Path.Combine(Root, path)))
        {
            return null;
        }

        string[] lines = Read(path).Split('\n');
        int start = Array.FindIndex(lines, l => l.Trim() == $"#region {name}");
        int end =
            start < 0
                ? -1
                : Array.FindIndex(lines, start, l => l.Trim().StartsWith("#endregion", StringComparison.Ordinal));
        if (end < 0)
        {
            return null;
        }

        string[] body = lines[(start + 1)..end];
        int indent = body.Where(l => l.Trim().Length > 0)
            .Select(l => l.Length - l.TrimStart().Length)
            .DefaultIfEmpty()
            .Min();
        return string.Join('\n', body.Select(l => l.Length >= indent ? l[indent..] : l.TrimStart())).Trim('\n');
    }

    /// <summary>All matches of a pattern in the files, with the file each stands in.</summary>
    internal static IEnumerable<(string Path, Match Match)> Find(Regex pattern, IEnumerable<string> paths) =>
        paths.SelectMany(p => pattern.Matches(Read(p)).Select(m => (p, m)));

    private static IEnumerable<string> Walk(string folder) =>
        Directory
            .EnumerateFiles(folder)
            .Concat(
                Directory
                    .EnumerateDirectories(folder)
                    .Where(d => !NotOurs.Contains(Path.GetFileName(d)) && !Generated(d))
                    .SelectMany(Walk)
            );

    private static bool Generated(string folder) => Path.GetRelativePath(Root, folder).Replace('\\', '/') == "docs/api";
}

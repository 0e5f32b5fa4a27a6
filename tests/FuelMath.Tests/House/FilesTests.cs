using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace FuelMath.Tests.House;

/// <summary>What the files of the checkout hold, whatever language they are in.</summary>
public sealed partial class FilesTests
{
    /// <summary>A file stays readable in one sitting.</summary>
    private const int LongestFile = 300;

    /// <summary>Tests stand one after the other and are looked up, not read through.</summary>
    private const int LongestTestFile = 500;

    /// <summary>Longer files, and why.</summary>
    private static readonly Dictionary<string, string> LongFiles = new()
    {
        ["src/FuelMath/RefusalCode.cs"] = "one list of codes, each with its meaning, which is looked up",
    };

    private static readonly string[] TextEndings =
    [
        ".cs",
        ".md",
        ".json",
        ".csv",
        ".props",
        ".csproj",
        ".config",
        ".yml",
        ".sln",
        ".editorconfig",
        "/run",
        ".js",
        ".py",
        ".html",
    ];

    [Fact]
    public void NoCodeFile_IsTooLong() =>
        Offenders.None(
            Repository
                .Code("")
                .Where(f => !LongFiles.ContainsKey(f))
                .Select(f => (File: f, Lines: Repository.Read(f).Count(c => c == '\n')))
                .Where(f =>
                    f.Lines > (f.File.StartsWith("tests/", StringComparison.Ordinal) ? LongestTestFile : LongestFile)
                )
                .Select(f => $"{f.File}: {f.Lines} lines")
        );

    [Fact]
    public void EveryLongFile_IsStillLong() =>
        Offenders.None(LongFiles.Keys.Where(f => Repository.Read(f).Count(c => c == '\n') <= LongestFile));

    [Fact]
    public void TheLibrary_StandsOnTwoPackages() =>
        Assert.Equal(
            ["MathNet.Numerics", "UnitsNet"],
            XDocument
                .Parse(Repository.Read("src/FuelMath/FuelMath.csproj"))
                .Descendants("PackageReference")
                // An analyzer takes part in the build and is no dependency.
                .Where(p => p.Attribute("PrivateAssets")?.Value != "all")
                .Select(p => p.Attribute("Include")!.Value)
                .Order(StringComparer.Ordinal)
        );

    /// <summary>The checkout works anywhere, so it names no folder of a machine and no place that packages come from.</summary>
    [Fact]
    public void NoFile_NamesAMachineOrARegistry() =>
        Offenders.None(
            Repository
                .Find(PlaceOfAMachine(), Repository.Files.Where(f => TextEndings.Any(f.EndsWith)))
                .Where(f => !f.Path.EndsWith(nameof(FilesTests) + ".cs", StringComparison.Ordinal))
                .Select(f => $"{f.Path}: {f.Match.Value}")
        );

    [Fact]
    public void NoFile_LeavesWorkUndone() =>
        Offenders.None(
            Repository
                .Find(Undone(), Repository.Files.Where(f => TextEndings.Any(f.EndsWith)))
                .Where(f => !f.Path.EndsWith(nameof(FilesTests) + ".cs", StringComparison.Ordinal))
                .Select(f => $"{f.Path}: {f.Match.Value}")
        );

    [Fact]
    public void NoTest_IsSkipped() =>
        Offenders.None(
            Repository
                .Find(SkippedTest(), Repository.Code("tests/"))
                .Where(f => !f.Path.EndsWith(nameof(FilesTests) + ".cs", StringComparison.Ordinal))
                .Select(f => f.Path)
        );

    [GeneratedRegex(
        """
            (?<![\w.~*)\]}"])/(work|tmp|home|root|mnt|Users)/\w
            |\b[A-Z]:\\\w
            |file://
            |(nuget|npmjs|pypi|crates|jfrog|artifactory|pkgs\.dev)\.(org|com|io|azure)
            |localhost|127\.0\.0\.1
            """,
        RegexOptions.IgnorePatternWhitespace
    )]
    private static partial Regex PlaceOfAMachine();

    [GeneratedRegex(@"\b(TODO|FIXME|HACK|XXX|NotImplementedException)\b")]
    private static partial Regex Undone();

    [GeneratedRegex("""(Fact|Theory|Property)\([^)]*\bSkip\s*=""")]
    private static partial Regex SkippedTest();
}

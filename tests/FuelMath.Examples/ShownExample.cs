using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace FuelMath.Examples;

/// <summary>An example as a page shows it: the page's usings, and the region.</summary>
internal sealed partial class ShownExample
{
    /// <summary>What a new console program of .NET 10 imports by itself.</summary>
    private const string ImplicitUsings =
        "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; "
        + "global using System.Net.Http; global using System.Threading; global using System.Threading.Tasks;";

    private static readonly ImmutableArray<MetadataReference> Platform =
    [
        .. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!)
            .Split(Path.PathSeparator)
            .Where(p => !Path.GetFileName(p).StartsWith("FuelMath.Examples", StringComparison.Ordinal))
            .Select(p => MetadataReference.CreateFromFile(p)),
    ];

    private ShownExample(string page, string file, string region, string usings, string given) =>
        (Page, Region, Usings, Given, (Before, Code)) = (page, region, usings, given, CodeOf(file, region));

    internal string Page { get; }

    internal string Region { get; }

    internal string Name => $"{Page}#{Region}";

    internal string Usings { get; }

    internal string Code { get; }

    /// <summary>The examples of the same method that stand before it, which it continues.</summary>
    internal string Before { get; }

    /// <summary>What the page says is given, as fields.</summary>
    internal string Given { get; }

    /// <summary>Whether it declares types or members, which the other examples of its page may use.</summary>
    internal bool IsMembers => Members().IsMatch(Code);

    /// <summary>Every example of every page, in order.</summary>
    internal static ImmutableArray<ShownExample> All { get; } = [.. Pages().SelectMany(Of)];

    /// <summary>
    /// What the compiler says of all examples, each the body of a method beside the members and givens that its page shows.
    /// They are compiled together, a file and a class for each, because that takes a tenth of the time.
    /// </summary>
    internal static IEnumerable<(ShownExample Example, string Error)> Errors()
    {
        Dictionary<SyntaxTree, ShownExample> trees = All.Select((e, i) => (Example: e, Tree: e.Program(i)))
            .ToDictionary(e => e.Tree, e => e.Example);
        return Compile(trees.Keys)
            .GetDiagnostics()
            .Where(d => d.Severity == DiagnosticSeverity.Error)
            .Select(d => (trees[d.Location.SourceTree!], d.GetMessage(CultureInfo.InvariantCulture)))
            .Distinct();
    }

    internal static CSharpCompilation Compile(IEnumerable<SyntaxTree> trees) =>
        CSharpCompilation.Create(
            "Shown",
            [.. trees, CSharpSyntaxTree.ParseText(ImplicitUsings)],
            Platform,
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary)
        );

    internal SyntaxTree Program(int number)
    {
        string members = string.Concat(
            All.Where(e => e.Page == Page && e.IsMembers).Select(e => e.Code + "\n").Distinct()
        );
        string body = IsMembers ? "" : Before + Code;
        return CSharpSyntaxTree.ParseText(
            $"{Usings}\ninternal static class Shown{number}\n{{\n{Given}\n{members}\nprivate static void Run()\n{{\n{body}\n}}\n}}"
        );
    }

    private static IEnumerable<string> Pages() =>
        Directory
            .EnumerateFiles(Path.Combine(Checkout.Root, "docs"), "*.md", SearchOption.AllDirectories)
            .Select(p => Path.GetRelativePath(Checkout.Root, p).Replace('\\', '/'))
            .Where(p => !p.StartsWith("docs/api/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

    private static IEnumerable<ShownExample> Of(string page)
    {
        string text = File.ReadAllText(Path.Combine(Checkout.Root, page)).ReplaceLineEndings("\n");
        string usings = UsingBlock().Match(text) is { Success: true } block ? block.Groups["usings"].Value : "";
        string given = string.Concat(
            GivenBlock()
                .Matches(text)
                .Select(m => Declaration().Replace(m.Groups["code"].Value, "private static readonly $0"))
        );
        foreach (Match snippet in Snippet().Matches(text))
        {
            string file = Path.GetRelativePath(
                    Checkout.Root,
                    Path.GetFullPath(
                        snippet.Groups["file"].Value,
                        Path.Combine(Checkout.Root, Path.GetDirectoryName(page)!)
                    )
                )
                .Replace('\\', '/');
            string region = snippet.Groups["region"].Value;
            yield return new(page, file, region, usings, given);
        }
    }

    private static (string Before, string Code) CodeOf(string file, string region)
    {
        string[] lines = File.ReadAllLines(Path.Combine(Checkout.Root, file));
        int start = Array.FindIndex(lines, l => l.Trim() == $"#region {region}");
        int end = Array.FindIndex(lines, start, l => l.Trim() == "#endregion");
        int method = Array.FindLastIndex(
            lines,
            start,
            l => l.Trim() is "[Fact]" or "{" && l.StartsWith("    {", StringComparison.Ordinal)
        );
        var before = new List<string>();
        bool inside = false;
        for (int i = Math.Max(method, 0); i < start; i++)
        {
            string mark = lines[i].Trim();
            if (mark.StartsWith("#region", StringComparison.Ordinal) || mark == "#endregion")
            {
                inside = mark != "#endregion";
            }
            else if (inside)
            {
                before.Add(lines[i]);
            }
        }

        return (string.Join('\n', before) + "\n", string.Join('\n', lines[(start + 1)..end]));
    }

    [GeneratedRegex("```csharp\n(?<usings>(using [^\n]+;\n)+)```")]
    private static partial Regex UsingBlock();

    [GeneratedRegex("```csharp\n// Given[^\n]*\n(?<code>[^`]*)```")]
    private static partial Regex GivenBlock();

    [GeneratedRegex(@"^(?=[A-Z])", RegexOptions.Multiline)]
    private static partial Regex Declaration();

    [GeneratedRegex(@"\A(\s*//[^\n]*\n)*\s*(private|internal|public) ")]
    private static partial Regex Members();

    [GeneratedRegex(@"\[!code-csharp\[[^\]]*\]\((?<file>[^#)]+)#(?<region>[^)]+)\)\]")]
    private static partial Regex Snippet();
}

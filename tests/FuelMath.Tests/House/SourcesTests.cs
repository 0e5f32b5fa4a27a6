using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>Every number can be traced: formulas, tables and checks cite works, and <c>docs/sources.md</c> lists them.</summary>
public sealed partial class SourcesTests
{
    /// <summary>How many fractions in one initializer make it a table, which needs a source.</summary>
    private const int NumbersInATable = 4;

    /// <summary>Keys that stand for the absence of a work. They may wait for their first use.</summary>
    private static readonly HashSet<string> NotWorks = ["Common-practice", "Definition", "Owner", "Workshop-class"];

    [Fact]
    public void EveryCitedKey_IsListed() =>
        Offenders.None(
            Citations().Where(c => !Repository.SourceKeys.Contains(c.Key)).Select(c => $"{c.Place}: [{c.Key}]")
        );

    [Fact]
    public void EveryListedKey_IsCited()
    {
        HashSet<string> cited = [.. Citations().Select(c => c.Key)];

        Offenders.None(Repository.SourceKeys.Where(k => !cited.Contains(k) && !NotWorks.Contains(k)));
    }

    [Fact]
    public void Keys_AreSortedAndUnique() =>
        Assert.Equal(
            Repository.SourceKeys.Distinct().Order(StringComparer.OrdinalIgnoreCase),
            Repository.SourceKeys.AsEnumerable()
        );

    /// <summary>Each entry says what was taken and how the work was seen.</summary>
    [Fact]
    public void EveryWork_SaysHowItWasRead() =>
        Offenders.None(
            Repository
                .Read("docs/sources.md")
                .Split("\n## ")
                .Skip(1)
                .Where(e =>
                    !NotWorks.Contains(e.Split('\n')[0].Trim())
                    && !(
                        e.Contains("Taken:", StringComparison.Ordinal) && e.Contains("Read:", StringComparison.Ordinal)
                    )
                )
                .Select(e => e.Split('\n')[0])
        );

    /// <summary>One paragraph each: two versions of one entry come from merging.</summary>
    [Fact]
    public void EveryWork_IsOneParagraph() =>
        Offenders.None(
            Repository
                .Read("docs/sources.md")
                .Split("\n## ")
                .Skip(1)
                .Where(e => e.Split('\n').Skip(1).Count(l => l.Trim().Length > 0) != 1)
                .Select(e => e.Split('\n')[0])
        );

    /// <summary>Works are cited, not the sites that keep a copy.</summary>
    [Fact]
    public void NoWork_NamesAHost() =>
        Offenders.None(Repository.Find(Host(), ["docs/sources.md"]).Select(m => m.Match.Value));

    /// <summary>Two versions of one entry come from merging, too.</summary>
    [Fact]
    public void Changelog_SaysNothingTwice() =>
        Offenders.None(
            Repository
                .Read("CHANGELOG.md")
                .Split('\n')
                .Where(l => l.StartsWith("- ", StringComparison.Ordinal))
                .GroupBy(l => l[..Math.Min(l.Length, 45)])
                .Where(g => g.Count() > 1)
                .Select(g => g.Key)
        );

    [Fact]
    public void EveryFormula_CitesAWork() =>
        Offenders.None(
            SourceCode
                .Nodes<MethodDeclarationSyntax>()
                .Select(n => n.Node)
                .Where(m => SourceCode.Namespace(m.SyntaxTree) == "FuelMath.Formulas")
                .Where(m => m.Modifiers.Any(SyntaxKind.PublicKeyword))
                // What describes formulas stands beside them, and cites none of its own.
                .Where(m => m.TypeParameterList is not null)
                .Where(m => m.Parent is ClassDeclarationSyntax type && type.Modifiers.Any(SyntaxKind.StaticKeyword))
                .Where(m => !Cites(m) && !Cites(m.Parent!))
                .Select(m => $"{SourceCode.Place(m)}: {m.Identifier}")
        );

    [Fact]
    public void EveryTable_CitesAWork() =>
        Offenders.None(
            SourceCode
                .Nodes<SyntaxNode>()
                .Select(n => n.Node)
                .Where(n => n is CollectionExpressionSyntax or InitializerExpressionSyntax)
                .Where(n => n.DescendantTokens().Count(IsFraction) >= NumbersInATable)
                .Where(n => !n.Ancestors().OfType<MemberDeclarationSyntax>().Any(CitesAnywhere))
                .Select(n => $"{SourceCode.Place(n)}: {n.ToString().ReplaceLineEndings(" ")}")
        );

    private static bool IsFraction(SyntaxToken token) =>
        token.IsKind(SyntaxKind.NumericLiteralToken) && token.Value is double number && number != Math.Floor(number);

    private static bool Cites(SyntaxNode node) => SourceLine().IsMatch(node.GetLeadingTrivia().ToFullString());

    private static bool CitesAnywhere(MemberDeclarationSyntax member) =>
        member is not BaseNamespaceDeclarationSyntax
        && (SourceLine().IsMatch(member.ToFullString()) || Construction().IsMatch(member.ToFullString()));

    /// <summary>Every key in code, data and tests, with the place where it stands.</summary>
    private static IEnumerable<(string Place, string Key)> Citations()
    {
        string[] code = [.. Repository.Code("")];
        string[] data = [.. Repository.Files.Where(f => f.EndsWith(".csv", StringComparison.Ordinal))];
        string[] pages = [.. Repository.Files.Where(f => f.EndsWith(".md", StringComparison.Ordinal))];

        return Repository
            .Find(Citation(), [.. code, .. data])
            .Concat(Repository.Find(Construction(), code))
            .Concat(Repository.Find(Trait(), code))
            .Concat(Repository.Find(PageCitation(), pages))
            .Where(m => !m.Path.StartsWith("tests/FuelMath.Tests/House/", StringComparison.Ordinal))
            .Where(m => !m.Path.StartsWith("tests/FuelMath.Tests/Sources/", StringComparison.Ordinal))
            .Select(m => (m.Path, m.Match.Groups["key"].Value))
            .Concat(BoundConstructions());
    }

    /// <summary>The library's data sources by meaning, so that a short <c>new(...)</c> counts as well.</summary>
    private static IEnumerable<(string Place, string Key)> BoundConstructions() =>
        from found in SourceCode.Nodes<BaseObjectCreationExpressionSyntax>()
        where found.Node.ArgumentList?.Arguments.Count == 2
        where found.Model.GetSymbolInfo(found.Node).Symbol?.ContainingType.Name == "DataSource"
        let key = found.Model.GetConstantValue(found.Node.ArgumentList!.Arguments[0].Expression)
        where key.HasValue
        select (SourceCode.Place(found.Node), (string)key.Value!);

    [GeneratedRegex(@"https?://|www\.|\b[\w-]+\.(?:com|org|net|pro|edu|gov|io)\b")]
    private static partial Regex Host();

    /// <summary>A key in brackets on a line of comment: "Source: [Key] place; [Other-key] place".</summary>
    [GeneratedRegex(@"(?<=^\s*(?:///?|#)[^\n]*)\[(?<key>[A-Z][\w.]*(?:-[\w.]+)+|Definition)\]", RegexOptions.Multiline)]
    private static partial Regex Citation();

    /// <summary>A key in brackets on a page, which is no link.</summary>
    [GeneratedRegex(@"\[(?<key>[A-Z][\w.]*(?:-[\w.]+)+|Definition)\](?!\()")]
    private static partial Regex PageCitation();

    [GeneratedRegex(@"Source: \[[^\]\s]+\]")]
    private static partial Regex SourceLine();

    [GeneratedRegex("""\bDataSource\b(?:[^;(]*=>?\s*new)?\(\s*"(?<key>[^"]*)",""")]
    private static partial Regex Construction();

    [GeneratedRegex("""Trait\("Source", "(?<key>[^"]*)"\)""")]
    private static partial Regex Trait();
}

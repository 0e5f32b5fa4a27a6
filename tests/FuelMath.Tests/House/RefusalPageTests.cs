using System.Text.RegularExpressions;
using FuelMath.Tests.Refusals;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>
/// The page of refusals is made from the source: each code, its meaning, and the data that it carries.
/// <c>WRITE_REFUSALS=1</c> writes it again.
/// </summary>
public sealed partial class RefusalPageTests
{
    private const string Page = "docs/guide/refusals.md";
    private const string Start = "<!-- The codes, printed by RefusalPageTests with WRITE_REFUSALS=1. -->";
    private const string End = "<!-- The end of the codes. -->";

    [Fact]
    public void Page_ListsEveryCodeWithItsData()
    {
        string text = Repository.Read(Page);
        (int from, int to) = (
            text.IndexOf(Start, StringComparison.Ordinal),
            text.IndexOf(End, StringComparison.Ordinal)
        );
        Assert.True(from >= 0 && to > from);
        string now = $"{text[..(from + Start.Length)]}\n\n{Table()}\n{text[to..]}";
        if (Environment.GetEnvironmentVariable("WRITE_REFUSALS") is not null)
        {
            File.WriteAllText(Path.Combine(Repository.Root, Page), now);
        }

        Assert.Equal(now, Repository.Read(Page));
    }

    /// <summary>A code that nothing uses would never be met, and one without words in another language could not be told.</summary>
    [Fact]
    public void EveryCode_IsUsedAndTranslated()
    {
        HashSet<string> used =
        [
            .. SourceCode
                .Nodes<MemberAccessExpressionSyntax>()
                .Where(m => m.Node.Expression.ToString() == nameof(RefusalCode))
                .Select(m => m.Node.Name.Identifier.Text),
        ];

        Offenders.None(Enum.GetNames<RefusalCode>().Where(c => !used.Contains(c)));
        Offenders.None(Enum.GetValues<RefusalCode>().Where(c => !GermanWords.Of.ContainsKey(c)).Select(c => $"{c}"));
    }

    /// <summary>
    /// A hole with a role that is made a plain string on its way loses its data without a word, as in one branch of a choice.
    /// </summary>
    [Fact]
    public void EveryRole_IsInARefusal() =>
        Offenders.None(
            SourceCode
                .Nodes<InterpolatedStringExpressionSyntax>()
                .Where(s => Roles(s.Node).Any())
                .Where(s =>
                    !s.Model.GetConversion(s.Node).IsInterpolatedStringHandler
                    && s.Node.Parent
                        is not CastExpressionSyntax
                        {
                            Type: IdentifierNameSyntax { Identifier.Text: nameof(RefusalText) }
                        }
                )
                .Select(s => $"{SourceCode.Place(s.Node)}: {s.Node}")
        );

    private static string Table() =>
        "| Code | Meaning | Data besides the common ones |\n|---|---|---|\n"
        + string.Concat(
            Enum.GetNames<RefusalCode>()
                .Select(c =>
                    $"| `{c}` | {Meaning(c)} | {string.Join(", ", Data().GetValueOrDefault(c, []).Select(r => $"`{r}`"))} |\n"
                )
        );

    private static string Meaning(string code)
    {
        EnumMemberDeclarationSyntax member = SourceCode
            .Nodes<EnumMemberDeclarationSyntax>()
            .Select(n => n.Node)
            .Single(m =>
                m.Identifier.Text == code && m.Parent is EnumDeclarationSyntax { Identifier.Text: nameof(RefusalCode) }
            );
        return Summary().Match(member.GetLeadingTrivia().ToFullString()).Groups[1].Value;
    }

    /// <summary>The roles of the sentences of each code.</summary>
    private static Dictionary<string, SortedSet<string>> Data()
    {
        var data = new Dictionary<string, SortedSet<string>>(StringComparer.Ordinal);
        foreach (SyntaxNode call in Calls.Value)
        {
            string[] codes =
            [
                .. call.DescendantNodes()
                    .OfType<MemberAccessExpressionSyntax>()
                    .Where(m => m.Expression.ToString() == nameof(RefusalCode))
                    .Select(m => m.Name.Identifier.Text),
            ];
            if (
                codes is []
                && call is InvocationExpressionSyntax { Expression: var e }
                && e.ToString().EndsWith("OutOfRange", StringComparison.Ordinal)
            )
            {
                codes = [nameof(RefusalCode.OutOfRange)];
            }

            foreach (string code in codes.Distinct())
            {
                SortedSet<string> roles = data.TryGetValue(code, out SortedSet<string>? known)
                    ? known
                    : data[code] = new(StringComparer.Ordinal);
                roles.UnionWith(call.DescendantNodes().OfType<InterpolatedStringExpressionSyntax>().SelectMany(Roles));
            }
        }

        return data;
    }

    private static readonly Lazy<SyntaxNode[]> Calls = new(() =>
        [
            .. SourceCode
                .Nodes<ExpressionSyntax>()
                .Select(n => n.Node)
                .Where(n => n is BaseObjectCreationExpressionSyntax or InvocationExpressionSyntax)
                .Where(n =>
                    n.ChildNodes()
                        .OfType<ArgumentListSyntax>()
                        .SelectMany(a => a.Arguments)
                        .Any(a =>
                            a.Expression.ToString().StartsWith("RefusalCode.", StringComparison.Ordinal)
                            || a.Expression is InterpolatedStringExpressionSyntax or ConditionalExpressionSyntax
                        )
                ),
        ]
    );

    private static IEnumerable<string> Roles(InterpolatedStringExpressionSyntax text) =>
        text
            .Contents.OfType<InterpolationSyntax>()
            .Select(i => i.FormatClause?.FormatStringToken.Text ?? "")
            .Where(f => Word().IsMatch(f));

    [GeneratedRegex("^[a-z][A-Za-z]{3,}$")]
    private static partial Regex Word();

    [GeneratedRegex("<summary>(.*)</summary>")]
    private static partial Regex Summary();
}

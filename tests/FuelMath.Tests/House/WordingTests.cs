using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>How words, numbers and units are written; the rule for readers is at the end of the glossary page.</summary>
public sealed partial class WordingTests
{
    /// <summary>Titles of works are quoted as they are; spellings that the lenient reader reads are data.</summary>
    private static readonly string[] Quoting = ["docs/sources.md", "src/FuelMath/Text/LenientUnitLists.cs"];

    /// <summary>Pages that are generated from printed texts, which have no special signs.</summary>
    private static readonly string[] Generated = ["docs/formulas/", "docs/includes/", "docs/guide/every-property.md"];

    private static IEnumerable<string> Written =>
        Repository
            .Files.Where(f =>
                f.EndsWith(".md", StringComparison.Ordinal)
                || (
                    f.EndsWith(".cs", StringComparison.Ordinal)
                    && (
                        f.StartsWith("src/", StringComparison.Ordinal)
                        || f.StartsWith("docs/samples/", StringComparison.Ordinal)
                    )
                )
            )
            .Except(Quoting);

    private static IEnumerable<string> Pages =>
        Repository.Files.Where(f =>
            f.StartsWith("docs/", StringComparison.Ordinal)
            && f.EndsWith(".md", StringComparison.Ordinal)
            && !Quoting.Contains(f)
            && !Generated.Any(g => f.StartsWith(g, StringComparison.Ordinal))
        );

    [Fact]
    public void Spelling_IsAmerican() =>
        Offenders.None(from word in Repository.Find(British(), Written) select $"{word.Path}: {word.Match.Value}");

    /// <summary>A page shows a minus sign; the hyphen stands for it in code, formulas, links and quotations only.</summary>
    [Fact]
    public void NegativeNumbers_OnPages_HaveAMinusSign() => Offenders.None(InProse(HyphenMinus()));

    /// <summary>Thousands are separated by a space: a comma is a decimal separator elsewhere.</summary>
    [Fact]
    public void Thousands_OnPages_AreSeparatedBySpaces() => Offenders.None(InProse(CommaInNumber()));

    /// <summary>A text inside a hole of an interpolated one is plain unless it says so itself: its own holes would be printed.</summary>
    [Fact]
    public void NoPlainText_InsideAnInterpolatedOne_HasHoles() =>
        Offenders.None(
            SourceCode
                .Nodes<LiteralExpressionSyntax>()
                .Where(n => n.Node.Token.Value is string text && Hole().IsMatch(text))
                .Where(n => n.Node.Ancestors().Any(a => a is InterpolatedStringExpressionSyntax))
                .Select(n => $"{SourceCode.Place(n.Node)}: {n.Node}")
        );

    private static IEnumerable<string> InProse(Regex pattern) =>
        from page in Pages
        from line in NotProse().Replace(Repository.Read(page), " ").Split('\n')
        where pattern.IsMatch(line)
        select $"{page}: {line.Trim()}";

    [GeneratedRegex(
        """
            \b(colou\w+|behaviours?|favour\w*|neighbour\w*|labour\w*|honour\w*|vapours?|moulds?
            |centres?|metres?|litres?|fibres?|grey|aluminium|sulphur|petrol|tyres?|kerb|carburettors?|licence|defence
            |ageing|whilst|catalogues?|learnt|labelled|labelling|modelled|modelling|cancelled|cancelling|travelled
            |travelling|levelled|analyse[ds]?|pressuris\w+|optimis\w+|minimis\w+|maximis\w+|normalis\w+|linearis\w+
            |initialis\w+|serialis\w+|organis\w+|recognis\w+|summaris\w+|realis(e|es|ed|ing)|atomis\w+|discretis\w+)\b
            """,
        RegexOptions.IgnoreCase | RegexOptions.IgnorePatternWhitespace
    )]
    private static partial Regex British();

    [GeneratedRegex(@"(?<![\w.\-\]])-\d")]
    private static partial Regex HyphenMinus();

    [GeneratedRegex(@"\{[A-Za-z_]\w*")]
    private static partial Regex Hole();

    [GeneratedRegex(@"\d,\d{3}\b")]
    private static partial Regex CommaInNumber();

    /// <summary>Code, formulas, targets of links, quotations and tags.</summary>
    [GeneratedRegex(
        """```.*?```|`[^`\n]*`|\$\$.*?\$\$|\$[^$\n]*\$|\]\([^)]*\)|"[^"\n]*"|<[^>\n]*>|^[ ]{4}.*?$""",
        RegexOptions.Singleline | RegexOptions.Multiline
    )]
    private static partial Regex NotProse();
}

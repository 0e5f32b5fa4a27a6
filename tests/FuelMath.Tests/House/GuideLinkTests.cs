using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>
/// The reference leads back to the guide: each public type of the three packages links to the page that explains it. A nested
/// type is reached through its owner.
/// </summary>
public sealed partial class GuideLinkTests
{
    private static readonly ILookup<string, string> Links = (
        from file in Repository.Code("src/")
        from type in SourceCode
            .Parse(Repository.Read(file), file)
            .GetCompilationUnitRoot()
            .DescendantNodes(n => n is CompilationUnitSyntax or BaseNamespaceDeclarationSyntax)
            .OfType<BaseTypeDeclarationSyntax>()
        where type.Modifiers.Any(SyntaxKind.PublicKeyword)
        from link in SeeAlso()
            .Matches(type.GetLeadingTrivia().ToFullString())
            .Select(m => m.Groups["page"].Value)
            .DefaultIfEmpty("")
        select (type.Identifier.Text, link)
    ).ToLookup(t => t.Text, t => t.link);

    [Fact]
    public void EveryPublicType_LinksToItsPage() =>
        Offenders.None(Links.Where(t => t.All(link => link.Length == 0)).Select(t => t.Key));

    [Fact]
    public void EveryLink_LeadsToAPage() =>
        Offenders.None(
            from type in Links
            from page in type
            where page.Length > 0 && !Repository.Files.Contains($"docs/{page}.md")
            select $"{type.Key}: {page}"
        );

    /// <summary>All top-level types are seen, not only those of files that were parsed.</summary>
    [Fact]
    public void EveryExportedType_IsLookedAt() =>
        Offenders.None(
            PublicApi.Types.Where(t => !t.IsNested).Select(t => t.Name.Split('`')[0]).Where(n => !Links.Contains(n))
        );

    [GeneratedRegex("""<seealso href="\.\./(?<page>[a-z/-]+)\.html">[^<]+</seealso>""")]
    private static partial Regex SeeAlso();
}

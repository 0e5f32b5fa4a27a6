using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>Imports point down only, and one folder is one namespace.</summary>
public sealed class LayeringTests
{
    /// <summary>
    /// The map of the house. A namespace may use those on a lower floor, and none on its own: parts do not know each
    /// other, and networks, which lie below them, know a part only by its law.
    /// </summary>
    private static readonly Dictionary<string, int> Floors = new()
    {
        // The ground: knows nothing of fuel.
        ["FuelMath"] = 0,
        ["FuelMath.Internal"] = 1,
        ["FuelMath.Sources"] = 1,
        ["FuelMath.Text"] = 3,
        ["FuelMath.Scalars"] = 2,
        ["FuelMath.Findings"] = 2,
        ["FuelMath.Shapes"] = 4,
        // The first floor: quantities, tables and formulas, then what is built of them alone.
        ["FuelMath.Quantities"] = 10,
        ["FuelMath.Tables"] = 10,
        ["FuelMath.Uncertainty"] = 10,
        ["FuelMath.Formulas"] = 11,
        ["FuelMath.Budgets"] = 12,
        ["FuelMath.Fuels"] = 12,
        ["FuelMath.Tanks"] = 13,
        ["FuelMath.Air"] = 13,
        // The solver and the laws; the parts above name theirs.
        ["FuelMath.Networks"] = 14,
        // Parts, and beside them the columns, which do not know the parts.
        ["FuelMath.Injectors"] = 20,
        ["FuelMath.Pumps"] = 20,
        ["FuelMath.Filters"] = 20,
        ["FuelMath.Hoses"] = 20,
        ["FuelMath.Fittings"] = 20,
        ["FuelMath.Seals"] = 20,
        ["FuelMath.Regulators"] = 20,
        ["FuelMath.Wiring"] = 20,
        ["FuelMath.Engines"] = 20,
        ["FuelMath.Columns"] = 20,
        // What joins them, and what writes that down.
        ["FuelMath.Bench"] = 24,
        ["FuelMath.Beliefs"] = 26,
        ["FuelMath.Lines"] = 28,
        ["FuelMath.Systems"] = 30,
        ["FuelMath.Assessments"] = 31,
        ["FuelMath.Sheets"] = 32,
        ["FuelMath.Tightness"] = 31,
        ["FuelMath.ShopTests"] = 32,
        ["FuelMath.Documents"] = 40,
    };

    [Fact]
    public void EveryFile_DeclaresTheNamespaceOfItsFolder() =>
        Offenders.None(
            from tree in SourceCode.Trees
            let folder = Path.GetDirectoryName(tree.FilePath)!.Replace('\\', '/')["src/".Length..].Replace('/', '.')
            where SourceCode.Namespace(tree) is { } declared && declared != folder
            select $"{tree.FilePath} declares {SourceCode.Namespace(tree)}"
        );

    [Fact]
    public void EveryNamespace_HasAFloor() =>
        Offenders.None(
            SourceCode.Trees.Select(SourceCode.Namespace).OfType<string>().Where(n => !Floors.ContainsKey(n)).Distinct()
        );

    /// <summary>Looks at what each name means, so that using directives, full names and members count alike.</summary>
    [Fact]
    public void EveryName_ComesFromALowerFloor() =>
        Offenders.None(
            SourceCode
                .Nodes<SimpleNameSyntax>()
                .Select(n => (n.Node, From: SourceCode.Namespace(n.Node.SyntaxTree), To: HomeOf(n.Node, n.Model)))
                .Where(n => n.From is not null && n.To is not null && n.From != n.To)
                .Where(n => Floors.GetValueOrDefault(n.To!, int.MaxValue) >= Floors[n.From!])
                .Select(n => $"{SourceCode.Place(n.Node)}: {n.From} uses {n.To} ({n.Node})")
                .Distinct()
        );

    /// <summary>The tests above see the meaning of names only if the compiler does.</summary>
    [Fact]
    public void TheWholeSource_Binds() =>
        Offenders.None(
            SourceCode
                .Compilation.GetDiagnostics()
                .Where(d => d.Severity == DiagnosticSeverity.Error)
                // The other half of a partial member is written by a generator, which does not run here.
                .Where(d => d.Id != "CS8795")
                .Select(d => d.ToString())
        );

    private static string? HomeOf(SimpleNameSyntax name, SemanticModel model)
    {
        ISymbol? symbol = model.GetSymbolInfo(name).Symbol;
        INamespaceSymbol? home = symbol as INamespaceSymbol ?? symbol?.ContainingNamespace;
        string? text = home?.ToDisplayString();
        bool ours = text is not null && (text == "FuelMath" || text.StartsWith("FuelMath.", StringComparison.Ordinal));

        return ours && !(symbol is INamespaceSymbol && IsFirstHalf(name)) ? text : null;
    }

    /// <summary>Whether more of a full name follows: only the last part of a namespace is what is used.</summary>
    private static bool IsFirstHalf(SyntaxNode name) =>
        name.Parent switch
        {
            QualifiedNameSyntax full => full.Left == name || IsFirstHalf(full),
            MemberAccessExpressionSyntax full => full.Expression == name || IsFirstHalf(full),
            QualifiedCrefSyntax full => full.Container == name,
            _ => false,
        };
}

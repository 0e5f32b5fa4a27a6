using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>Folders are the rooms of the house: what a room uses lies on a lower floor. Namespaces are for the reader.</summary>
public sealed class LayeringTests
{
    /// <summary>
    /// The map of the house. A folder may use those on a lower floor, and none on its own: parts do not know each
    /// other, and networks, which lie below them, know a part only by its law.
    /// </summary>
    private static readonly Dictionary<string, int> Floors = new()
    {
        // The ground: knows nothing of fuel.
        [""] = 0,
        ["Internal"] = 1,
        ["Sources"] = 2,
        ["Text"] = 4,
        ["Scalars"] = 3,
        ["Findings"] = 3,
        ["Shapes"] = 5,
        // The first floor: quantities, tables and formulas, then what is built of them alone.
        ["Quantities"] = 10,
        ["Tables"] = 10,
        ["Uncertainty"] = 10,
        ["Formulas"] = 11,
        ["Budgets"] = 12,
        ["Fuels"] = 12,
        ["Tanks"] = 13,
        ["Air"] = 13,
        // The solver and the laws; the parts above name theirs.
        ["Networks"] = 14,
        // Parts, and beside them the columns, which do not know the parts.
        ["Injectors"] = 20,
        ["Pumps"] = 20,
        ["Filters"] = 20,
        ["Hoses"] = 20,
        ["Fittings"] = 20,
        ["Seals"] = 20,
        ["Regulators"] = 20,
        ["Wiring"] = 20,
        ["Engines"] = 20,
        ["Columns"] = 20,
        // What joins them, and what writes that down.
        ["Bench"] = 24,
        ["Controllers"] = 26,
        ["Sizing"] = 27,
        ["Diagnosis"] = 27,
        ["Lines"] = 28,
        ["Systems"] = 30,
        ["Assessments"] = 31,
        ["Sheets"] = 32,
        ["Tightness"] = 31,
        ["ShopTests"] = 32,
        ["Documents"] = 40,
    };

    /// <summary>The few namespaces that a caller meets; a folder that is not named here lies in <c>FuelMath</c>.</summary>
    private static readonly Dictionary<string, string> Namespaces = new()
    {
        ["Formulas"] = "FuelMath.Formulas",
        ["Scalars"] = "FuelMath.Formulas",
        ["Columns"] = "FuelMath.Formulas",
        ["Uncertainty"] = "FuelMath.Statistics",
        ["Budgets"] = "FuelMath.Statistics",
        ["Bench"] = "FuelMath.Bench",
        ["ShopTests"] = "FuelMath.ShopTests",
        ["Tightness"] = "FuelMath.ShopTests",
        ["Seals"] = "FuelMath.Joints",
    };

    [Fact]
    public void EveryFile_DeclaresTheNamespaceOfItsFolder() =>
        Offenders.None(
            from tree in SourceCode.Trees
            let allowed = Namespaces.GetValueOrDefault(SourceCode.Room(tree), "FuelMath")
            where SourceCode.Namespace(tree) is { } declared && declared != allowed
            select $"{tree.FilePath} declares {SourceCode.Namespace(tree)}, not {allowed}"
        );

    [Fact]
    public void NoMoreThanEightNamespaces_MeetACaller() =>
        Assert.InRange(SourceCode.Trees.Select(SourceCode.Namespace).OfType<string>().Distinct().Count(), 1, 8);

    [Fact]
    public void EveryFolder_HasAFloor() =>
        Offenders.None(SourceCode.Trees.Select(SourceCode.Room).Where(f => !Floors.ContainsKey(f)).Distinct());

    [Fact]
    public void EveryFolderOfTheMaps_IsThere() =>
        Offenders.None(Floors.Keys.Concat(Namespaces.Keys).Except(SourceCode.Trees.Select(SourceCode.Room)));

    /// <summary>Looks at what each name means, so that using directives, full names and members count alike.</summary>
    [Fact]
    public void EveryName_ComesFromALowerFloor() =>
        Offenders.None(
            SourceCode
                .Nodes<SimpleNameSyntax>()
                .Select(n => (n.Node, From: SourceCode.Room(n.Node.SyntaxTree), To: HomeOf(n.Node, n.Model)))
                .Where(n => n.To is not null && n.From != n.To)
                .Where(n => Floors.GetValueOrDefault(n.To!, int.MaxValue) >= Floors[n.From])
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

    /// <summary>
    /// The room in which what a name means is declared; null for a namespace, a local and what is not ours. A type that is
    /// written in parts counts where the lowest of them lies.
    /// </summary>
    private static string? HomeOf(SimpleNameSyntax name, SemanticModel model) =>
        model.GetSymbolInfo(name).Symbol is { Kind: not SymbolKind.Namespace } symbol
            ? symbol
                .DeclaringSyntaxReferences.Select(r => SourceCode.Room(r.SyntaxTree))
                .MinBy(f => Floors.GetValueOrDefault(f, int.MaxValue))
            : null;
}

using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>Folders are the rooms of the house: what a room uses lies on a lower floor. Namespaces are for the reader.</summary>
public sealed class LayeringTests
{
    private const string Begin = "<!-- The map of floors, printed by LayeringTests with WRITE_MAP=1. -->\n\n";
    private const string End = "\n<!-- The end of the map. -->";

    private static readonly Dictionary<string, int> Floors = FloorMap.Floors;

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

    /// <summary>The map in DEVELOPERS.md is this one, printed.</summary>
    [Fact]
    public void Developers_SeeThisMap()
    {
        string page = Repository.Read("DEVELOPERS.md").ReplaceLineEndings("\n");
        int start = page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int end = page.IndexOf(End, StringComparison.Ordinal);
        Assert.True(start >= Begin.Length && end > start, "The marks of the map are missing.");
        if (Environment.GetEnvironmentVariable("WRITE_MAP") is not null)
        {
            page = page[..start] + FloorMap.Printed + page[end..];
            File.WriteAllText(Path.Combine(Repository.Root, "DEVELOPERS.md"), page);
            end = page.IndexOf(End, StringComparison.Ordinal);
        }

        Assert.Equal(FloorMap.Printed, page[start..end]);
    }

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
                // Exceptions lie beside the rooms; their words, in the lowest room, are made with them.
                .Where(n => (n.From, n.To) is not ("", "Internal"))
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

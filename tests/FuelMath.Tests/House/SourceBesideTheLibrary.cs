using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace FuelMath.Tests.House;

/// <summary>The source of what stands on the library, parsed and bound: two packages and the sample.</summary>
/// <remarks>Names of packages stay unknown, those of the sample's plots.</remarks>
internal static class SourceBesideTheLibrary
{
    private static readonly (string Assembly, string Folder)[] Projects =
    [
        ("FuelMath.Workbooks", "src/FuelMath.Workbooks/"),
        ("FuelMath.Exercises", "src/FuelMath.Exercises/"),
        ("Assessment", "docs/samples/Assessment/"),
    ];

    private static readonly ImmutableArray<CSharpCompilation> Compilations = [.. Projects.Select(Compiled)];

    /// <summary>Every node of a kind, with a model that knows what it means.</summary>
    internal static IEnumerable<(T Node, SemanticModel Model)> Nodes<T>()
        where T : SyntaxNode =>
        from compilation in Compilations
        from tree in compilation.SyntaxTrees
        let model = compilation.GetSemanticModel(tree)
        from node in tree.GetRoot().DescendantNodes().OfType<T>()
        select (node, model);

    private static CSharpCompilation Compiled((string Assembly, string Folder) project) =>
        CSharpCompilation.Create(
            project.Assembly,
            [
                .. Repository.Code(project.Folder).Select(p => SourceCode.Parse(Repository.Read(p), p)),
                SourceCode.Parse(SourceCode.ImplicitUsings, "usings.cs"),
            ],
            SourceCode.Platform.Add(MetadataReference.CreateFromFile(PublicApi.Library.Location)),
            new CSharpCompilationOptions(OutputKind.ConsoleApplication)
        );
}

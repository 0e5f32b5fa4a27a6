using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>The library's source, parsed and bound once for all house tests.</summary>
internal static class SourceCode
{
    internal const string ImplicitUsings = """
        global using System;
        global using System.Collections.Generic;
        global using System.IO;
        global using System.Linq;
        global using System.Threading;
        global using System.Threading.Tasks;
        """;

    /// <summary>Everything the tests run on, the library under test left out.</summary>
    internal static ImmutableArray<MetadataReference> Platform { get; } =
    [
        .. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!)
            .Split(Path.PathSeparator)
            .Where(p => !Path.GetFileName(p).StartsWith("FuelMath", StringComparison.Ordinal))
            .Select(p => MetadataReference.CreateFromFile(p)),
    ];

    internal static CSharpParseOptions ParseOptions { get; } =
        CSharpParseOptions.Default.WithDocumentationMode(DocumentationMode.Parse);

    /// <summary>One tree for each file of the library; the path is relative to the root.</summary>
    internal static ImmutableArray<SyntaxTree> Trees { get; } =
    [.. Repository.Code("src/FuelMath/").Select(p => Parse(Repository.Read(p), p))];

    internal static CSharpCompilation Compilation { get; } =
        CSharpCompilation.Create(
            "FuelMath",
            [.. Trees, Parse(ImplicitUsings, "usings.cs")],
            Platform,
            // Null checks are the build's work; without them the names bind in a fraction of the time.
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary)
        );

    /// <summary>One model for each tree, shared, because a model remembers what it has bound.</summary>
    private static readonly Dictionary<SyntaxTree, SemanticModel> Models = Trees.ToDictionary(
        t => t,
        t => Compilation.GetSemanticModel(t)
    );

    /// <summary>Every node of a kind in the library, with a model that knows what it means.</summary>
    internal static IEnumerable<(T Node, SemanticModel Model)> Nodes<T>()
        where T : SyntaxNode =>
        from tree in Trees
        from node in tree.GetRoot().DescendantNodes(descendIntoTrivia: true).OfType<T>()
        select (node, Models[tree]);

    /// <summary>Where a node stands, as a reader would look it up.</summary>
    internal static string Place(SyntaxNode node) =>
        $"{node.SyntaxTree.FilePath}:{node.GetLocation().GetLineSpan().StartLinePosition.Line + 1}";

    /// <summary>The room, that is the folder, that a file lies in; empty for a file beside the rooms.</summary>
    internal static string Room(SyntaxTree tree) =>
        tree.FilePath.Replace('\\', '/').Split('/') is ["src", "FuelMath", string room, _] ? room : "";

    /// <summary>The room that declares a type.</summary>
    internal static string Room(Type type) =>
        type.DeclaringType is { } outer
            ? Room(outer)
            : Room(Compilation.GetTypeByMetadataName(type.FullName!)!.DeclaringSyntaxReferences[0].SyntaxTree);

    /// <summary>The namespace that a file declares.</summary>
    internal static string? Namespace(SyntaxTree tree) =>
        tree.GetRoot().DescendantNodes().OfType<BaseNamespaceDeclarationSyntax>().FirstOrDefault()?.Name.ToString();

    internal static SyntaxTree Parse(string text, string path) => CSharpSyntaxTree.ParseText(text, ParseOptions, path);
}

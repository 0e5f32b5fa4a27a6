using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>An exception of this library says as data what it refuses; a bare one of the platform says it in words only.</summary>
public sealed class RefusalFamilyTests
{
    private static readonly string[] Bare = ["ArgumentException", "ArgumentOutOfRangeException"];

    /// <summary>The two packages that build on the library; the sample beside them is an application.</summary>
    private static readonly string[] Packages = ["src/FuelMath.Exercises/", "src/FuelMath.Workbooks/"];

    [Fact]
    public void NoCode_ThrowsABareException() =>
        Offenders.None(
            SourceCode
                .Nodes<BaseObjectCreationExpressionSyntax>()
                .Concat(InPackages<BaseObjectCreationExpressionSyntax>())
                .Where(n => n.Model.GetTypeInfo(n.Node).Type is { } type && Bare.Contains(type.Name))
                .Select(n => $"{SourceCode.Place(n.Node)}: {n.Model.GetTypeInfo(n.Node).Type!.Name}")
        );

    /// <summary>The platform's own checks of ranges throw bare exceptions, too.</summary>
    [Fact]
    public void NoPackage_ChecksARangeByThePlatform() =>
        Offenders.None(
            InPackages<MemberAccessExpressionSyntax>()
                .Where(n => n.Model.GetTypeInfo(n.Node.Expression).Type?.Name is "ArgumentOutOfRangeException")
                .Select(n => $"{SourceCode.Place(n.Node)}: {n.Node}")
        );

    /// <summary>So does its check of blank texts; the exceptions of the library themselves may use it.</summary>
    [Fact]
    public void NoCode_ChecksABlankTextByThePlatform() =>
        Offenders.None(
            SourceCode
                .Nodes<MemberAccessExpressionSyntax>()
                .Concat(InPackages<MemberAccessExpressionSyntax>())
                .Where(n => n.Node.Name.Identifier.Text.StartsWith("ThrowIfNullOr", StringComparison.Ordinal))
                .Select(n => $"{SourceCode.Place(n.Node)}: {n.Node}")
                .Where(n => !n.Contains("RefusalWords", StringComparison.Ordinal))
        );

    private static IEnumerable<(T Node, SemanticModel Model)> InPackages<T>()
        where T : SyntaxNode =>
        SourceBesideTheLibrary
            .Nodes<T>()
            .Where(n => Packages.Any(p => SourceCode.Place(n.Node).StartsWith(p, StringComparison.Ordinal)));
}

using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>An exception of this library says as data what it refuses; a bare one of the platform says it in words only.</summary>
public sealed class RefusalFamilyTests
{
    private static readonly string[] Bare = ["ArgumentException", "ArgumentOutOfRangeException"];

    [Fact]
    public void NoCode_ThrowsABareException() =>
        Offenders.None(
            SourceCode
                .Nodes<BaseObjectCreationExpressionSyntax>()
                .Where(n => n.Model.GetTypeInfo(n.Node).Type is { } type && Bare.Contains(type.Name))
                .Select(n => $"{SourceCode.Place(n.Node)}: {n.Model.GetTypeInfo(n.Node).Type!.Name}")
        );
}

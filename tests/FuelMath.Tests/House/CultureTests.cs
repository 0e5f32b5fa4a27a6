using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>
/// No text of the library, of the packages beside it or of the sample hangs on the machine's culture. The analyzers see calls without a culture, but neither numbers in
/// interpolated strings nor numbers that are added to a string.
/// </summary>
public sealed class CultureTests
{
    [Fact]
    public void NoInterpolatedText_FormatsANumberByTheMachinesCulture() =>
        Offenders.None(
            from found in Nodes<InterpolatedStringExpressionSyntax>()
            where found.Model.GetTypeInfo(found.Node).ConvertedType?.SpecialType == SpecialType.System_String
            from hole in found.Node.Contents.OfType<InterpolationSyntax>()
            let type = found.Model.GetTypeInfo(hole.Expression).Type
            where HangsOnCulture(type)
            select $"{SourceCode.Place(hole)}: {{{hole.Expression}}} is a {type}"
        );

    [Fact]
    public void NoText_GainsANumberByAddition() =>
        Offenders.None(
            from found in Nodes<BinaryExpressionSyntax>()
            where found.Node.IsKind(SyntaxKind.AddExpression)
            where found.Model.GetTypeInfo(found.Node).Type?.SpecialType == SpecialType.System_String
            from side in new[] { found.Node.Left, found.Node.Right }
            let type = found.Model.GetTypeInfo(side).Type
            where HangsOnCulture(type)
            select $"{SourceCode.Place(side)}: {side} is a {type}"
        );

    [Fact]
    public void WhatTextsAreMadeOf_IsKnownByItsType() =>
        Offenders.None(
            from found in Nodes<InterpolationSyntax>()
            let type = found.Model.GetTypeInfo(found.Node.Expression).Type
            where type is null or IErrorTypeSymbol
            select $"{SourceCode.Place(found.Node)}: {found.Node.Expression}"
        );

    private static IEnumerable<(T Node, SemanticModel Model)> Nodes<T>()
        where T : SyntaxNode => SourceCode.Nodes<T>().Concat(SourceBesideTheLibrary.Nodes<T>());

    /// <summary>
    /// A whole number is written alike everywhere unless it is negative: cultures have minus signs of their own. In a text
    /// without a culture stands therefore only what is named as a count or a number from zero.
    /// </summary>
    [Fact]
    public void NoInterpolatedText_HoldsAWholeNumberThatMayBeNegative() =>
        Offenders.None(
            from found in Nodes<InterpolatedStringExpressionSyntax>()
            where found.Model.GetTypeInfo(found.Node).ConvertedType?.SpecialType == SpecialType.System_String
            from hole in found.Node.Contents.OfType<InterpolationSyntax>()
            where
                found.Model.GetTypeInfo(hole.Expression).Type?.SpecialType
                    is SpecialType.System_Int64
                        or SpecialType.System_Int32
                        or SpecialType.System_Int16
                        or SpecialType.System_SByte
            where !NotNegative.Contains(Counted(hole.Expression))
            select $"{SourceCode.Place(hole)}: {{{hole.Expression}}} may be negative"
        );

    private static readonly HashSet<string> NotNegative =
    [
        .. new[] { "Length", "Count", "Number", "number", "Row", "Bank", "b", "Chamber", "chamber" },
        .. new[]
        {
            "first",
            "index",
            "i",
            "at",
            "rest",
            "bad",
            "notes",
            "needed",
            "figures",
            "Width",
            "MostDraws",
            "point",
            "RefusedCount",
            "TrialCount",
        },
    ];

    /// <summary>The name of what is counted: <c>readings</c> of <c>readings - 1</c>, <c>Length</c> of <c>list.Length</c>.</summary>
    private static string Counted(ExpressionSyntax expression) =>
        expression switch
        {
            BinaryExpressionSyntax { Left: { } left } => Counted(left),
            MemberAccessExpressionSyntax { Name.Identifier.ValueText: var name } => name,
            IdentifierNameSyntax { Identifier.ValueText: var name } => name,
            _ => "",
        };

    /// <summary>Numbers and quantities of the unit library; whole numbers have a test of their own.</summary>
    private static bool HangsOnCulture(ITypeSymbol? type)
    {
        ITypeSymbol? plain = type
            is INamedTypeSymbol { OriginalDefinition.SpecialType: SpecialType.System_Nullable_T } maybe
            ? maybe.TypeArguments[0]
            : type;
        return plain
                is {
                    SpecialType: SpecialType.System_Double
                        or SpecialType.System_Single
                        or SpecialType.System_Decimal
                        or SpecialType.System_DateTime
                }
            || plain?.ContainingNamespace?.ToString()?.StartsWith("UnitsNet", StringComparison.Ordinal) == true
                && plain.TypeKind == TypeKind.Struct;
    }
}

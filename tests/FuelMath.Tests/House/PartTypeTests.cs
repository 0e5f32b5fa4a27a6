using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>What a part is, it says itself: rooms above the parts do not tell them apart by their types.</summary>
public sealed class PartTypeTests
{
    private static readonly string[] Rooms =
    [
        "Systems",
        "Sheets",
        "ShopTests",
        "Assessments",
        "Tightness",
        "Diagnosis",
    ];

    /// <summary>Files that may, each with its reason.</summary>
    private static readonly Dictionary<string, string> Exceptions = new()
    {
        ["Altered.cs"] = "makes another pump or regulator of the same type, with one fault",
        ["SystemPath.cs"] = "pumps have what wiring and results need: voltage, current, fluid",
        ["LiftPumpSearch.cs"] = "a stopped pump, which is a shut part, is a way that no pump drives",
        ["SystemReport.cs"] = "results of running pumps only",
        ["PumpFindings.cs"] = "compares the principle of each pump with what it was measured in",
    };

    [Fact]
    public void NoRoomAboveTheParts_AsksForTheTypeOfAPart() =>
        Offenders.None(
            Asked.Where(n => !Exceptions.ContainsKey(FileOf(n))).Select(n => $"{SourceCode.Place(n)}: {n.Parent}")
        );

    [Fact]
    public void EveryException_IsStillNeeded() => Offenders.None(Exceptions.Keys.Except(Asked.Select(FileOf)));

    /// <summary>Sealed parts in a type test, a pattern or OfType.</summary>
    private static IEnumerable<SimpleNameSyntax> Asked =>
        SourceCode
            .Nodes<SimpleNameSyntax>()
            .Where(n => Rooms.Contains(SourceCode.Room(n.Node.SyntaxTree)) && IsTest(n.Node))
            .Where(n =>
                n.Model.GetSymbolInfo(n.Node).Symbol is INamedTypeSymbol { IsSealed: true } type && IsPart(type)
            )
            .Select(n => n.Node);

    private static bool IsTest(SimpleNameSyntax name) =>
        name.Parent is PatternSyntax
        || (name.Parent is BinaryExpressionSyntax test && test.IsKind(SyntaxKind.IsExpression) && test.Right == name)
        || name.Parent is TypeArgumentListSyntax { Parent: GenericNameSyntax { Identifier.Text: "OfType" } };

    private static bool IsPart(INamedTypeSymbol type)
    {
        for (INamedTypeSymbol? at = type.BaseType; at is not null; at = at.BaseType)
        {
            if (at.Name == nameof(FlowPart))
            {
                return true;
            }
        }

        return false;
    }

    private static string FileOf(SimpleNameSyntax name) => Path.GetFileName(name.SyntaxTree.FilePath);
}

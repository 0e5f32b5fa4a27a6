using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>One file reads quantities as numbers, so a new value type in the unit library is a change of one file.</summary>
public sealed class SiBoundaryTests
{
    private const string Door = "src/FuelMath/Internal/SiUnits.cs";

    private static readonly (string Path, string Place, string Text)[] Readings = [.. Find()];

    [Fact]
    public void OnlySiUnits_ReadsAQuantityAsANumber() =>
        Offenders.None(Readings.Where(r => r.Path != Door).Select(r => $"{r.Place}: {r.Text}"));

    /// <summary>The search above does find readings.</summary>
    [Fact]
    public void SiUnits_ReadsQuantities() => Assert.True(Readings.Count(r => r.Path == Door) >= 20);

    private static IEnumerable<(string Path, string Place, string Text)> Find() =>
        from found in SourceCode.Nodes<ExpressionSyntax>()
        where found.Node is SimpleNameSyntax or BinaryExpressionSyntax or CastExpressionSyntax
        let symbol = found.Model.GetSymbolInfo(found.Node).Symbol
        where symbol?.ContainingAssembly?.Name == "UnitsNet"
        let result = symbol switch
        {
            IPropertySymbol property => property.Type,
            IMethodSymbol method => method.ReturnType,
            _ => null,
        }
        where result is not null && IsNumber(result)
        select (found.Node.SyntaxTree.FilePath, SourceCode.Place(found.Node), found.Node.ToString());

    private static bool IsNumber(ITypeSymbol type) =>
        type.SpecialType is SpecialType.System_Double or SpecialType.System_Single or SpecialType.System_Decimal
        || type.Name == "QuantityValue";
}

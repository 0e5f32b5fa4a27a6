using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>A guard names what it checks by itself, once, and by a name that the caller knows.</summary>
public sealed class GuardTests
{
    private static readonly Call[] Calls = [.. Find()];

    [Fact]
    public void NoGuard_NamesItsArgumentTwice() =>
        Offenders.None(
            Calls.Where(c => c.Given?.ToString() == $"nameof({c.Checked})").Select(c => $"{c.Place}: {c.Checked}")
        );

    /// <summary>What is no parameter would be named by its expression, which tells a caller nothing.</summary>
    [Fact]
    public void EveryGuardThatNamesItsArgumentItself_ChecksAParameter() =>
        Offenders.None(
            Calls.Where(c => c.Given is null && !c.IsParameter).Select(c => $"{c.Place}: {c.Method}({c.Checked})")
        );

    /// <summary>The search above does find guards.</summary>
    [Fact]
    public void Guards_AreFound() => Assert.True(Calls.Count(c => c.Given is null && c.IsParameter) >= 300);

    private static IEnumerable<Call> Find() =>
        from found in SourceCode.Nodes<InvocationExpressionSyntax>()
        where found.Node.ArgumentList.Arguments.Count > 0
        let method = found.Model.GetSymbolInfo(found.Node).Symbol as IMethodSymbol
        where method?.ContainingAssembly.Name == "FuelMath"
        let name = method.Parameters.FirstOrDefault(p => Named(p) is not null)
        where name is not null
        let given = found.Node.ArgumentList.Arguments
        let subject = Argument(given, method.Parameters.First(p => p.Name == Named(name)))
        select new Call(
            SourceCode.Place(found.Node),
            method.Name,
            subject?.ToString() ?? "",
            Argument(given, name),
            subject is not null && found.Model.GetSymbolInfo(subject).Symbol is IParameterSymbol
        );

    private static ExpressionSyntax? Argument(SeparatedSyntaxList<ArgumentSyntax> given, IParameterSymbol parameter) =>
        given.FirstOrDefault(a => a.NameColon?.Name.Identifier.Text == parameter.Name)?.Expression
        ?? (
            given.Count > parameter.Ordinal && given[parameter.Ordinal].NameColon is null
                ? given[parameter.Ordinal].Expression
                : null
        );

    /// <summary>The parameter whose expression fills this one; null when none does.</summary>
    private static string? Named(IParameterSymbol parameter) =>
        parameter
            .GetAttributes()
            .FirstOrDefault(a => a.AttributeClass?.Name == "CallerArgumentExpressionAttribute")
            ?.ConstructorArguments[0]
            .Value as string;

    private sealed record Call(string Place, string Method, string Checked, ExpressionSyntax? Given, bool IsParameter);
}

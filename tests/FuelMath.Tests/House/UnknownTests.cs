using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.House;

/// <summary>One manner for what is not known, and one for other ways in.</summary>
public sealed class UnknownTests
{
    /// <summary>Getters that throw: each with its reason.</summary>
    private static readonly Dictionary<string, string> Throwing = new()
    {
        ["Buffer.Iterations"] = "a buffer without a state is a mistake of the caller, who filled it himself",
        ["Buffer.WorstMassImbalance"] = "likewise",
        ["Buffer.WorstPressureResidual"] = "likewise",
        ["Mixture.Lambda"] = "no number, here as everywhere, leaves the range of a lambda",
        ["Lane.this"] = "an index outside is a mistake of the caller",
    };

    /// <summary>Types with a public constructor whose other ways in are not FromX: each with its reason.</summary>
    private static readonly Dictionary<string, string> OtherNames = new()
    {
        ["GaugePressure.Add"] = "the plain name of its operator",
    };

    /// <summary>
    /// A value that may be missing is null, or refuses in a method that needs it: a getter that throws wants a HasX before it, which
    /// a caller forgets.
    /// </summary>
    [Fact]
    public void NoGetter_Throws() => Offenders.None(ThrowingGetters.Where(g => !Throwing.ContainsKey(g)));

    [Fact]
    public void EveryThrowingGetterNamed_IsStillThere() => Offenders.None(Throwing.Keys.Except(ThrowingGetters));

    /// <summary>
    /// A factory of another name is for types without a public constructor, where it says the kind: FourStroke, Junction, Battery.
    /// Arithmetic on scalars is no way in.
    /// </summary>
    [Fact]
    public void OtherWaysIn_AreFromX() =>
        Offenders.None(
            OwnFactories
                .Where(m => !m.Name.StartsWith("From", StringComparison.Ordinal))
                .Select(NameOf)
                .Where(n => !OtherNames.ContainsKey(n))
        );

    [Fact]
    public void EveryOtherNameNamed_IsStillThere() =>
        Offenders.None(OtherNames.Keys.Except(OwnFactories.Select(NameOf)));

    private static IEnumerable<string> ThrowingGetters =>
        from p in SourceCode.Nodes<BasePropertyDeclarationSyntax>()
        where
            p.Node.Modifiers.Any(SyntaxKind.PublicKeyword)
            && p.Model.GetDeclaredSymbol(p.Node) is { } symbol
            && IsSeen(symbol)
        where Throws(p.Node)
        let name = p.Node is PropertyDeclarationSyntax property ? property.Identifier.Text : "this"
        select $"{p.Node.FirstAncestorOrSelf<TypeDeclarationSyntax>()!.Identifier.Text}.{name}";

    private static IEnumerable<MethodInfo> OwnFactories =>
        PublicApi
            .Types.Where(t =>
                t.GetConstructors().Length > 0
                && !t.GetInterfaces().Any(i => i.Name.StartsWith("IScalar", StringComparison.Ordinal))
            )
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(m => !m.IsSpecialName && m.ReturnType == m.DeclaringType)
            .Where(m => !m.Name.StartsWith("Parse", StringComparison.Ordinal));

    /// <summary>By its documentation or by its body.</summary>
    private static bool Throws(BasePropertyDeclarationSyntax property) =>
        property.GetLeadingTrivia().ToFullString().Contains("<exception", StringComparison.Ordinal)
        || property.DescendantNodes().Any(n => n is ThrowExpressionSyntax or ThrowStatementSyntax);

    private static bool IsSeen(ISymbol symbol)
    {
        for (ISymbol? at = symbol; at is not null and not INamespaceSymbol; at = at.ContainingSymbol)
        {
            if (at.DeclaredAccessibility != Accessibility.Public)
            {
                return false;
            }
        }

        return true;
    }

    private static string NameOf(MethodInfo method) => $"{method.DeclaringType!.Name}.{method.Name}";
}

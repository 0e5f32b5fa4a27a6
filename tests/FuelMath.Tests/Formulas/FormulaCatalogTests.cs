using System.Reflection;
using System.Text.RegularExpressions;
using FuelMath.Formulas;
using FuelMath.Tests.House;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FuelMath.Tests.Formulas;

/// <summary>The one list of formulas: complete, true to the docs, and right by outside values.</summary>
public sealed partial class FormulaCatalogTests
{
    public static TheoryData<string> Names() => [.. FormulaCatalog.All.Select(f => f.Name)];

    /// <summary>A formula without an entry can be read by no sheet, exercise or column: write one beside it.</summary>
    [Fact]
    public void EveryPublicFormula_IsListedOnce() =>
        Assert.Equal(
            typeof(Friction)
                .Assembly.GetExportedTypes()
                .Where(t => t.Namespace == typeof(Friction).Namespace && t is { IsAbstract: true, IsSealed: true })
                .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
                .Where(m => m.IsGenericMethodDefinition)
                .Select(m => $"{m.DeclaringType!.Name}.{m.Name}")
                .Order(StringComparer.Ordinal),
            FormulaCatalog.All.Select(f => f.Name).Order(StringComparer.Ordinal)
        );

    [Fact]
    public void EveryTolerance_IsOfAListedFormula() =>
        Offenders.None(FormulaTolerances.Names.Where(n => FormulaCatalog.Find(n) is null));

    [Theory]
    [MemberData(nameof(Names))]
    public void Example_ComesOutAsPublished(string name)
    {
        FormulaInfo formula = FormulaCatalog.Named(name);
        FormulaInfo.CheckedExample example = formula.Example;

        double value = formula.Calculate(FormulaInfo.CallUnits.Si, example.Arguments.AsSpan());

        Close.Within(example.RelativeTolerance, example.Expected, value);
    }

    /// <summary>A tolerance that a tenth of the example's result would pass is no check.</summary>
    [Fact]
    public void EveryExample_IsACheck() =>
        Offenders.None(
            FormulaCatalog
                .All.Where(f => f.Example.RelativeTolerance > 0.05 || f.Example.Expected == 0)
                .Select(f => f.Name)
        );

    [Theory]
    [MemberData(nameof(Names))]
    public void Result_IsTheLastStepOfTheWorking(string name)
    {
        FormulaInfo formula = FormulaCatalog.Named(name);

        Working working = formula.WorkingOf(FormulaInfo.CallUnits.Si, formula.Example.Arguments.AsSpan());

        Assert.Same(formula.Result.Symbol, working.Lines[^1].Symbol);
    }

    /// <summary>
    /// The source of a line is that of the formula which made it: one of this formula's own on the last line, and of some
    /// listed formula on those before.
    /// </summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void WorkingLines_CiteTheFormulaThatMadeThem(string name)
    {
        FormulaInfo formula = FormulaCatalog.Named(name);

        Working working = formula.WorkingOf(FormulaInfo.CallUnits.Si, formula.Example.Arguments.AsSpan());

        Assert.Contains(working.Lines[^1].Source!.Key, formula.Sources.Select(s => s.Key));
        Assert.All(
            working.Lines,
            line =>
                Assert.Contains(
                    FormulaCatalog.All,
                    f =>
                        f.Sources.Contains(line.Source!)
                        || f.Sources.Any(s => s.Key == line.Source!.Key && f == formula)
                )
        );
    }

    /// <summary>The docs and the catalog name the same works.</summary>
    [Fact]
    public void Sources_AreThoseOfTheDocs() =>
        Offenders.None(
            from found in SourceCode.Nodes<MethodDeclarationSyntax>()
            let parent = found.Node.Parent as ClassDeclarationSyntax
            where parent is not null
            let formula = FormulaCatalog.Find($"{parent.Identifier.Text}.{found.Node.Identifier.Text}")
            where formula is not null && SourceCode.Namespace(found.Node.SyntaxTree) == "FuelMath.Formulas"
            let own = Keys(found.Node)
            let documented = own.Length > 0 ? own : Keys(parent)
            let listed = formula.Sources.Select(s => s.Key).Order(StringComparer.Ordinal).ToArray()
            where !documented.SequenceEqual(listed)
            select $"{formula.Name}: docs {string.Join(", ", documented)}, catalog {string.Join(", ", listed)}"
        );

    [Fact]
    public void EveryKey_IsListedInTheBibliography() =>
        Offenders.None(
            FormulaCatalog
                .All.SelectMany(f => f.Sources.Append(f.Example.Source))
                .Select(s => s.Key)
                .Distinct()
                .Where(k => !Repository.SourceKeys.Contains(k))
        );

    /// <summary>Names of arguments are those of the method, so that text and code agree.</summary>
    [Fact]
    public void Arguments_AreNamedAsInTheMethod() =>
        Offenders.None(
            from type in typeof(Friction).Assembly.GetExportedTypes()
            where type.Namespace == typeof(Friction).Namespace && type is { IsAbstract: true, IsSealed: true }
            from method in type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
            where method.IsGenericMethodDefinition
            let formula = FormulaCatalog.Named($"{type.Name}.{method.Name}")
            where method.GetParameters().All(p => !p.ParameterType.IsGenericType)
            let known = method.GetParameters().Select(p => p.Name!).ToArray()
            let listed = formula.Arguments.Select(a => a.Name).Concat(formula.Constants.Select(c => c.Name)).ToArray()
            where !known.Order(StringComparer.Ordinal).SequenceEqual(listed.Order(StringComparer.Ordinal))
            select $"{formula.Name}: {string.Join(", ", known)} / {string.Join(", ", listed)}"
        );

    /// <summary>The unit of a symbol is the SI unit of its kind, without the reference of a pressure.</summary>
    [Fact]
    public void Symbols_HaveTheSiUnitOfTheirKind() =>
        Offenders.None(
            from formula in FormulaCatalog.All
            from quantity in formula.Arguments.Select(a => a.Quantity).Append(formula.Result)
            let unit = quantity.Symbol.Unit.Length == 0 ? "1" : quantity.Symbol.Unit
            where !quantity.Units.Any(u => u.Split(" absolute")[0].Split(" gauge")[0] == unit && IsSi(quantity, u))
            where !(unit == "1/s" && quantity.Unit == "Hz")
            select $"{formula.Name}: {quantity.Symbol.Name} in {unit}, kind in {quantity.Unit}"
        );

    /// <summary>Within one formula two quantities have two symbols.</summary>
    [Fact]
    public void Symbols_OfOneFormula_Differ() =>
        Offenders.None(
            FormulaCatalog
                .All.Where(f => f.Arguments.DistinctBy(a => a.Quantity.Symbol.Name).Count() != f.Arguments.Length)
                .Select(f => f.Name)
        );

    [Fact]
    public void Summaries_AreOneLineWithoutAFullStop() =>
        Offenders.None(
            FormulaCatalog.All.Where(f => f.Summary.EndsWith('.') || f.Summary.Length > 100).Select(f => f.Name)
        );

    [Fact]
    public void EveryTopic_HasFormulas() =>
        Assert.All(Enum.GetValues<FormulaInfo.FormulaTopic>(), t => Assert.NotEmpty(FormulaCatalog.About(t)));

    private static bool IsSi(FormulaQuantity quantity, string unit) => quantity.ToSi(1, unit) == 1;

    private static string[] Keys(SyntaxNode node)
    {
        string docs = Regex.Replace(node.GetLeadingTrivia().ToFullString(), @"\s*///\s*", " ");
        return
        [
            .. SourceText()
                .Matches(docs)
                .SelectMany(m => Key().Matches(m.Value))
                .Select(m => m.Groups[1].Value)
                .Distinct()
                .Order(StringComparer.Ordinal),
        ];
    }

    [GeneratedRegex(@"Source: .*?(?=</summary>|</remarks>|</para>|<para>|$)", RegexOptions.Singleline)]
    private static partial Regex SourceText();

    [GeneratedRegex(@"\[([A-Z][\w.]*(?:-[\w.]+)+|Definition)\]")]
    private static partial Regex Key();
}

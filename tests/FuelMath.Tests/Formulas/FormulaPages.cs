using System.Globalization;
using System.Text;
using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>The pages of the docs that are made from the catalog: one for each formula, and an index by topic.</summary>
internal static class FormulaPages
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    /// <summary>Every file, by its path below the docs.</summary>
    internal static IEnumerable<(string Path, string Text)> All()
    {
        yield return ("formulas/index.md", Index());
        yield return ("formulas/toc.yml", Contents());
        foreach (FormulaInfo formula in FormulaCatalog.All)
        {
            yield return ($"formulas/{formula.Name}.md", Page(formula));
            yield return ($"images/formulas/{formula.Name}.svg", FormulaChart.Draw(formula));
        }
    }

    internal static double[] CustomaryExample(FormulaInfo formula) =>
        [
            .. formula.Example.Arguments.Select(
                (x, i) => formula.Arguments[i].Quantity.FromSi(x, formula.Arguments[i].Quantity.CustomaryUnit)
            ),
        ];

    private static string Index()
    {
        StringBuilder page = Start("Formulas by topic");
        page.Append(
            Invariant,
            $"The {FormulaCatalog.All.Length} formulas of the [catalog](../guide/formulas.md#the-catalog), each with its symbols, ranges, sources, a worked example and a chart.\n"
        );
        foreach (FormulaInfo.FormulaTopic topic in Enum.GetValues<FormulaInfo.FormulaTopic>())
        {
            page.Append(Invariant, $"\n## {topic}\n\n| Formula | Computes |\n|---|---|\n");
            foreach (FormulaInfo formula in FormulaCatalog.About(topic))
            {
                page.Append(Invariant, $"| [{formula.Name}]({formula.Name}.md) | {formula.Summary} |\n");
            }
        }

        return page.ToString();
    }

    private static string Contents()
    {
        var text = new StringBuilder(
            "# Made from the catalog; see DEVELOPERS.md.\n- name: By topic\n  href: index.md\n"
        );
        foreach (FormulaInfo.FormulaTopic topic in Enum.GetValues<FormulaInfo.FormulaTopic>())
        {
            text.Append(Invariant, $"- name: {topic}\n  items:\n");
            foreach (FormulaInfo formula in FormulaCatalog.About(topic))
            {
                text.Append(Invariant, $"  - name: {formula.Name}\n    href: {formula.Name}.md\n");
            }
        }

        return text.ToString();
    }

    private static string Page(FormulaInfo formula)
    {
        StringBuilder page = Start(formula.Name);
        Working working = formula.WorkingOf(FormulaInfo.CallUnits.Customary, CustomaryExample(formula));
        page.Append(Invariant, $"{formula.Summary}.\n\n");
        foreach (Working.Line line in working.Lines)
        {
            page.Append(Invariant, $"$$\n{line.ToLatexFormula(Invariant)}\n$$\n\n");
        }

        page.Append("## Arguments\n\n| Name | Symbol | Meaning | From | To | Usual |\n|---|---|---|---|---|---|\n");
        foreach (FormulaInfo.Argument argument in formula.Arguments)
        {
            FormulaQuantity q = argument.Quantity;
            page.Append(
                Invariant,
                $"| `{argument.Name}` | {Symbol(q)} | {q.Symbol.Meaning} | {Number(q, argument.Minimum)} | {Number(q, argument.Maximum)} | {Number(q, argument.UsualMinimum)} to {Number(q, argument.UsualMaximum)} |\n"
            );
        }

        FormulaQuantity result = formula.Result;
        page.Append(
            Invariant,
            $"\nGives {Symbol(result)}, {result.Symbol.Meaning}, in {Unit(result.Unit)} ({Unit(result.CustomaryUnit)} in customary units).\n"
        );
        foreach (FormulaInfo.Bound bound in formula.Bounds)
        {
            page.Append(Invariant, $"\nNeeds `{bound}`.\n");
        }

        foreach (FormulaInfo.Constant constant in formula.Constants)
        {
            string unit = constant.Unit.Length == 0 ? "" : $" {constant.Unit}";
            page.Append(Invariant, $"\nFixed: `{constant.Name}` = {constant.Value:G9}{unit}.\n");
        }

        page.Append(
            Invariant,
            $"\nSources: {string.Join("; ", formula.Sources)}. Reference: <xref:FuelMath.Formulas.{formula.Name.Split('.')[0]}>.\n\n"
        );
        page.Append(Invariant, $"## Example\n\n{working.ToMarkdown(Invariant)}\n");
        page.Append(
            Invariant,
            $"Known from outside: {Number(result, formula.Example.Expected, "G9")}, within {formula.Example.RelativeTolerance:G2} of it. {formula.Example.Source}.\n\n"
        );
        page.Append(
            Invariant,
            $"## Chart\n\n![{formula.Name} over one argument, with its slope](../images/formulas/{formula.Name}.svg)\n\n"
        );
        page.Append(Invariant, $"{FormulaChart.Caption(formula)}\n");
        return page.ToString();
    }

    private static StringBuilder Start(string title) =>
        new($"<!-- Made from the catalog; see DEVELOPERS.md. -->\n# {title}\n\n");

    private static string Symbol(FormulaQuantity quantity) => $"${quantity.ToLatexSymbol()}$";

    private static string Unit(string unit) => unit == "1" ? "no unit" : unit;

    private static string Number(FormulaQuantity quantity, double si) => Number(quantity, si, "G6");

    private static string Number(FormulaQuantity quantity, double si, string format)
    {
        string unit = quantity.CustomaryUnit == "1" ? "" : $" {quantity.CustomaryUnit}";
        return $"{quantity.FromSi(si, quantity.CustomaryUnit).ToString(format, Invariant)}{unit}";
    }
}

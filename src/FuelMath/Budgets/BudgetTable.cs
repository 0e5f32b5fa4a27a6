using System.Globalization;
using System.Text;
using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>Writes a budget of uncertainty as a table.</summary>
internal static class BudgetTable
{
    private const double UsualPercent = 95;

    private static readonly string[] Heads =
    [
        "input",
        "value",
        "standard uncertainty",
        "unit",
        "shape",
        "degrees of freedom",
        "slope",
        "contribution",
        "share, %",
    ];

    internal static string Text(UncertaintyBudget budget, IFormatProvider provider)
    {
        string[][] rows = [Heads, .. budget.Lines.Select(l => Row(budget, l, provider))];
        int[] widths = [.. Heads.Select((_, c) => rows.Max(r => r[c].Length))];
        var text = new StringBuilder();
        foreach (string[] row in rows)
        {
            text.AppendJoin(
                "  ",
                row.Select((cell, c) => IsWords(c) ? cell.PadRight(widths[c]) : cell.PadLeft(widths[c]))
            );
            while (text[^1] == ' ')
            {
                text.Length--;
            }

            text.Append('\n');
        }

        return text.Append(Result(budget, provider)).Append('\n').ToString();
    }

    internal static string Markdown(UncertaintyBudget budget, IFormatProvider provider)
    {
        var text = new StringBuilder();
        Line(Heads);
        Line(Heads.Select((_, c) => IsWords(c) ? "---" : "--:"));
        foreach (UncertaintyBudget.Line line in budget.Lines)
        {
            Line(Row(budget, line, provider).Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal)));
        }

        return text.Append('\n').Append(Result(budget, provider)).Append('\n').ToString();

        void Line(IEnumerable<string> cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");
    }

    /// <summary>Result, standard uncertainty, and the expanded uncertainty where it is known.</summary>
    internal static string Result(UncertaintyBudget budget, IFormatProvider provider)
    {
        string value = Six(budget.Value, provider);
        string standard = Three(budget.CombinedStandardUncertainty, provider);
        string unit = budget.Unit == "1" ? "" : $" {budget.Unit}";
        string result = $"result {value}{unit}, standard uncertainty {standard}{unit}";
        if (budget.EffectiveDegreesOfFreedom is not { } degrees)
        {
            return $"{result}; its degrees of freedom are not known";
        }

        string expanded = Three(budget.ExpandedUncertainty(Ratio.FromPercent(UsualPercent)), provider);
        string share = UsualPercent.ToString("0", provider);
        return $"{result}, effective degrees of freedom {Degrees(degrees, provider)}; {value} ± {expanded}{unit} at {share} %";
    }

    private static string[] Row(UncertaintyBudget budget, UncertaintyBudget.Line line, IFormatProvider provider) =>
        [
            line.Input.Name,
            Six(line.Input.Value, provider),
            Three(line.Input.StandardUncertainty, provider),
            line.Input.Unit == "1" ? "" : line.Input.Unit,
            line.Input.StandardUncertainty == 0 ? "exact" : Words(line.Input.Shape),
            line.Input.StandardUncertainty == 0 ? "" : Degrees(line.Input.DegreesOfFreedom, provider),
            Six(line.Slope, provider),
            Three(line.Contribution, provider),
            budget.CombinedStandardUncertainty == 0 ? "" : (100 * line.Share).ToString("0.0", provider),
        ];

    private static bool IsWords(int column) => column is 0 or 3 or 4;

    private static string Six(double number, IFormatProvider provider) => number.ToString("G6", provider);

    private static string Three(double number, IFormatProvider provider) => number.ToString("G3", provider);

    private static string Degrees(DegreesOfFreedom degrees, IFormatProvider provider) =>
        degrees.IsUnlimited ? "unlimited" : degrees.ToNumber().ToString("0.#", provider);

    private static string Words(SpreadShape shape) =>
        shape == SpreadShape.ArcSine ? "arc sine" : shape.ToString().ToLowerInvariant();
}

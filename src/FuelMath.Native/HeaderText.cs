using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using FuelMath.Formulas;

namespace FuelMath.Native;

/// <summary>Writes <c>include/fuelmath.h</c> and <c>include/wizard.json</c> from the catalog.</summary>
internal static class HeaderText
{
    /// <summary>The declarations, a number for each status, and the place of each formula in the list.</summary>
    internal static string Header(ImmutableArray<FormulaInfo> formulas)
    {
        var text = new StringBuilder(Declarations.Text);
        text.Append(
            "\n/* The places of the formulas in the list of this version, with their arguments in SI units. */\n"
        );
        text.Append("enum fuelmath_formula {\n");
        for (int i = 0; i < formulas.Length; i++)
        {
            FormulaInfo formula = formulas[i];
            string arguments = string.Join(", ", formula.Arguments.Select(a => $"{a.Name} {Unit(a.Quantity)}"));
            text.Append(
                CultureInfo.InvariantCulture,
                $"    /* {formula.Summary}: {arguments}; gives {Unit(formula.Result)}. */\n    {Name(formula)} = {i},\n"
            );
        }

        text.Append("    FUELMATH_FORMULAS = ").Append(formulas.Length).Append("\n};\n\n");
        return text.Append("#ifdef __cplusplus\n}\n#endif\n#endif\n").ToString();
    }

    /// <summary>What a spreadsheet's function wizard shows, in customary units: the function, then argument by argument.</summary>
    internal static string Wizard(ImmutableArray<FormulaInfo> formulas)
    {
        var text = new StringBuilder("[\n");
        foreach (FormulaInfo formula in formulas)
        {
            string arguments = string.Join(",", formula.Arguments.Select(a => $"\n      {Pair(a.Name, Words(a))}"));
            text.Append(
                $"  {{\n    {Pair("name", Name(formula))},\n    {Pair("formula", formula.Name)},\n    "
                    + $"{Pair("description", $"{formula.Summary}, in {formula.Result.CustomaryUnit}")},\n    "
                    + $"\"arguments\": {{{arguments}\n    }}\n  }}"
            );
            text.Append(formula == formulas[^1] ? "\n" : ",\n");
        }

        return text.Append("]\n").ToString();
    }

    /// <summary>A name of capitals: <c>Orifice.CarriedMassFlow</c> is <c>FUELMATH_ORIFICE_CARRIED_MASS_FLOW</c>.</summary>
    private static string Name(FormulaInfo formula)
    {
        var name = new StringBuilder("FUELMATH");
        char before = '.';
        foreach (char c in "." + formula.Name)
        {
            bool starts = c == '.' || (char.IsUpper(c) && before != '.' && !char.IsUpper(before));
            name.Append(starts ? "_" : "").Append(c == '.' ? "" : char.ToUpperInvariant(c));
            before = c;
        }

        return name.ToString();
    }

    private static string Words(FormulaInfo.Argument argument)
    {
        FormulaQuantity quantity = argument.Quantity;
        (double least, double most) = (
            quantity.FromSi(argument.Minimum, quantity.CustomaryUnit),
            quantity.FromSi(argument.Maximum, quantity.CustomaryUnit)
        );
        string unit = quantity.CustomaryUnit == "1" ? "" : $" {quantity.CustomaryUnit}";
        return string.Create(CultureInfo.InvariantCulture, $"{quantity.Symbol.Meaning}, {least:G6} to {most:G6}{unit}");
    }

    private static string Unit(FormulaQuantity quantity) => quantity.Unit == "1" ? "(1)" : $"({quantity.Unit})";

    /// <summary>Texts of the catalog hold no quote and no control character.</summary>
    private static string Pair(string name, string value) => $"\"{name}\": \"{value}\"";
}

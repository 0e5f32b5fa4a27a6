using System.Globalization;
using System.Text;

namespace FuelMath.Formulas;

/// <summary>Symbols, numbers and units as LaTeX.</summary>
internal static class Latex
{
    /// <summary>Names that are kept whole and upright at the start of a symbol.</summary>
    private static readonly string[] Upright =
    [
        "AFR",
        "NPSH",
        "VCF",
        "VBI",
        "HHV",
        "LHV",
        "Re",
        "De",
        "bsfc",
        "result",
    ];

    private static readonly string[] Greek = ["alpha", "beta", "lambda", "omega", "sigma", "phi", "rho", "mu", "nu"];

    /// <summary>A longer name is a word, not a letter with an index.</summary>
    private const int LongestIndex = 4;

    /// <summary>A name as a typeset symbol: <c>dp0</c> is a difference of pressures with an index.</summary>
    /// <remarks>
    /// A name starts with a whole word that is upright, with the name of a Greek letter, with the d of a difference, or
    /// with a single letter; what follows is its index. Any other name is set as text.
    /// </remarks>
    internal static string Symbol(string name)
    {
        if (name == "e/D")
        {
            return @"\frac{\varepsilon}{D}";
        }

        string[] parts = name.Split('_');
        if (!parts.All(p => p.Length > 0 && p.All(char.IsAsciiLetterOrDigit)) || !char.IsAsciiLetter(name[0]))
        {
            return Text(name);
        }

        (string letter, string index) = Letter(parts[0]);
        string all = string.Join(",", parts.Skip(1).Prepend(index).Where(p => p.Length > 0));
        return all.Length == 0 ? letter : $"{letter}_{{{Index(all)}}}";
    }

    /// <summary>A number as it was written, with its exponent as a power of ten.</summary>
    internal static string Number(string written)
    {
        int mark = written.IndexOf('E', StringComparison.Ordinal);
        string mantissa = (mark < 0 ? written : written[..mark]).Replace(",", "{,}", StringComparison.Ordinal);
        if (mark < 0)
        {
            return mantissa;
        }

        string exponent = written[(mark + 1)..];
        string sign = exponent[0] is '-' ? "-" : "";
        string power = $"10^{{{sign}{exponent.TrimStart('+', '-').TrimStart('0')}}}";
        return mantissa == "1" ? power : $@"{mantissa} \cdot {power}";
    }

    internal static string Quantity(string written, string unit) => Attach(Number(written), unit);

    internal static string Attach(string formula, string unit) =>
        unit.Length == 0 || unit == "1" ? formula : $@"{formula}\ {Unit(unit)}";

    internal static string Text(string words)
    {
        var text = new StringBuilder(@"\text{");
        foreach (char c in words)
        {
            text.Append(
                c switch
                {
                    '\\' => @"\textbackslash{}",
                    '^' => @"\textasciicircum{}",
                    '~' => @"\textasciitilde{}",
                    '{' or '}' or '%' or '&' or '#' or '_' or '$' => $@"\{c}",
                    _ => c.ToString(),
                }
            );
        }

        return text.Append('}').ToString();
    }

    /// <summary>A unit upright: exponents raised, products set apart.</summary>
    internal static string Unit(string unit)
    {
        var text = new StringBuilder(@"\mathrm{");
        for (int i = 0; i < unit.Length; i++)
        {
            char c = unit[i];
            if (char.IsAsciiDigit(c) && i > 0 && (char.IsAsciiLetter(unit[i - 1]) || unit[i - 1] == '^'))
            {
                int start = i;
                while (i + 1 < unit.Length && (char.IsAsciiDigit(unit[i + 1]) || unit[i + 1] == '.'))
                {
                    i++;
                }

                text.Append(CultureInfo.InvariantCulture, $"^{{{unit[start..(i + 1)]}}}");
                continue;
            }

            text.Append(
                c switch
                {
                    ' ' => @"\ ",
                    '%' => @"\%",
                    '^' => "",
                    _ => c.ToString(),
                }
            );
        }

        string set = text.Append('}').ToString();
        return set.Replace("degC", @"{}^{\circ}C", StringComparison.Ordinal)
            .Replace("degF", @"{}^{\circ}F", StringComparison.Ordinal)
            .Replace("ohm", @"\Omega{}", StringComparison.Ordinal)
            .Replace("{um", @"{\mu{}m", StringComparison.Ordinal)
            .Replace("{us", @"{\mu{}s", StringComparison.Ordinal);
    }

    private static (string Letter, string Index) Letter(string name)
    {
        if (Array.Find(Upright, u => name.StartsWith(u, StringComparison.Ordinal)) is { } word)
        {
            return ($@"\mathrm{{{word}}}", name[word.Length..]);
        }

        if (
            Array.Find(Greek, g => name.StartsWith(g, StringComparison.Ordinal)) is { } greek
            && name.Length - greek.Length < LongestIndex
        )
        {
            return ($@"\{greek}", name[greek.Length..]);
        }

        return name.Length > 1 && name[0] == 'd' && name[1] is 'p' or 'T' or 'V' or 't' or 'f'
                ? ($@"\Delta {name[1]}", name[2..])
            : name.Length > LongestIndex ? ($@"\mathrm{{{name}}}", "")
            : (name[..1], name[1..]);
    }

    /// <summary>An index: a word upright, single letters and digits as they are.</summary>
    private static string Index(string index) =>
        string.Join(
            ",",
            Array.ConvertAll(
                index.Split(','),
                i =>
                    Array.Find(Greek, g => g == i) is { } greek ? $@"\{greek}"
                    : i.Length > 1 && i.Any(char.IsAsciiLetter) ? $@"\mathrm{{{i}}}"
                    : i
            )
        );
}

using System.Globalization;

namespace FuelMath.Tests.Workbooks;

/// <summary>Reads and calculates one formula: comparison, sum, product, power, sign, atom, from loose to tight.</summary>
internal sealed class SheetParser(SheetEngine engine, string sheet, string text)
{
    private static readonly string[] Comparisons = ["<=", ">=", "<>", "<", ">", "="];

    private int at;

    internal object Evaluate()
    {
        object value = Comparison();
        return at == text.Length ? value : throw new FormatException($"\"{text[at..]}\" is left of \"{text}\"");
    }

    private object Comparison()
    {
        object left = Chain(Product, "+-");
        string? sign = Comparisons.FirstOrDefault(c => text.AsSpan(at).StartsWith(c));
        if (sign is null)
        {
            return left;
        }

        at += sign.Length;
        object right = Chain(Product, "+-");
        return (left, right) switch
        {
            (SheetError, _) => left,
            (_, SheetError) => right,
            (string a, string b) => Holds(sign, string.CompareOrdinal(a, b)),
            (string, _) => Holds(sign, 1),
            (_, string) => Holds(sign, -1),
            _ => Holds(sign, Number(left).CompareTo(Number(right))),
        };
    }

    private object Product() => Chain(Power, "*/");

    private object Power() => Chain(Sign, "^");

    private object Sign()
    {
        if (!Take("-"))
        {
            return Atom();
        }

        object value = Sign();
        return value is SheetError ? value : -Number(value);
    }

    private object Chain(Func<object> part, string signs)
    {
        object value = part();
        while (at < text.Length && signs.Contains(text[at], StringComparison.Ordinal))
        {
            char sign = text[at++];
            object next = part();
            value =
                value is SheetError ? value
                : next is SheetError ? next
                : value is string { Length: > 0 } || next is string { Length: > 0 } ? new SheetError("#VALUE!")
                : Finite(
                    sign switch
                    {
                        '+' => Number(value) + Number(next),
                        '-' => Number(value) - Number(next),
                        '*' => Number(value) * Number(next),
                        '/' when Number(next) == 0 => double.NaN,
                        '/' => Number(value) / Number(next),
                        _ => Math.Pow(Number(value), Number(next)),
                    }
                );
        }

        return value;
    }

    private object Atom()
    {
        if (Take("("))
        {
            object inside = Comparison();
            Expect(")");
            return inside;
        }

        if (Take("\""))
        {
            string words = While(c => c != '"');
            Expect("\"");
            return words;
        }

        if (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            return double.Parse(While(c => char.IsAsciiDigit(c) || c == '.'), CultureInfo.InvariantCulture);
        }

        string home = sheet;
        if (Take("'"))
        {
            home = While(c => c != '\'');
            Expect("'!");
        }

        string name = While(char.IsAsciiLetterOrDigit);
        return name switch
        {
            "" => throw new FormatException($"\"{text[at..]}\" in \"{text}\" is no atom"),
            "TRUE" => true,
            "FALSE" => false,
            _ => Take("(") ? Call(name, Arguments()) : engine[home, name],
        };
    }

    /// <summary>The arguments, all calculated: an error in a side that is not taken counts no more than the side.</summary>
    private List<object> Arguments()
    {
        var arguments = new List<object>();
        while (!Take(")"))
        {
            if (arguments.Count > 0)
            {
                Expect(",");
            }

            arguments.Add(Comparison());
        }

        return arguments;
    }

    private static object Call(string name, List<object> a)
    {
        if (name == "IF" && a[0] is not SheetError)
        {
            return Truth(a[0]) ? a[1] : a[2];
        }

        if (a.OfType<SheetError>().FirstOrDefault() is { } error)
        {
            return error;
        }

        return name switch
        {
            "SQRT" => Finite(Math.Sqrt(Number(a[0]))),
            "EXP" => Finite(Math.Exp(Number(a[0]))),
            "LN" => Finite(Math.Log(Number(a[0]))),
            "POWER" => Finite(Math.Pow(Number(a[0]), Number(a[1]))),
            "ABS" => Math.Abs(Number(a[0])),
            "MIN" => a.Min(Number),
            "MAX" => a.Max(Number),
            "AND" => a.All(Truth),
            "OR" => a.Any(Truth),
            "NA" => new SheetError("#N/A"),
            "ISNUMBER" => a[0] is double,
            "HYPERLINK" => a[1],
            _ => throw new FormatException($"no function {name}"),
        };
    }

    private static object Finite(double value) => double.IsFinite(value) ? value : new SheetError("#NUM!");

    private static bool Truth(object value) => value as bool? ?? Number(value) != 0;

    private static double Number(object value) =>
        value switch
        {
            double number => number,
            bool truth => truth ? 1 : 0,
            "" => 0,
            _ => throw new FormatException($"{value} is no number"),
        };

    private static bool Holds(string sign, int order) =>
        sign switch
        {
            "<" => order < 0,
            ">" => order > 0,
            "<=" => order <= 0,
            ">=" => order >= 0,
            "=" => order == 0,
            _ => order != 0,
        };

    private string While(Func<char, bool> holds)
    {
        int start = at;
        while (at < text.Length && holds(text[at]))
        {
            at++;
        }

        return text[start..at];
    }

    private bool Take(string token)
    {
        bool found = text.AsSpan(at).StartsWith(token);
        at += found ? token.Length : 0;
        return found;
    }

    private void Expect(string token)
    {
        if (!Take(token))
        {
            throw new FormatException($"no {token} before \"{text[at..]}\" in \"{text}\"");
        }
    }
}

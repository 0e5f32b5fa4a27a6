using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Examples;

/// <summary>One result, and the comment that shows it: "3.963 g/s", "false: not 35 bar", "DoNotRun: the fuel boils".</summary>
internal static partial class ShownResult
{
    /// <summary>Whether the comment shows the result to its last digit; null where it says nothing of it.</summary>
    /// <param name="at">Which of the numbers in the comment it is: a statement that runs thrice shows three.</param>
    internal static bool? Compare(object? result, string comment, int at) =>
        result switch
        {
            bool truth => FirstTruth(comment, at) is { } said ? said == truth : null,
            string text => Contains(text, comment, at),
            Enum kind => comment.Split(',', ':', ';', ' ')[0] is { Length: > 0 } word && char.IsUpper(word[0])
                ? word == kind.ToString()
                : null,
            _ when comment.StartsWith('"') => Contains(Text(result), comment, at),
            null => null,
            _ => Numbers(comment) is { Length: > 0 } numbers
                ? at < numbers.Length
                    ? IsShown(result, numbers[at], comment)
                    : null
                : null,
        };

    internal static string Text(object? result) =>
        result switch
        {
            Working { Conversion: { } conversion } => $"{conversion.ToValue} {conversion.ToUnit}",
            IFormattable value => value.ToString(null, CultureInfo.InvariantCulture),
            _ => Convert.ToString(result, CultureInfo.InvariantCulture) ?? "null",
        };

    /// <summary>The numbers of a comment, each with the words that follow it; "0, 10.6 and 113 L/h" are three in L/h.</summary>
    internal static ImmutableArray<(string Number, string Words)> Numbers(string comment)
    {
        var numbers = new List<(string Number, string Words)>();
        foreach (Match match in Number().Matches(comment).Reverse())
        {
            string words = match.Groups["words"].Value.Trim();
            bool goesOn = words == "and" || (words.Length == 0 && match.Groups["comma"].Length > 0);
            numbers.Add((match.Groups["number"].Value, goesOn && numbers.Count > 0 ? numbers[^1].Words : words));
        }

        return [.. Enumerable.Reverse(numbers)];
    }

    /// <summary>What the statement gave, in the unit that its comment shows.</summary>
    internal static string Given(object? result, string comment, int at) =>
        result is not null and not string
        && Numbers(comment) is { Length: > 0 } numbers
        && at < numbers.Length
        && ValueOf(result, numbers[at].Words, comment) is { } value
            ? $"{value.ToString("G6", CultureInfo.InvariantCulture)} ({Text(result)})"
            : Text(result);

    private static bool IsShown(object result, (string Number, string Words) shown, string comment)
    {
        double number = double.Parse(
            shown.Number.Replace(" ", "", StringComparison.Ordinal),
            CultureInfo.InvariantCulture
        );
        int decimals = shown.Number.Split('.') is [_, var behind] ? behind.Length : 0;
        return ValueOf(result, shown.Words, comment) is { } value
            ? Math.Abs(value - number) <= 0.5000001 * Math.Pow(10, -decimals)
            : Text(result).Contains(shown.Number, StringComparison.Ordinal);
    }

    private static double? ValueOf(object result, string words, string comment) =>
        result switch
        {
            GaugePressure gauge => comment.Contains("gauge", StringComparison.Ordinal)
                ? In(gauge.AboveAmbient, words)
                : double.NaN,
            AbsolutePressure absolute => comment.Contains("absolute", StringComparison.Ordinal)
                ? In(absolute.AboveVacuum, words)
                : double.NaN,
            Lambda lambda => lambda.ToRatio(),
            AirFuelRatio ratio => ratio.ToMassRatio(),
            Working { Conversion: { } converted } => converted.ToValue,
            Working working => working.Value,
            Ratio share when !words.StartsWith('%') => share.DecimalFractions,
            IQuantity quantity => In(quantity, words),
            IConvertible plain => plain.ToDouble(CultureInfo.InvariantCulture),
            _ => null,
        };

    /// <summary>The quantity in the unit that the words begin with; not a number if they begin with none of its units.</summary>
    private static double In(IQuantity quantity, string words)
    {
        string[] parts = words
            .Replace("m3", "m³", StringComparison.Ordinal)
            .Replace("m2", "m²", StringComparison.Ordinal)
            .Split(' ');
        for (int count = parts.Length; count > 0; count--)
        {
            string unit = string.Join(' ', parts[..count]).TrimEnd('.');
            switch (quantity, unit)
            {
                case (Volume volume, "L"):
                    return volume.Liters;
                case (Volume volume, "mL"):
                    return volume.Milliliters;
                case (VolumeFlow flow, "mm³/min"):
                    return 60 * flow.CubicMillimetersPerSecond;
                case (Duration time, "min"):
                    return time.Minutes;
                case (TemperatureDelta change, "K"):
                    return change.Kelvins;
                default:
                    break;
            }

            if (
                UnitsNetSetup.Default.UnitParser.TryParse(
                    unit,
                    quantity.QuantityInfo.UnitType,
                    CultureInfo.InvariantCulture,
                    out Enum? found
                )
            )
            {
                return quantity.As(found);
            }
        }

        return double.NaN;
    }

    /// <summary>Text is shown in full, or up to and from "...", with or without quotation marks.</summary>
    private static bool? Contains(string text, string comment, int at)
    {
        MatchCollection quoted = Quoted().Matches(comment);
        if (quoted.Count > 0 && at >= quoted.Count)
        {
            return null;
        }

        string shown = quoted.Count > 0 ? quoted[at].Groups["text"].Value : comment;
        string[] parts = shown.Split("...", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return parts.All(p => text.Contains(p, StringComparison.Ordinal)) ? true
            : quoted.Count > 0 || Numbers(comment).Length > 0 ? false
            : null;
    }

    private static bool? FirstTruth(string comment, int at) =>
        Truth().Matches(comment) is { } words && at < words.Count ? bool.Parse(words[at].Value) : null;

    [GeneratedRegex(
        @"(?<![\w.])(?<number>[-+]?\d+( \d{3})*(\.\d+)?)(?![\w.]*\d)(?<words>([^,;:(\d]|(?<=[A-Za-z])\d)*)(?<comma>,?)"
    )]
    private static partial Regex Number();

    [GeneratedRegex("\"(?<text>[^\"]*)\"")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\b(true|false)\b")]
    private static partial Regex Truth();
}

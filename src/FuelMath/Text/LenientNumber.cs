using System.Globalization;
using System.Text.RegularExpressions;

namespace FuelMath;

/// <summary>
/// Numbers as people write them: decimal comma or point, groups, fractions, powers of ten; refused where two
/// interpretations differ.
/// </summary>
internal static partial class LenientNumber
{
    /// <summary>Reads the number at the start of a text.</summary>
    /// <param name="text">The text, cleaned.</param>
    /// <param name="format">The writer's culture; null when it is not known.</param>
    /// <param name="value">The number.</param>
    /// <param name="digits">
    /// The number of significant digits, without and with the trailing zeros of a whole number.
    /// </param>
    /// <param name="rest">The rest of the text.</param>
    /// <param name="choices">The two interpretations of an ambiguous number.</param>
    /// <returns>Whether there is an unambiguous number.</returns>
    internal static bool TryRead(
        string text,
        NumberFormatInfo? format,
        out double value,
        out (int Sure, int Most) digits,
        out string rest,
        out string? choices
    )
    {
        (value, digits, rest, choices) = (0, (0, 0), text, null);
        if (Fraction().Match(text) is { Success: true } fraction)
        {
            double below = Whole(fraction, "below");
            rest = text[fraction.Length..];
            digits = (NumberText.MaximumDigits, NumberText.MaximumDigits);
            value = ((Whole(fraction, "whole") + (Whole(fraction, "above") / below)) * Sign(fraction)) + 0.0;
            return below > 0;
        }

        Match number = Number().Match(text);
        if (!number.Success || Plain(number.Groups["digits"].Value, format, out choices) is not { } plain)
        {
            return false;
        }

        string power = number.Groups["power"].Value.Replace("+", "", StringComparison.Ordinal);
        rest = text[number.Length..];
        digits = Significant(plain);
        return double.TryParse(
                power.Length == 0 ? plain : $"{plain}e{power}",
                NumberStyles.Float,
                CultureInfo.InvariantCulture,
                out double size
            )
            && double.IsFinite(value = size * Sign(number))
            && (value != 0 || !NumberText.Vanished(plain));
    }

    /// <summary>
    /// The digits with a decimal point and without groups; null when it is not a number or ambiguous.
    /// </summary>
    private static string? Plain(string written, NumberFormatInfo? format, out string? choices)
    {
        choices = null;
        string joined = SpacedGroups().IsMatch(written) ? written.Replace(" ", "", StringComparison.Ordinal) : written;
        int comma = joined.LastIndexOf(',');
        int point = joined.LastIndexOf('.');
        if (joined.Contains(' ', StringComparison.Ordinal))
        {
            return null;
        }

        if (comma < 0 && point < 0)
        {
            return joined;
        }

        if (comma >= 0 && point >= 0)
        {
            char group = comma < point ? ',' : '.';
            return Ungrouped(joined, group, group == ',' ? '.' : ',');
        }

        char mark = comma >= 0 ? ',' : '.';
        if (joined.IndexOf(mark, StringComparison.Ordinal) != joined.LastIndexOf(mark))
        {
            return Ungrouped(joined, mark, '\0');
        }

        string asDecimal = joined.Replace(',', '.');
        bool looksGrouped = GroupOfThree().IsMatch(joined);
        bool isPointInEnglish = mark == '.' && format?.NumberDecimalSeparator is null or ".";
        if (!looksGrouped || isPointInEnglish || format?.NumberDecimalSeparator == mark.ToString())
        {
            return asDecimal;
        }

        string asGroup = joined.Replace(mark.ToString(), "", StringComparison.Ordinal);
        if (format is not null)
        {
            return asGroup;
        }

        choices = $"{asDecimal} or {asGroup}";
        return null;
    }

    private static string? Ungrouped(string joined, char group, char mark)
    {
        string[] halves = mark == '\0' ? [joined] : joined.Split(mark);
        string[] groups = halves[0].Split(group);
        bool proper =
            halves.Length <= 2
            && groups[0].Length is 1 or 2 or 3
            && groups.Skip(1).All(g => g.Length == 3)
            && !halves.Skip(1).Any(h => h.Contains(group, StringComparison.Ordinal));
        return proper ? string.Join('.', halves.Skip(1).Prepend(string.Concat(groups))) : null;
    }

    private static (int Sure, int Most) Significant(string plain)
    {
        string all = plain.Replace(".", "", StringComparison.Ordinal).TrimStart('0');
        string sure = plain.Contains('.', StringComparison.Ordinal) ? all : all.TrimEnd('0');
        return (Math.Max(1, sure.Length), Math.Max(1, all.Length));
    }

    private static double Whole(Match match, string group) =>
        match.Groups[group].Success
            ? double.Parse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture)
            : 0;

    private static int Sign(Match match) => match.Groups["sign"].ValueSpan is "-" ? -1 : 1;

    [GeneratedRegex(
        @"^(?<sign>[-+]?)(?:(?<whole>[0-9]{1,9})(?: +|-))?(?<above>[0-9]{1,9}) ?[/:] ?(?<below>[0-9]{1,9})(?![0-9.,])"
    )]
    private static partial Regex Fraction();

    [GeneratedRegex(
        @"^(?<sign>[-+]?) ?(?<digits>[0-9]+(?: [0-9]{3})+(?:[.,][0-9]+)?(?![0-9])|[0-9][0-9.,]*(?<![.,])|[.,][0-9]+)\.?(?:[eE](?<power>[-+]?[0-9]{1,4})|\ ?[xX*×]\ ?10\^?\(?(?<power>[-+]?[0-9]{1,4})\)?)?"
    )]
    private static partial Regex Number();

    [GeneratedRegex(@"^[0-9]{1,3}(?: [0-9]{3})+(?:[.,][0-9]+)?$")]
    private static partial Regex SpacedGroups();

    [GeneratedRegex(@"^[1-9][0-9]{0,2}[.,][0-9]{3}$")]
    private static partial Regex GroupOfThree();
}

using System.Globalization;

namespace FuelMath;

/// <summary>Numbers as text, strictly: digits, one decimal separator, an exponent, no group separators, no spaces.</summary>
internal static class NumberText
{
    private const NumberStyles Style =
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>The digits of a double; an exact number counts as written with this many.</summary>
    internal const int MaximumDigits = 17;

    internal static NumberFormatInfo FormatOf(IFormatProvider? provider) =>
        NumberFormatInfo.GetInstance(provider ?? CultureInfo.InvariantCulture);

    /// <summary>Reads a number. Gives infinity for one that is too large, which the caller refuses.</summary>
    internal static bool TryRead(ReadOnlySpan<char> text, NumberFormatInfo format, out double value)
    {
        value = 0;
        return text.IndexOfAnyInRange('0', '9') >= 0
            && !text.Contains('\0')
            && double.TryParse(text, Style, format, out value);
    }

    /// <summary>Whether a number that was read as zero has a nonzero digit; the lower number of a fraction may be anything.</summary>
    internal static bool Vanished(ReadOnlySpan<char> text)
    {
        int digits = text.IndexOfAny("eE/:");
        return (digits < 0 ? text : text[..digits]).IndexOfAnyInRange('1', '9') >= 0;
    }

    /// <summary>How many characters at the start belong to a number.</summary>
    internal static int Length(ReadOnlySpan<char> text, NumberFormatInfo format)
    {
        int i = 0;
        bool digits = false;
        while (i < text.Length)
        {
            char c = text[i];
            if (char.IsAsciiDigit(c))
            {
                digits = true;
                i++;
            }
            else if (digits && c is 'e' or 'E' && ExponentLength(text[i..], format) is int length and > 0)
            {
                return i + length;
            }
            else if (!char.IsWhiteSpace(c) && !char.IsLetter(c) && c is not ('%' or '°' or '/'))
            {
                i++;
            }
            else
            {
                break;
            }
        }

        return i;
    }

    private static int ExponentLength(ReadOnlySpan<char> text, NumberFormatInfo format)
    {
        int i = 1;
        ReadOnlySpan<char> rest = text[i..];
        if (rest.StartsWith(format.NegativeSign))
        {
            i += format.NegativeSign.Length;
        }
        else if (rest.StartsWith(format.PositiveSign))
        {
            i += format.PositiveSign.Length;
        }

        int start = i;
        while (i < text.Length && char.IsAsciiDigit(text[i]))
        {
            i++;
        }

        return i > start ? i : 0;
    }
}

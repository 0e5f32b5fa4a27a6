using System.Globalization;

namespace FuelMath.Formulas;

/// <summary>Numbers written with a count of significant figures, zeros at the end included.</summary>
internal static class SignificantFigures
{
    /// <summary>Below a ten-thousandth a number is written with an exponent.</summary>
    private const int LeastExponent = -4;

    /// <summary>From ten million on a number is written with an exponent, unless its figures reach further.</summary>
    private const int GreatestExponent = 6;

    internal static string Write(double value, int figures, IFormatProvider provider)
    {
        if (!double.IsFinite(value))
        {
            return value.ToString(provider);
        }

        NumberFormatInfo format = NumberFormatInfo.GetInstance(provider);
        string exact = Math.Abs(value).ToString($"E{figures - 1}", CultureInfo.InvariantCulture);
        int mark = exact.IndexOf('E', StringComparison.Ordinal);
        int exponent = int.Parse(exact[(mark + 1)..], CultureInfo.InvariantCulture);
        string digits = exact[..mark].Replace(".", "", StringComparison.Ordinal);
        string sign = value < 0 ? format.NegativeSign : "";
        return value == 0 ? "0"
            : exponent < LeastExponent || exponent > Math.Max(GreatestExponent, figures - 1)
                ? $"{sign}{Point(digits, 1, format)}E{Exponent(exponent, format)}"
            : exponent < 0 ? $"{sign}0{format.NumberDecimalSeparator}{new string('0', -exponent - 1)}{digits}"
            : $"{sign}{Point(digits.PadRight(exponent + 1, '0'), exponent + 1, format)}";
    }

    private static string Point(string digits, int whole, NumberFormatInfo format) =>
        digits.Length == whole ? digits : $"{digits[..whole]}{format.NumberDecimalSeparator}{digits[whole..]}";

    private static string Exponent(int exponent, NumberFormatInfo format) =>
        (exponent < 0 ? format.NegativeSign : format.PositiveSign)
        + Math.Abs(exponent).ToString("00", CultureInfo.InvariantCulture);
}

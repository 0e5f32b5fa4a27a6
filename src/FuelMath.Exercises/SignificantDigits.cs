using System.Globalization;

namespace FuelMath.Exercises;

/// <summary>Formats numbers with a number of significant digits, without an exponent.</summary>
internal static class SignificantDigits
{
    /// <summary>The value of one unit of the last digit.</summary>
    internal static double LastPlace(double value, int digits) =>
        value == 0 ? 0 : Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) + 1 - digits);

    internal static string Write(double value, int digits)
    {
        if (value == 0)
        {
            return "0";
        }

        int decimals = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return decimals >= 0
            ? value.ToString(string.Create(CultureInfo.InvariantCulture, $"F{decimals}"), CultureInfo.InvariantCulture)
            : ((decimal)Math.Round(value / Math.Pow(10, -decimals)) * (decimal)Math.Pow(10, -decimals)).ToString(
                "0",
                CultureInfo.InvariantCulture
            );
    }
}

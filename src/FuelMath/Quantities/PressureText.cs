using System.Globalization;

namespace FuelMath;

/// <summary>The text of both pressure types.</summary>
internal static class PressureText
{
    internal static string Of(double pascals, string unit, string? format, IFormatProvider? provider) =>
        $"{(pascals / 1000).ToString(format ?? "0.##", provider ?? CultureInfo.InvariantCulture)} {unit}";
}

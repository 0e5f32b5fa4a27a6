using System.Globalization;

namespace FuelMath;

/// <summary>How both pressure types print.</summary>
internal static class PressureText
{
    internal static string Of(double pascals, string unit, string? format, IFormatProvider? provider) =>
        $"{(pascals / 1000).ToString(format ?? "0.##", provider ?? CultureInfo.InvariantCulture)} {unit}";
}

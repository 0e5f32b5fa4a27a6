using System.Globalization;

namespace FuelMath;

/// <summary>SI numbers in customary units, for findings.</summary>
internal static class Show
{
    /// <summary>Two places, and four below 0.1 bar: what gravity gives is some hundredths of a bar.</summary>
    internal static string Bar(double pascals) =>
        Number(pascals / 1e5, Math.Abs(pascals) is > 0 and < 1e4 ? "0.0000" : "0.00", "bar");

    internal static string LitersPerHour(double cubicMetersPerSecond) =>
        Number(cubicMetersPerSecond * 3.6e6, "0.0", "L/h");

    internal static string Percent(double fraction) => Number(fraction * 100, "0.0", "%");

    internal static string Volts(double volts) => Number(volts, "0.00", "V");

    internal static string Amperes(double amperes) => Number(amperes, "0.00", "A");

    internal static string Milliseconds(double seconds) => Number(seconds * 1000, "0.000", "ms");

    internal static string MetersPerSecond(double speed) => Number(speed, "0.00", "m/s");

    internal static string Celsius(double kelvins) => Number(kelvins - 273.15, "0.0", "°C");

    internal static string Seconds(double seconds) => Number(seconds, "0", "s");

    internal static string Lambda(double lambda) => lambda.ToString("0.000", CultureInfo.InvariantCulture);

    private static string Number(double value, string format, string unit) =>
        $"{value.ToString(format, CultureInfo.InvariantCulture)} {unit}";
}

using System.Globalization;

namespace FuelMath;

/// <summary>SI numbers in customary units, for findings; each with its usual places, and further ones on request.</summary>
internal static class Show
{
    /// <summary>Two places, and four below 0.1 bar: what gravity gives is some hundredths of a bar.</summary>
    internal static string Bar(double pascals) => Bar(pascals, 0);

    internal static string LitersPerHour(double cubicMetersPerSecond) => LitersPerHour(cubicMetersPerSecond, 0);

    internal static string Percent(double fraction) => Percent(fraction, 0);

    internal static string Volts(double volts) => Volts(volts, 0);

    internal static string Amperes(double amperes) => Amperes(amperes, 0);

    internal static string Milliseconds(double seconds) => Milliseconds(seconds, 0);

    internal static string MetersPerSecond(double speed) => MetersPerSecond(speed, 0);

    internal static string Celsius(double kelvins) => Celsius(kelvins, 0);

    internal static string Seconds(double seconds) => Seconds(seconds, 0);

    internal static string Lambda(double lambda) => lambda.ToString("0.000", CultureInfo.InvariantCulture);

    internal static string Bar(double pascals, int further) =>
        Number(pascals / 1e5, (Math.Abs(pascals) is > 0 and < 1e4 ? 4 : 2) + further, "bar");

    internal static string LitersPerHour(double cubicMetersPerSecond, int further) =>
        Number(cubicMetersPerSecond * 3.6e6, 1 + further, "L/h");

    internal static string Percent(double fraction, int further) => Number(fraction * 100, 1 + further, "%");

    internal static string FinePercent(double fraction, int further) =>
        $"{(fraction * 100).ToString($"0.{new string('#', 2 + further)}", CultureInfo.InvariantCulture)} %";

    internal static string Volts(double volts, int further) => Number(volts, 2 + further, "V");

    internal static string Amperes(double amperes, int further) => Number(amperes, 2 + further, "A");

    internal static string Milliseconds(double seconds, int further) => Number(seconds * 1000, 3 + further, "ms");

    internal static string MetersPerSecond(double speed, int further) => Number(speed, 2 + further, "m/s");

    internal static string Celsius(double kelvins, int further) => Number(kelvins - 273.15, 1 + further, "°C");

    internal static string Seconds(double seconds, int further) => Number(seconds, further, "s");

    private static string Number(double value, int places, string unit) =>
        $"{value.ToString(places == 0 ? "0" : $"0.{new string('0', places)}", CultureInfo.InvariantCulture)} {unit}";
}

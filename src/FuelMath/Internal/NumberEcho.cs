using System.Globalization;

namespace FuelMath;

/// <summary>Numbers in messages: six significant digits, without a power of ten where they are large or whole.</summary>
internal static class NumberEcho
{
    /// <summary>Six significant digits.</summary>
    internal const string Format = "G6";

    /// <summary>Formats with more and more digits.</summary>
    internal static readonly string[] Finer = [Format, "G9", "G12", "G15", "R"];

    /// <summary>A number as text, without a sign on zero.</summary>
    internal static string Of(double value, string format = Format) =>
        Math.Abs(value) is >= 1e5 and < 1e15 || (value == Math.Floor(value) && Math.Abs(value) < 1e15)
            ? (value + 0.0).ToString("F0", CultureInfo.InvariantCulture)
            : value.ToString(format, CultureInfo.InvariantCulture);
}

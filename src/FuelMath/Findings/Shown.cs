using UnitsNet;

namespace FuelMath;

/// <summary>
/// A value or a limit of a finding: a text, and the quantity where it is a number, which is written with as many digits as
/// tell value and limit apart.
/// </summary>
internal readonly record struct Shown
{
    /// <summary>More digits than two numbers need whose difference matters.</summary>
    private const int MostFurtherDigits = 9;

    private readonly string? text;
    private readonly Func<int, string>? number;
    private readonly Func<string, string>? words;

    private Shown(string? text, Func<int, string>? number, Func<string, string>? words, IQuantity? quantity) =>
        (this.text, this.number, this.words, Quantity) = (text, number, words, quantity);

    /// <summary>The quantity; null where the text is no number.</summary>
    internal IQuantity? Quantity { get; }

    public static implicit operator Shown(string text) => new(text, null, null, null);

    internal static Shown Bar(double pascals) => Of(pascals, Show.Bar, SiUnits.Pressure(pascals));

    internal static Shown LitersPerHour(double cubicMetersPerSecond) =>
        Of(cubicMetersPerSecond, Show.LitersPerHour, SiUnits.VolumeFlow(cubicMetersPerSecond));

    internal static Shown Percent(double fraction) => Of(fraction, Show.Percent, SiUnits.Ratio(fraction));

    /// <summary>With two places where they are not zero, as a bench shows shares.</summary>
    internal static Shown FinePercent(double fraction) => Of(fraction, Show.FinePercent, SiUnits.Ratio(fraction));

    internal static Shown Volts(double volts) => Of(volts, Show.Volts, SiUnits.ElectricPotential(volts));

    internal static Shown Amperes(double amperes) => Of(amperes, Show.Amperes, SiUnits.ElectricCurrent(amperes));

    internal static Shown Milliseconds(double seconds) => Of(seconds, Show.Milliseconds, SiUnits.Duration(seconds));

    internal static Shown MetersPerSecond(double speed) => Of(speed, Show.MetersPerSecond, SiUnits.Speed(speed));

    internal static Shown Celsius(double kelvins) => Of(kelvins, Show.Celsius, SiUnits.Temperature(kelvins));

    internal static Shown Seconds(double seconds) => Of(seconds, Show.Seconds, SiUnits.Duration(seconds));

    /// <summary>The same quantity in words around its number; the number carries no sign.</summary>
    internal Shown As(Func<string, string> around) => new(null, number, around, Quantity);

    /// <summary>The text, with further digits of the number.</summary>
    internal string Text(int furtherDigits) =>
        text ?? (words is null ? number!(furtherDigits) : words(Unsigned(furtherDigits)));

    /// <summary>How many further digits tell a value from its limit; none where either is no number, or they are equal.</summary>
    internal static int FurtherDigits(Shown value, Shown limit)
    {
        int digits = 0;
        if (value.number is not null && limit.number is not null)
        {
            while (digits < MostFurtherDigits && value.Unsigned(digits) == limit.Unsigned(digits))
            {
                digits++;
            }
        }

        return digits == MostFurtherDigits ? 0 : digits;
    }

    private static Shown Of(double number, Func<double, int, string> write, IQuantity quantity) =>
        new(null, digits => write(number, digits), null, quantity);

    private string Unsigned(int furtherDigits) => number!(furtherDigits).TrimStart('-');
}

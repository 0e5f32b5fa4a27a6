using UnitsNet;

namespace FuelMath;

/// <summary>A value or a limit of a finding: its text, and the quantity where it is a number.</summary>
internal readonly record struct Shown(string Text, IQuantity? Quantity)
{
    public static implicit operator Shown(string text) => new(text, null);

    internal static Shown Bar(double pascals) => new(Show.Bar(pascals), SiUnits.Pressure(pascals));

    internal static Shown LitersPerHour(double cubicMetersPerSecond) =>
        new(Show.LitersPerHour(cubicMetersPerSecond), SiUnits.VolumeFlow(cubicMetersPerSecond));

    internal static Shown Percent(double fraction) => new(Show.Percent(fraction), SiUnits.Ratio(fraction));

    internal static Shown Volts(double volts) => new(Show.Volts(volts), SiUnits.ElectricPotential(volts));

    internal static Shown Milliseconds(double seconds) => new(Show.Milliseconds(seconds), SiUnits.Duration(seconds));

    internal static Shown MetersPerSecond(double speed) => new(Show.MetersPerSecond(speed), SiUnits.Speed(speed));

    internal static Shown Celsius(double kelvins) => new(Show.Celsius(kelvins), SiUnits.Temperature(kelvins));

    internal static Shown Seconds(double seconds) => new(Show.Seconds(seconds), SiUnits.Duration(seconds));

    /// <summary>The same quantity with another text.</summary>
    internal Shown As(string text) => this with { Text = text };
}

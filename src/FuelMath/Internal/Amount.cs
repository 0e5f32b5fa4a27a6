using UnitsNet;

namespace FuelMath;

/// <summary>A number with the symbol of its unit, as a refusal shows it; empty for a pure number.</summary>
internal readonly record struct Amount(double Number, string Unit)
{
    internal static Amount Bar(double pascals) => new(pascals / 1e5, "bar");

    internal static Amount BarGauge(double pascals) => new(pascals / 1e5, "bar gauge");

    internal static Amount KilopascalsGauge(double pascals) => new(pascals / 1e3, "kPa gauge");

    internal static Amount KilopascalsAbsolute(double pascals) => new(pascals / 1e3, "kPa absolute");

    internal static Amount LitersPerHour(double cubicMetersPerSecond) => new(cubicMetersPerSecond * 3.6e6, "L/h");

    internal static Amount Percent(double fraction) => new(fraction * 100, "%");

    internal static Amount Volts(double volts) => new(volts, "V");

    internal static Amount Amperes(double amperes) => new(amperes, "A");

    internal static Amount Milliseconds(double seconds) => new(seconds * 1000, "ms");

    internal static Amount Celsius(double kelvins) => new(SiUnits.CelsiusFromKelvins(kelvins), "°C");

    /// <summary>A quantity in the unit that refusals show it in.</summary>
    internal static Amount Of(IQuantity value) => In(value, TradeUnit.Of(value));

    /// <summary>A quantity in a unit of its kind.</summary>
    internal static Amount In(IQuantity value, Enum unit) =>
        new(value.NumberIn(unit), Echo.Symbol(Equals(value.Unit, unit) ? value : value.ToUnit(unit)));

    /// <summary>The number to six significant digits, or in another format, and the unit.</summary>
    internal string Text(string format = NumberEcho.Format) =>
        Unit.Length == 0 ? NumberEcho.Of(Number, format) : $"{NumberEcho.Of(Number, format)} {Unit}";
}

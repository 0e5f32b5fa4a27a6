using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

/// <summary>
/// Short text of a value, for a debugger and a log: usual units, shown, four significant digits, invariant culture. It is
/// for reading by people; what reads back stands in the documents.
/// </summary>
internal static class LogText
{
    /// <summary>The text of an interpolated string, whose quantities are written as <see cref="Of(IQuantity, string?)"/> does.</summary>
    internal static string Of(LogTextHandler text) => text.ToString();

    /// <summary>A quantity with its unit.</summary>
    /// <param name="value">The quantity.</param>
    /// <param name="symbol">The unit to show it in; a usual one of its size when null. "1" shows a ratio as a number.</param>
    internal static string Of(IQuantity value, string? symbol)
    {
        (Enum Unit, string Symbol)[] units = UnitsOf(value);
        if (units.Length == 0)
        {
            return $"{Number(value.NumberIn(value.Unit))} {Echo.Symbol(value)}";
        }

        int at = symbol is null ? Usual(value, units) : Named(symbol, units);
        string number = Number(value.NumberIn(units[at].Unit));
        return units[at].Symbol == "1" ? number : $"{number} {units[at].Symbol}";
    }

    /// <summary>Four significant digits; whole numbers in full.</summary>
    internal static string Number(double value) =>
        Math.Abs(value) is >= 1000 and < 1e15
            ? value.ToString("0", CultureInfo.InvariantCulture)
            : (value == 0 ? 0 : value).ToString("G4", CultureInfo.InvariantCulture);

    private static int Usual(IQuantity value, (Enum Unit, string Symbol)[] units)
    {
        // A kind with two units of one size lists the second for callers that ask for it.
        if (value is VolumeFlow or Ratio)
        {
            return 0;
        }

        int at = 0;
        while (at < units.Length && Math.Abs(value.NumberIn(units[at].Unit)) < 1)
        {
            at++;
        }

        return at < units.Length ? at
            : value.NumberIn(units[^1].Unit) == 0 ? 0
            : units.Length - 1;
    }

    private static int Named(string symbol, (Enum Unit, string Symbol)[] units)
    {
        int at = 0;
        while (units[at].Symbol != symbol)
        {
            at++;
        }

        return at;
    }

    /// <summary>The units of a kind that a log shows, largest first; the first in which the number reaches one is taken.</summary>
    /// <remarks>Asks for types and names none as an object, which would keep every unit in a library that uses no quantity.</remarks>
    private static (Enum Unit, string Symbol)[] UnitsOf(IQuantity value) =>
        value switch
        {
            Pressure => [(PressureUnit.Kilopascal, "kPa")],
            VolumeFlow => [(VolumeFlowUnit.CubicCentimeterPerMinute, "cm3/min"), (VolumeFlowUnit.LiterPerHour, "L/h")],
            MassFlow => [(MassFlowUnit.GramPerSecond, "g/s"), (MassFlowUnit.MilligramPerSecond, "mg/s")],
            Volume =>
            [
                (VolumeUnit.Liter, "L"),
                (VolumeUnit.CubicCentimeter, "cm3"),
                (VolumeUnit.CubicMillimeter, "mm3"),
            ],
            Mass => [(MassUnit.Kilogram, "kg"), (MassUnit.Gram, "g"), (MassUnit.Milligram, "mg")],
            Length => [(LengthUnit.Meter, "m"), (LengthUnit.Millimeter, "mm"), (LengthUnit.Micrometer, "um")],
            Angle => [(AngleUnit.Degree, "deg")],
            Area => [(AreaUnit.SquareMillimeter, "mm2")],
            Density => [(DensityUnit.KilogramPerCubicMeter, "kg/m3")],
            DynamicViscosity => [(DynamicViscosityUnit.MillipascalSecond, "mPa s")],
            KinematicViscosity => [(KinematicViscosityUnit.Centistokes, "mm2/s")],
            Temperature => [(TemperatureUnit.DegreeCelsius, "degC")],
            TemperatureDelta => [(TemperatureDeltaUnit.Kelvin, "K")],
            ElectricPotential => [(ElectricPotentialUnit.Volt, "V"), (ElectricPotentialUnit.Millivolt, "mV")],
            ElectricCurrent => [(ElectricCurrentUnit.Ampere, "A"), (ElectricCurrentUnit.Milliampere, "mA")],
            ElectricResistance => [(ElectricResistanceUnit.Ohm, "ohm"), (ElectricResistanceUnit.Milliohm, "mohm")],
            Duration =>
            [
                (DurationUnit.Hour, "h"),
                (DurationUnit.Second, "s"),
                (DurationUnit.Millisecond, "ms"),
                (DurationUnit.Microsecond, "us"),
            ],
            RotationalSpeed => [(RotationalSpeedUnit.RevolutionPerMinute, "rpm")],
            Frequency => [(FrequencyUnit.Hertz, "Hz")],
            Power => [(PowerUnit.Kilowatt, "kW"), (PowerUnit.Watt, "W")],
            SpecificEnergy => [(SpecificEnergyUnit.MegajoulePerKilogram, "MJ/kg")],
            SpecificEntropy => [(SpecificEntropyUnit.KilojoulePerKilogramKelvin, "kJ/(kg K)")],
            Speed => [(SpeedUnit.MeterPerSecond, "m/s")],
            Acceleration => [(AccelerationUnit.MeterPerSecondSquared, "m/s2")],
            Force => [(ForceUnit.Newton, "N")],
            Ratio => [(RatioUnit.Percent, "%"), (RatioUnit.DecimalFraction, "1")],
            _ => [],
        };
}

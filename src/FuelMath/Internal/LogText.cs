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
    /// <summary>The units of a kind that a log shows, largest first; the first in which the number reaches one is taken.</summary>
    private static readonly Dictionary<Type, (Enum Unit, string Symbol)[]> Units = new()
    {
        [typeof(Pressure)] = [(PressureUnit.Kilopascal, "kPa")],
        [typeof(VolumeFlow)] =
        [
            (VolumeFlowUnit.CubicCentimeterPerMinute, "cm3/min"),
            (VolumeFlowUnit.LiterPerHour, "L/h"),
        ],
        [typeof(MassFlow)] = [(MassFlowUnit.GramPerSecond, "g/s"), (MassFlowUnit.MilligramPerSecond, "mg/s")],
        [typeof(Volume)] =
        [
            (VolumeUnit.Liter, "L"),
            (VolumeUnit.CubicCentimeter, "cm3"),
            (VolumeUnit.CubicMillimeter, "mm3"),
        ],
        [typeof(Mass)] = [(MassUnit.Kilogram, "kg"), (MassUnit.Gram, "g"), (MassUnit.Milligram, "mg")],
        [typeof(Length)] = [(LengthUnit.Meter, "m"), (LengthUnit.Millimeter, "mm"), (LengthUnit.Micrometer, "um")],
        [typeof(Angle)] = [(AngleUnit.Degree, "deg")],
        [typeof(Area)] = [(AreaUnit.SquareMillimeter, "mm2")],
        [typeof(Density)] = [(DensityUnit.KilogramPerCubicMeter, "kg/m3")],
        [typeof(DynamicViscosity)] = [(DynamicViscosityUnit.MillipascalSecond, "mPa s")],
        [typeof(KinematicViscosity)] = [(KinematicViscosityUnit.Centistokes, "mm2/s")],
        [typeof(Temperature)] = [(TemperatureUnit.DegreeCelsius, "degC")],
        [typeof(TemperatureDelta)] = [(TemperatureDeltaUnit.Kelvin, "K")],
        [typeof(ElectricPotential)] = [(ElectricPotentialUnit.Volt, "V"), (ElectricPotentialUnit.Millivolt, "mV")],
        [typeof(ElectricCurrent)] = [(ElectricCurrentUnit.Ampere, "A"), (ElectricCurrentUnit.Milliampere, "mA")],
        [typeof(ElectricResistance)] = [(ElectricResistanceUnit.Ohm, "ohm"), (ElectricResistanceUnit.Milliohm, "mohm")],
        [typeof(Duration)] =
        [
            (DurationUnit.Hour, "h"),
            (DurationUnit.Second, "s"),
            (DurationUnit.Millisecond, "ms"),
            (DurationUnit.Microsecond, "us"),
        ],
        [typeof(RotationalSpeed)] = [(RotationalSpeedUnit.RevolutionPerMinute, "rpm")],
        [typeof(Frequency)] = [(FrequencyUnit.Hertz, "Hz")],
        [typeof(Power)] = [(PowerUnit.Kilowatt, "kW"), (PowerUnit.Watt, "W")],
        [typeof(SpecificEnergy)] = [(SpecificEnergyUnit.MegajoulePerKilogram, "MJ/kg")],
        [typeof(SpecificEntropy)] = [(SpecificEntropyUnit.KilojoulePerKilogramKelvin, "kJ/(kg K)")],
        [typeof(Speed)] = [(SpeedUnit.MeterPerSecond, "m/s")],
        [typeof(Acceleration)] = [(AccelerationUnit.MeterPerSecondSquared, "m/s2")],
        [typeof(Force)] = [(ForceUnit.Newton, "N")],
        [typeof(Ratio)] = [(RatioUnit.Percent, "%"), (RatioUnit.DecimalFraction, "1")],
    };

    /// <summary>The text of an interpolated string, whose quantities are written as <see cref="Of(IQuantity, string?)"/> does.</summary>
    internal static string Of(LogTextHandler text) => text.ToString();

    /// <summary>A quantity with its unit.</summary>
    /// <param name="value">The quantity.</param>
    /// <param name="symbol">The unit to show it in; a usual one of its size when null. "1" shows a ratio as a number.</param>
    internal static string Of(IQuantity value, string? symbol)
    {
        if (!Units.TryGetValue(value.GetType(), out (Enum Unit, string Symbol)[]? units))
        {
            return $"{Number(value.NumberIn(value.Unit))} {Echo.Symbol(value)}";
        }

        int at = symbol is null ? Usual(value, units) : Array.FindIndex(units, u => u.Symbol == symbol);
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

        int at = Array.FindIndex(units, u => !(Math.Abs(value.NumberIn(u.Unit)) < 1));
        return at >= 0 ? at
            : value.NumberIn(units[^1].Unit) == 0 ? 0
            : units.Length - 1;
    }
}

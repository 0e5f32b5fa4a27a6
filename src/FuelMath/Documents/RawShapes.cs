using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

/// <summary>Quantities of raw readings, which keep the unit of the reading.</summary>
internal static class RawShapes
{
    internal static RawQuantityShape<Pressure> PressureDifference { get; } =
        new RawQuantityShape<Pressure>(
            QuantityKinds.PressureDifference,
            "kPa",
            ("kPa", PressureUnit.Kilopascal),
            ("bar", PressureUnit.Bar),
            ("psi", PressureUnit.PoundForcePerSquareInch),
            ("Pa", PressureUnit.Pascal)
        );

    internal static RawQuantityShape<Temperature> Temperature { get; } =
        new RawQuantityShape<Temperature>(
            QuantityKinds.Temperature,
            "degC",
            ("degC", TemperatureUnit.DegreeCelsius),
            ("degF", TemperatureUnit.DegreeFahrenheit),
            ("K", TemperatureUnit.Kelvin)
        );

    internal static RawQuantityShape<Volume> Volume { get; } =
        new RawQuantityShape<Volume>(
            QuantityKinds.Volume,
            "cm3",
            ("cm3", VolumeUnit.CubicCentimeter),
            ("mL", VolumeUnit.Milliliter),
            ("L", VolumeUnit.Liter),
            ("mm3", VolumeUnit.CubicMillimeter)
        );

    internal static RawQuantityShape<Mass> Mass { get; } =
        new RawQuantityShape<Mass>(
            QuantityKinds.Mass,
            "g",
            ("mg", MassUnit.Milligram),
            ("kg", MassUnit.Kilogram),
            ("g", MassUnit.Gram)
        );

    internal static RawQuantityShape<Duration> Duration { get; } =
        new RawQuantityShape<Duration>(
            QuantityKinds.Duration,
            "ms",
            ("ms", DurationUnit.Millisecond),
            ("us", DurationUnit.Microsecond),
            ("s", DurationUnit.Second),
            ("min", DurationUnit.Minute)
        );

    internal static RawQuantityShape<ElectricPotential> Voltage { get; } =
        new RawQuantityShape<ElectricPotential>(QuantityKinds.Voltage, "V", ("V", ElectricPotentialUnit.Volt));

    internal static RawQuantityShape<ElectricResistance> Resistance { get; } =
        new RawQuantityShape<ElectricResistance>(
            QuantityKinds.Resistance,
            "ohm",
            ("mohm", ElectricResistanceUnit.Milliohm),
            ("ohm", ElectricResistanceUnit.Ohm)
        );
}

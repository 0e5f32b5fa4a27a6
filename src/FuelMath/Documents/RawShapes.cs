using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

/// <summary>Quantities of raw readings, which keep the unit of the reading.</summary>
internal static class RawShapes
{
    internal static Shape<Pressure> PressureDifference { get; } =
        new RawQuantityShape<Pressure>(
            QuantityKinds.PressureDifference,
            "kPa",
            ("kPa", PressureUnit.Kilopascal),
            ("bar", PressureUnit.Bar),
            ("psi", PressureUnit.PoundForcePerSquareInch),
            ("Pa", PressureUnit.Pascal)
        );

    internal static Shape<Temperature> Temperature { get; } =
        new RawQuantityShape<Temperature>(
            QuantityKinds.Temperature,
            "degC",
            ("degC", TemperatureUnit.DegreeCelsius),
            ("degF", TemperatureUnit.DegreeFahrenheit),
            ("K", TemperatureUnit.Kelvin)
        );

    internal static Shape<Volume> Volume { get; } =
        new RawQuantityShape<Volume>(
            QuantityKinds.Volume,
            "cm3",
            ("cm3", VolumeUnit.CubicCentimeter),
            ("mL", VolumeUnit.Milliliter),
            ("L", VolumeUnit.Liter),
            ("mm3", VolumeUnit.CubicMillimeter)
        );

    internal static Shape<Mass> Mass { get; } =
        new RawQuantityShape<Mass>(
            QuantityKinds.Mass,
            "g",
            ("mg", MassUnit.Milligram),
            ("kg", MassUnit.Kilogram),
            ("g", MassUnit.Gram)
        );

    internal static Shape<Duration> Duration { get; } =
        new RawQuantityShape<Duration>(
            QuantityKinds.Duration,
            "ms",
            ("ms", DurationUnit.Millisecond),
            ("us", DurationUnit.Microsecond),
            ("s", DurationUnit.Second),
            ("min", DurationUnit.Minute)
        );

    internal static Shape<ElectricPotential> Voltage { get; } =
        new RawQuantityShape<ElectricPotential>(QuantityKinds.Voltage, "V", ("V", ElectricPotentialUnit.Volt));

    internal static Shape<ElectricResistance> Resistance { get; } =
        new RawQuantityShape<ElectricResistance>(
            QuantityKinds.Resistance,
            "ohm",
            ("mohm", ElectricResistanceUnit.Milliohm),
            ("ohm", ElectricResistanceUnit.Ohm)
        );
}

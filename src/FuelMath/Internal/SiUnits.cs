using System.Globalization;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The only place where typed quantities are converted to numbers; inside, all numbers are coherent SI.
/// </summary>
/// <remarks>
/// No other file may read a UnitsNet value as a number (a house test checks this), so a change of UnitsNet's value type
/// affects this file only.
/// </remarks>
internal static class SiUnits
{
    private const double ZeroCelsius = 273.15;

    internal static double InSi(this Pressure value) => value.Pascals;

    internal static double InSi(this VolumeFlow value) => value.CubicMetersPerSecond;

    internal static double InSi(this MassFlow value) => value.KilogramsPerSecond;

    internal static double InSi(this Volume value) => value.CubicMeters;

    internal static double InSi(this Mass value) => value.Kilograms;

    internal static double InSi(this Length value) => value.Meters;

    internal static double InSi(this Angle value) => value.Radians;

    internal static double InSi(this Area value) => value.SquareMeters;

    internal static double InSi(this Density value) => value.KilogramsPerCubicMeter;

    internal static double InSi(this DynamicViscosity value) => value.PascalSeconds;

    internal static double InSi(this KinematicViscosity value) => value.SquareMetersPerSecond;

    internal static double InSi(this Temperature value) => value.Kelvins;

    internal static double InSi(this TemperatureDelta value) => value.Kelvins;

    internal static double InSi(this ElectricPotential value) => value.Volts;

    internal static double InSi(this ElectricCurrent value) => value.Amperes;

    internal static double InSi(this ElectricResistance value) => value.Ohms;

    internal static double InSi(this Duration value) => value.Seconds;

    internal static double InSi(this RotationalSpeed value) => value.RadiansPerSecond;

    internal static double InSi(this Frequency value) => value.Hertz;

    internal static double InSi(this Power value) => (double)value.Watts;

    internal static double InSi(this SpecificEnergy value) => value.JoulesPerKilogram;

    internal static double InSi(this SpecificEntropy value) => value.JoulesPerKilogramKelvin;

    internal static double InSi(this BrakeSpecificFuelConsumption value) => value.KilogramsPerJoule;

    internal static double InSi(this Speed value) => value.MetersPerSecond;

    internal static double InSi(this Acceleration value) => value.MetersPerSecondSquared;

    internal static double InSi(this Force value) => value.Newtons;

    internal static double InSi(this MassConcentration value) => value.KilogramsPerCubicMeter;

    internal static double InSi(this Compressibility value) => value.InversePascals;

    internal static double InSi(this CoefficientOfThermalExpansion value) => value.PerKelvin;

    internal static double InSi(this Ratio value) => value.DecimalFractions;

    /// <summary>The number of a quantity in one of its units, for messages and raw readings.</summary>
    internal static double NumberIn(this IQuantity value, Enum unit) => value.As(unit);

    /// <summary>A quantity from the number and unit of a reading, for raw readings only.</summary>
    internal static T FromNumber<T>(double number, Enum unit)
        where T : struct, IQuantity => (T)Quantity.From(number, unit);

    internal static double KelvinsFromCelsius(double celsius) => celsius + ZeroCelsius;

    internal static double CelsiusFromKelvins(double kelvins) => kelvins - ZeroCelsius;

    internal static Pressure Pressure(double pascals) => UnitsNet.Pressure.FromPascals(pascals);

    internal static VolumeFlow VolumeFlow(double cubicMetersPerSecond) =>
        UnitsNet.VolumeFlow.FromCubicMetersPerSecond(cubicMetersPerSecond);

    internal static MassFlow MassFlow(double kilogramsPerSecond) =>
        UnitsNet.MassFlow.FromKilogramsPerSecond(kilogramsPerSecond);

    internal static Volume Volume(double cubicMeters) => UnitsNet.Volume.FromCubicMeters(cubicMeters);

    internal static Mass Mass(double kilograms) => UnitsNet.Mass.FromKilograms(kilograms);

    internal static Length Length(double meters) => UnitsNet.Length.FromMeters(meters);

    internal static Angle Angle(double radians) => UnitsNet.Angle.FromRadians(radians);

    internal static Area Area(double squareMeters) => UnitsNet.Area.FromSquareMeters(squareMeters);

    internal static Density Density(double kilogramsPerCubicMeter) =>
        UnitsNet.Density.FromKilogramsPerCubicMeter(kilogramsPerCubicMeter);

    internal static DynamicViscosity DynamicViscosity(double pascalSeconds) =>
        UnitsNet.DynamicViscosity.FromPascalSeconds(pascalSeconds);

    internal static KinematicViscosity KinematicViscosity(double squareMetersPerSecond) =>
        UnitsNet.KinematicViscosity.FromSquareMetersPerSecond(squareMetersPerSecond);

    internal static Temperature Temperature(double kelvins) => UnitsNet.Temperature.FromKelvins(kelvins);

    internal static TemperatureDelta TemperatureDelta(double kelvins) => UnitsNet.TemperatureDelta.FromKelvins(kelvins);

    internal static ElectricPotential ElectricPotential(double volts) => UnitsNet.ElectricPotential.FromVolts(volts);

    internal static ElectricCurrent ElectricCurrent(double amperes) => UnitsNet.ElectricCurrent.FromAmperes(amperes);

    internal static ElectricResistance ElectricResistance(double ohms) => UnitsNet.ElectricResistance.FromOhms(ohms);

    internal static Duration Duration(double seconds) => UnitsNet.Duration.FromSeconds(seconds);

    internal static RotationalSpeed RotationalSpeed(double radiansPerSecond) =>
        UnitsNet.RotationalSpeed.FromRadiansPerSecond(radiansPerSecond);

    internal static Frequency Frequency(double hertz) => UnitsNet.Frequency.FromHertz(hertz);

    /// <summary>
    /// The unit library holds power, unlike other quantities, as a decimal number, which ends at 7.9e28 and has 28
    /// decimals.
    /// </summary>
    internal const double MostWatts = 1e15;

    /// <summary>With 28 decimals, such a power still has 15 digits.</summary>
    internal const double LeastWatts = 1e-12;

    internal static Power Power(double watts) =>
        Math.Abs(watts) <= MostWatts
            ? UnitsNet.Power.FromWatts(watts)
            : throw Guard.Outside(
                watts,
                RefusalCode.OutOfRange,
                $"A power must be at most {new Amount(MostWatts, "W"):most}; it came to {new Amount(watts, "W"):value}."
            );

    internal static SpecificEnergy SpecificEnergy(double joulesPerKilogram) =>
        UnitsNet.SpecificEnergy.FromJoulesPerKilogram(joulesPerKilogram);

    internal static SpecificEntropy SpecificEntropy(double joulesPerKilogramKelvin) =>
        UnitsNet.SpecificEntropy.FromJoulesPerKilogramKelvin(joulesPerKilogramKelvin);

    internal static BrakeSpecificFuelConsumption BrakeSpecificFuelConsumption(double kilogramsPerJoule) =>
        UnitsNet.BrakeSpecificFuelConsumption.FromKilogramsPerJoule(kilogramsPerJoule);

    internal static Speed Speed(double metersPerSecond) => UnitsNet.Speed.FromMetersPerSecond(metersPerSecond);

    internal static Acceleration Acceleration(double metersPerSecondSquared) =>
        UnitsNet.Acceleration.FromMetersPerSecondSquared(metersPerSecondSquared);

    internal static Force Force(double newtons) => UnitsNet.Force.FromNewtons(newtons);

    internal static Compressibility Compressibility(double inversePascals) =>
        UnitsNet.Compressibility.FromInversePascals(inversePascals);

    internal static Ratio Ratio(double decimalFractions) => UnitsNet.Ratio.FromDecimalFractions(decimalFractions);
}

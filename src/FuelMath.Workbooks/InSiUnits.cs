using UnitsNet;

namespace FuelMath.Workbooks;

/// <summary>Reads quantities as numbers in SI units; the only place of the package that does.</summary>
internal static class InSiUnits
{
    internal static double Si(this Pressure value) => value.Pascals;

    internal static double Si(this GaugePressure value) => value.AboveAmbient.Pascals;

    internal static double Si(this AbsolutePressure value) => value.AboveVacuum.Pascals;

    internal static double Si(this Temperature value) => value.Kelvins;

    internal static double Si(this RotationalSpeed value) => value.RadiansPerSecond;

    internal static double Si(this Frequency value) => value.Hertz;

    internal static double Si(this Density value) => value.KilogramsPerCubicMeter;

    internal static double Si(this Duration value) => value.Seconds;

    internal static double Si(this Mass value) => value.Kilograms;

    internal static double Si(this MassFlow value) => value.KilogramsPerSecond;

    internal static double Si(this VolumeFlow value) => value.CubicMetersPerSecond;

    internal static double Si(this Volume value) => value.CubicMeters;

    internal static double Si(this Area value) => value.SquareMeters;

    internal static double Si(this Ratio value) => value.DecimalFractions;
}

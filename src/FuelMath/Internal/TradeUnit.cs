using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

/// <summary>
/// The unit in which a refusal shows a quantity: the one that it came in, but for SI units that no gauge, bottle or data sheet
/// of the trade has, which results of the library are in.
/// </summary>
internal static class TradeUnit
{
    /// <summary>Lengths below this are shown in mm.</summary>
    private const double ShortMeters = 0.5;

    /// <summary>Volumes below this are shown in cm³.</summary>
    private const double SmallCubicMeters = 1e-4;

    /// <summary>Masses below this are shown in mg.</summary>
    private const double SmallKilograms = 1e-3;

    /// <summary>The unit for a quantity. A number that another unit may not hold stays in its own.</summary>
    internal static Enum Of(IQuantity value) => IsBelow(value, Guard.Largest) ? OfUsualSize(value) : value.Unit;

    private static Enum OfUsualSize(IQuantity value) =>
        value.Unit switch
        {
            PressureUnit.Pascal => PressureUnit.Kilopascal,
            VolumeFlowUnit.CubicMeterPerSecond => VolumeFlowUnit.LiterPerHour,
            MassFlowUnit.KilogramPerSecond => MassFlowUnit.GramPerSecond,
            VolumeUnit.CubicMeter => IsBelow(value, SmallCubicMeters) ? VolumeUnit.CubicCentimeter : VolumeUnit.Liter,
            MassUnit.Kilogram when IsBelow(value, SmallKilograms) => MassUnit.Milligram,
            MassUnit.Kilogram when IsBelow(value, 1) => MassUnit.Gram,
            LengthUnit.Meter when IsBelow(value, ShortMeters) => LengthUnit.Millimeter,
            AreaUnit.SquareMeter => AreaUnit.SquareMillimeter,
            TemperatureUnit.Kelvin => TemperatureUnit.DegreeCelsius,
            DurationUnit.Second when IsBelow(value, 1) => DurationUnit.Millisecond,
            RotationalSpeedUnit.RadianPerSecond => RotationalSpeedUnit.RevolutionPerMinute,
            DynamicViscosityUnit.PascalSecond => DynamicViscosityUnit.MillipascalSecond,
            DynamicViscosityUnit.NewtonSecondPerMeterSquared => DynamicViscosityUnit.MillipascalSecond,
            KinematicViscosityUnit.SquareMeterPerSecond => KinematicViscosityUnit.Centistokes,
            SpecificEnergyUnit.JoulePerKilogram => SpecificEnergyUnit.MegajoulePerKilogram,
            AngleUnit.Radian => AngleUnit.Degree,
            Enum own => own,
        };

    private static bool IsBelow(IQuantity value, double limit) => Math.Abs(value.NumberIn(value.Unit)) < limit;
}

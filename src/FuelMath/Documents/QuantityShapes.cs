using UnitsNet;

namespace FuelMath;

/// <summary>The quantities of documents, each with the unit it is written in. Any unit of its kind is read.</summary>
internal static class QuantityShapes
{
    internal static QuantityShape<Pressure> PressureDifference { get; } = Of(QuantityKinds.PressureDifference, "kPa");

    internal static QuantityShape<GaugePressure> GaugePressure { get; } = Of(PressureKinds.Gauge, "kPa gauge");

    internal static QuantityShape<AbsolutePressure> AbsolutePressure { get; } =
        Of(PressureKinds.Absolute, "kPa absolute");

    internal static QuantityShape<VolumeFlow> VolumeFlow { get; } = Of(QuantityKinds.VolumeFlow, "L/h");

    internal static QuantityShape<VolumeFlow> InjectorVolumeFlow { get; } = Of(QuantityKinds.VolumeFlow, "cm3/min");

    internal static QuantityShape<MassFlow> MassFlow { get; } = Of(QuantityKinds.MassFlow, "g/s");

    internal static QuantityShape<Mass> Mass { get; } = Of(QuantityKinds.Mass, "g");

    internal static QuantityShape<Volume> Volume { get; } = Of(QuantityKinds.Volume, "cm3");

    internal static QuantityShape<Length> Length { get; } = Of(QuantityKinds.Length, "m");

    internal static QuantityShape<Length> SmallLength { get; } = Of(QuantityKinds.Length, "mm");

    internal static QuantityShape<Area> Area { get; } = Of(QuantityKinds.Area, "mm2");

    internal static QuantityShape<Density> Density { get; } = Of(QuantityKinds.Density, "kg/m3");

    internal static QuantityShape<DynamicViscosity> DynamicViscosity { get; } =
        Of(QuantityKinds.DynamicViscosity, "mPa s");

    internal static QuantityShape<KinematicViscosity> KinematicViscosity { get; } =
        Of(QuantityKinds.KinematicViscosity, "mm2/s");

    internal static QuantityShape<Temperature> Temperature { get; } = Of(QuantityKinds.Temperature, "degC");

    internal static QuantityShape<ElectricPotential> Voltage { get; } = Of(QuantityKinds.Voltage, "V");

    internal static QuantityShape<ElectricCurrent> Current { get; } = Of(QuantityKinds.Current, "A");

    internal static QuantityShape<ElectricResistance> Resistance { get; } = Of(QuantityKinds.Resistance, "ohm");

    internal static QuantityShape<ElectricResistance> SmallResistance { get; } = Of(QuantityKinds.Resistance, "mohm");

    internal static QuantityShape<Power> Power { get; } = Of(QuantityKinds.Power, "W");

    internal static QuantityShape<Duration> Duration { get; } = Of(QuantityKinds.Duration, "ms");

    internal static QuantityShape<RotationalSpeed> RotationalSpeed { get; } = Of(QuantityKinds.RotationalSpeed, "rpm");

    internal static QuantityShape<SpecificEnergy> SpecificEnergy { get; } = Of(QuantityKinds.SpecificEnergy, "MJ/kg");

    internal static QuantityShape<Speed> Speed { get; } = Of(QuantityKinds.Speed, "m/s");

    internal static QuantityShape<Acceleration> Acceleration { get; } = Of(QuantityKinds.Acceleration, "m/s2");

    internal static QuantityShape<Ratio> Ratio { get; } = Of(QuantityKinds.Ratio, "%");

    private static QuantityShape<T> Of<T>(QuantityKind<T> kind, string unit)
        where T : struct => new(kind, unit);
}

using UnitsNet;

namespace FuelMath;

/// <summary>The quantities of documents, each with the unit it is written in. Any unit of its kind is read.</summary>
internal static class QuantityShapes
{
    internal static Shape<Pressure> PressureDifference { get; } = Of(QuantityKinds.PressureDifference, "kPa");

    internal static Shape<GaugePressure> GaugePressure { get; } = Of(PressureKinds.Gauge, "kPa gauge");

    internal static Shape<AbsolutePressure> AbsolutePressure { get; } = Of(PressureKinds.Absolute, "kPa absolute");

    internal static Shape<VolumeFlow> VolumeFlow { get; } = Of(QuantityKinds.VolumeFlow, "L/h");

    internal static Shape<VolumeFlow> InjectorVolumeFlow { get; } = Of(QuantityKinds.VolumeFlow, "cm3/min");

    internal static Shape<MassFlow> MassFlow { get; } = Of(QuantityKinds.MassFlow, "g/s");

    internal static Shape<Mass> Mass { get; } = Of(QuantityKinds.Mass, "g");

    internal static Shape<Volume> Volume { get; } = Of(QuantityKinds.Volume, "cm3");

    internal static Shape<Length> Length { get; } = Of(QuantityKinds.Length, "m");

    internal static Shape<Length> SmallLength { get; } = Of(QuantityKinds.Length, "mm");

    internal static Shape<Area> Area { get; } = Of(QuantityKinds.Area, "mm2");

    internal static Shape<Density> Density { get; } = Of(QuantityKinds.Density, "kg/m3");

    internal static Shape<DynamicViscosity> DynamicViscosity { get; } = Of(QuantityKinds.DynamicViscosity, "mPa s");

    internal static Shape<KinematicViscosity> KinematicViscosity { get; } =
        Of(QuantityKinds.KinematicViscosity, "mm2/s");

    internal static Shape<Temperature> Temperature { get; } = Of(QuantityKinds.Temperature, "degC");

    internal static Shape<ElectricPotential> Voltage { get; } = Of(QuantityKinds.Voltage, "V");

    internal static Shape<ElectricCurrent> Current { get; } = Of(QuantityKinds.Current, "A");

    internal static Shape<ElectricResistance> Resistance { get; } = Of(QuantityKinds.Resistance, "ohm");

    internal static Shape<ElectricResistance> SmallResistance { get; } = Of(QuantityKinds.Resistance, "mohm");

    internal static Shape<Power> Power { get; } = Of(QuantityKinds.Power, "W");

    internal static Shape<Duration> Duration { get; } = Of(QuantityKinds.Duration, "ms");

    internal static Shape<RotationalSpeed> RotationalSpeed { get; } = Of(QuantityKinds.RotationalSpeed, "rpm");

    internal static Shape<SpecificEnergy> SpecificEnergy { get; } = Of(QuantityKinds.SpecificEnergy, "MJ/kg");

    internal static Shape<Speed> Speed { get; } = Of(QuantityKinds.Speed, "m/s");

    internal static Shape<Acceleration> Acceleration { get; } = Of(QuantityKinds.Acceleration, "m/s2");

    internal static Shape<Ratio> Ratio { get; } = Of(QuantityKinds.Ratio, "%");

    private static QuantityShape<T> Of<T>(QuantityKind<T> kind, string unit)
        where T : struct => new(kind, unit);
}

using UnitsNet;

namespace FuelMath;

/// <summary>The kinds of quantity for text, each with its units.</summary>
/// <remarks>
/// Gauge and absolute pressures carry their reference in the text ("3.0 bar gauge", "100 kPa absolute"), and have their
/// kinds in <c>PressureKinds</c>. A bare "3 bar" is a difference.
/// </remarks>
/// <seealso href="../guide/quantities.html">Quantities</seealso>
public static class QuantityKinds
{
    /// <summary>A difference of two pressures: "3.0 bar", "43 psi".</summary>
    public static QuantityKind<Pressure> PressureDifference { get; } =
        new(UnitTable.PressureDifference, x => x.InSi(), SiUnits.Pressure);

    /// <summary>Volume per time: "980 cm3/min", "190 L/h".</summary>
    public static QuantityKind<VolumeFlow> VolumeFlow { get; } =
        new(UnitTable.VolumeFlow, x => x.InSi(), SiUnits.VolumeFlow);

    /// <summary>Mass per time: "11.4 g/s", "90 lb/h".</summary>
    public static QuantityKind<MassFlow> MassFlow { get; } = new(UnitTable.MassFlow, x => x.InSi(), SiUnits.MassFlow);

    /// <summary>Volume: "2.0 L", "150 cm3".</summary>
    public static QuantityKind<Volume> Volume { get; } = new(UnitTable.Volume, x => x.InSi(), SiUnits.Volume);

    /// <summary>Mass: "18 mg", "1.2 kg".</summary>
    public static QuantityKind<Mass> Mass { get; } = new(UnitTable.Mass, x => x.InSi(), SiUnits.Mass);

    /// <summary>Length: "1.5 m", "12.5 mm".</summary>
    public static QuantityKind<Length> Length { get; } = new(UnitTable.Length, x => x.InSi(), SiUnits.Length);

    /// <summary>Area: "2.5 mm2".</summary>
    public static QuantityKind<Area> Area { get; } = new(UnitTable.Area, x => x.InSi(), SiUnits.Area);

    /// <summary>Density: "740 kg/m3".</summary>
    public static QuantityKind<Density> Density { get; } = new(UnitTable.Density, x => x.InSi(), SiUnits.Density);

    /// <summary>Dynamic viscosity: "0.52 mPa s".</summary>
    public static QuantityKind<DynamicViscosity> DynamicViscosity { get; } =
        new(UnitTable.DynamicViscosity, x => x.InSi(), SiUnits.DynamicViscosity);

    /// <summary>Kinematic viscosity: "0.7 mm2/s".</summary>
    public static QuantityKind<KinematicViscosity> KinematicViscosity { get; } =
        new(UnitTable.KinematicViscosity, x => x.InSi(), SiUnits.KinematicViscosity);

    /// <summary>Temperature: "25 degC", "300 K"; not below absolute zero.</summary>
    public static QuantityKind<Temperature> Temperature { get; } =
        new(UnitTable.Temperature, x => x.InSi(), SiUnits.Temperature);

    /// <summary>A difference of two temperatures, in kelvins: "10 K".</summary>
    public static QuantityKind<TemperatureDelta> TemperatureDifference { get; } =
        new(UnitTable.TemperatureDifference, x => x.InSi(), SiUnits.TemperatureDelta);

    /// <summary>Voltage: "13.5 V".</summary>
    public static QuantityKind<ElectricPotential> Voltage { get; } =
        new(UnitTable.Voltage, x => x.InSi(), SiUnits.ElectricPotential);

    /// <summary>Electric current: "8.2 A".</summary>
    public static QuantityKind<ElectricCurrent> Current { get; } =
        new(UnitTable.Current, x => x.InSi(), SiUnits.ElectricCurrent);

    /// <summary>Electric resistance: "0.35 ohm".</summary>
    public static QuantityKind<ElectricResistance> Resistance { get; } =
        new(UnitTable.Resistance, x => x.InSi(), SiUnits.ElectricResistance);

    /// <summary>Duration: "1.2 ms".</summary>
    public static QuantityKind<Duration> Duration { get; } = new(UnitTable.Duration, x => x.InSi(), SiUnits.Duration);

    /// <summary>Rotational speed: "6500 rpm".</summary>
    public static QuantityKind<RotationalSpeed> RotationalSpeed { get; } =
        new(UnitTable.RotationalSpeed, x => x.InSi(), SiUnits.RotationalSpeed);

    /// <summary>Frequency: "54 Hz".</summary>
    public static QuantityKind<Frequency> Frequency { get; } =
        new(UnitTable.Frequency, x => x.InSi(), SiUnits.Frequency);

    /// <summary>
    /// Power: "250 kW". From 1e-12 W to 1e15 W, either sign, with 15 digits: the unit library represents it as a
    /// decimal number.
    /// </summary>
    public static QuantityKind<Power> Power { get; } = new(UnitTable.Power, x => x.InSi(), SiUnits.Power);

    /// <summary>Energy per mass: "43.4 MJ/kg".</summary>
    public static QuantityKind<SpecificEnergy> SpecificEnergy { get; } =
        new(UnitTable.SpecificEnergy, x => x.InSi(), SiUnits.SpecificEnergy);

    /// <summary>Heat capacity per mass: "2.1 kJ/(kg K)".</summary>
    public static QuantityKind<SpecificEntropy> SpecificHeatCapacity { get; } =
        new(UnitTable.SpecificHeatCapacity, x => x.InSi(), SiUnits.SpecificEntropy);

    /// <summary>Fuel mass per energy delivered: "340 g/kWh".</summary>
    public static QuantityKind<BrakeSpecificFuelConsumption> BrakeSpecificFuelConsumption { get; } =
        new(UnitTable.BrakeSpecificFuelConsumption, x => x.InSi(), SiUnits.BrakeSpecificFuelConsumption);

    /// <summary>Speed: "2.5 m/s".</summary>
    public static QuantityKind<Speed> Speed { get; } = new(UnitTable.Speed, x => x.InSi(), SiUnits.Speed);

    /// <summary>Acceleration: "9.8 m/s2".</summary>
    public static QuantityKind<Acceleration> Acceleration { get; } =
        new(UnitTable.Acceleration, x => x.InSi(), SiUnits.Acceleration);

    /// <summary>Force: "120 N".</summary>
    public static QuantityKind<Force> Force { get; } = new(UnitTable.Force, x => x.InSi(), SiUnits.Force);

    /// <summary>A fraction: "85 %".</summary>
    public static QuantityKind<Ratio> Ratio { get; } = new(UnitTable.Ratio, x => x.InSi(), SiUnits.Ratio);
}

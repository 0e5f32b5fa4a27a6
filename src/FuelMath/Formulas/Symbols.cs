namespace FuelMath.Formulas;

/// <summary>The symbols of formulas: what a working calls their inputs and their results.</summary>
/// <remarks>
/// Formulas name their own results. Inputs are named by whoever asks for a working:
/// <c>Traced.Input(Symbols.Bore, 0.008)</c>. A symbol of your own does as well.
/// </remarks>
/// <seealso href="../guide/formulas.html">Formulas</seealso>
public static class Symbols
{
    /// <summary>An input: density, kg/m³.</summary>
    public static Symbol Density { get; } = new("rho", "kg/m3", "density");

    /// <summary>An input: dynamic viscosity, Pa s.</summary>
    public static Symbol DynamicViscosity { get; } = new("mu", "Pa s", "dynamic viscosity");

    /// <summary>An input: inner diameter, m.</summary>
    public static Symbol Bore { get; } = new("D", "m", "inner diameter");

    /// <summary>An input: length, m.</summary>
    public static Symbol Length { get; } = new("L", "m", "length");

    /// <summary>An input: roughness of the wall, m.</summary>
    public static Symbol Roughness { get; } = new("e", "m", "roughness of the wall");

    /// <summary>An input: roughness over inner diameter.</summary>
    public static Symbol RelativeRoughness { get; } = new("e/D", "", "roughness over inner diameter");

    /// <summary>An input: differential pressure, Pa.</summary>
    public static Symbol DifferentialPressure { get; } = new("dp", "Pa", "differential pressure");

    /// <summary>An input: differential pressure of the rating, Pa.</summary>
    public static Symbol ReferenceDifferentialPressure { get; } =
        new("dp0", "Pa", "differential pressure of the rating");

    /// <summary>An input: density of the fluid of the rating, kg/m³.</summary>
    public static Symbol ReferenceDensity { get; } = new("rho0", "kg/m3", "density of the fluid of the rating");

    /// <summary>An input: rated mass flow, kg/s.</summary>
    public static Symbol ReferenceMassFlow { get; } = new("m0", "kg/s", "rated mass flow");

    /// <summary>An input: rated volume flow, m³/s.</summary>
    public static Symbol ReferenceVolumeFlow { get; } = new("Q0", "m3/s", "rated volume flow");

    /// <summary>An input: discharge coefficient.</summary>
    public static Symbol DischargeCoefficient { get; } = new("Cd", "", "discharge coefficient");

    /// <summary>An input: area, m².</summary>
    public static Symbol Area { get; } = new("A", "m2", "area");

    /// <summary>An input: pulse width, s.</summary>
    public static Symbol Width { get; } = new("tp", "s", "pulse width");

    /// <summary>An input: dead time, s.</summary>
    public static Symbol DeadTime { get; } = new("td", "s", "dead time");

    /// <summary>An input: time from pulse to pulse, s.</summary>
    public static Symbol Period { get; } = new("T", "s", "time from pulse to pulse");

    /// <summary>An input: temperature, degC.</summary>
    public static Symbol Temperature { get; } = new("t", "degC", "temperature");

    /// <summary>An input: resistivity at 20 °C, ohm m.</summary>
    public static Symbol Resistivity { get; } = new("rho20", "ohm m", "resistivity at 20 degrees Celsius");

    /// <summary>An input: temperature coefficient from 20 °C, 1/K.</summary>
    public static Symbol ResistanceCoefficient { get; } =
        new("a20", "1/K", "temperature coefficient from 20 degrees Celsius");

    /// <summary>A result: mean velocity, m/s.</summary>
    public static Symbol Velocity { get; } = new("v", "m/s", "mean velocity");

    /// <summary>A result: Reynolds number.</summary>
    public static Symbol Reynolds { get; } = new("Re", "", "Reynolds number");

    /// <summary>A result: 1/sqrt(f), the root of x = -2 log10(e/(3.7 D) + 2.51 x/Re).</summary>
    public static Symbol RootOfFriction { get; } =
        new("x", "", "1/sqrt(f), the root of x = -2 log10(e/(3.7 D) + 2.51 x/Re)");

    /// <summary>A result: Darcy friction factor.</summary>
    public static Symbol FrictionFactor { get; } = new("f", "", "Darcy friction factor");

    /// <summary>A result: pressure lost, Pa.</summary>
    public static Symbol PressureLoss { get; } = new("dp", "Pa", "pressure lost");

    /// <summary>A result: loss coefficient.</summary>
    public static Symbol LossCoefficient { get; } = new("K", "", "loss coefficient");

    /// <summary>A result: mass flow, kg/s.</summary>
    public static Symbol MassFlow { get; } = new("m", "kg/s", "mass flow");

    /// <summary>A result: volume flow, m³/s.</summary>
    public static Symbol VolumeFlow { get; } = new("Q", "m3/s", "volume flow");

    /// <summary>A result: mean mass flow, kg/s.</summary>
    public static Symbol MeanMassFlow { get; } = new("mm", "kg/s", "mean mass flow");

    /// <summary>A result: effective width, s.</summary>
    public static Symbol EffectiveWidth { get; } = new("w", "s", "effective width");

    /// <summary>A result: mass of one pulse, kg.</summary>
    public static Symbol PulseMass { get; } = new("mp", "kg", "mass of one pulse");

    /// <summary>A result: duty cycle.</summary>
    public static Symbol DutyCycle { get; } = new("d", "", "duty cycle");

    /// <summary>A result: mass of oxygen per mass of fuel.</summary>
    public static Symbol OxygenDemand { get; } = new("o2", "", "mass of oxygen per mass of fuel");

    /// <summary>A result: stoichiometric air-fuel ratio by mass.</summary>
    public static Symbol StoichiometricRatio { get; } = new("AFRst", "", "stoichiometric air-fuel ratio by mass");

    /// <summary>A result: air over the air needed.</summary>
    public static Symbol Lambda { get; } = new("lambda", "", "air over the air needed");

    /// <summary>A result: volume correction factor to 15 °C.</summary>
    public static Symbol VolumeCorrection { get; } = new("VCF", "", "volume correction factor to 15 degrees Celsius");

    /// <summary>A result: true vapor pressure, absolute, Pa.</summary>
    public static Symbol VaporPressure { get; } = new("pv", "Pa", "true vapor pressure, absolute");

    /// <summary>A result: resistance, ohm.</summary>
    public static Symbol Resistance { get; } = new("R", "ohm", "resistance");

    /// <summary>A result: density of air, kg/m³.</summary>
    public static Symbol AirDensity { get; } = new("rhoa", "kg/m3", "density of air");

    /// <summary>A result: air mass of one event, kg.</summary>
    public static Symbol AirMass { get; } = new("ma", "kg", "air mass of one event");

    /// <summary>A result: mass of fuel, kg.</summary>
    public static Symbol FuelMass { get; } = new("mf", "kg", "mass of fuel");

    /// <summary>A result: mass flow of fuel, kg/s.</summary>
    public static Symbol FuelFlow { get; } = new("mff", "kg/s", "mass flow of fuel");

    /// <summary>A result: events per second, 1/s.</summary>
    public static Symbol EventsPerSecond { get; } = new("n", "1/s", "events per second");

    /// <summary>An input: thermodynamic temperature, K.</summary>
    public static Symbol AbsoluteTemperature { get; } = new("T", "K", "thermodynamic temperature");

    /// <summary>A result: mass of fuel per mass of mixture.</summary>
    public static Symbol FuelFraction { get; } = new("ff", "", "mass of fuel per mass of mixture");

    /// <summary>A result: equivalence ratio.</summary>
    public static Symbol EquivalenceRatio { get; } = new("phi", "", "fuel over the fuel that the air could burn");

    /// <summary>A result: air-fuel ratio by mass.</summary>
    public static Symbol AirFuelRatio { get; } = new("AFR", "", "air-fuel ratio by mass");

    /// <summary>A result: a property per mass of a blend.</summary>
    public static Symbol MeanByMass { get; } = new("qb", "", "property of the blend, its mean by mass");

    /// <summary>A result: stretch of a ring.</summary>
    public static Symbol Stretch { get; } = new("X", "", "stretch of the ring");

    /// <summary>A result: thinning of a stretched section.</summary>
    public static Symbol SectionReduction { get; } = new("R", "", "thinning of the stretched section");

    /// <summary>A result: squeeze of a section.</summary>
    public static Symbol Squeeze { get; } = new("S", "", "squeeze of the section");

    /// <summary>Volume of a sealing ring.</summary>
    public static Symbol RingVolume { get; } = new("Vr", "m3", "volume of the ring");

    /// <summary>Volume of a sealing ring's groove.</summary>
    public static Symbol GrooveVolume { get; } = new("Vg", "m3", "volume of the groove");

    /// <summary>A result: fill of a groove.</summary>
    public static Symbol GrooveFill { get; } = new("F", "", "fill of the groove");
}

using FuelMath.Scalars;
using FuelMath.Sources;

namespace FuelMath.Formulas;

/// <summary>The symbols of formulas: what a working calls their inputs and their results.</summary>
/// <remarks>
/// Formulas name their own results. Inputs are named by whoever asks for a working:
/// <c>Traced.Input(Symbols.Bore, 0.008)</c>. A symbol of your own does as well.
/// </remarks>
public static class Symbols
{
    /// <summary>An input: density, kg/m3.</summary>
    public static Symbol Density { get; } = new("rho", "kg/m3", "density", null);

    /// <summary>An input: dynamic viscosity, Pa s.</summary>
    public static Symbol DynamicViscosity { get; } = new("mu", "Pa s", "dynamic viscosity", null);

    /// <summary>An input: inner diameter, m.</summary>
    public static Symbol Bore { get; } = new("D", "m", "inner diameter", null);

    /// <summary>An input: length, m.</summary>
    public static Symbol Length { get; } = new("L", "m", "length", null);

    /// <summary>An input: roughness of the wall, m.</summary>
    public static Symbol Roughness { get; } = new("e", "m", "roughness of the wall", null);

    /// <summary>An input: roughness over inner diameter.</summary>
    public static Symbol RelativeRoughness { get; } = new("e/D", "", "roughness over inner diameter", null);

    /// <summary>An input: differential pressure, Pa.</summary>
    public static Symbol DifferentialPressure { get; } = new("dp", "Pa", "differential pressure", null);

    /// <summary>An input: differential pressure of the rating, Pa.</summary>
    public static Symbol ReferenceDifferentialPressure { get; } =
        new("dp0", "Pa", "differential pressure of the rating", null);

    /// <summary>An input: density of the fluid of the rating, kg/m3.</summary>
    public static Symbol ReferenceDensity { get; } = new("rho0", "kg/m3", "density of the fluid of the rating", null);

    /// <summary>An input: rated mass flow, kg/s.</summary>
    public static Symbol ReferenceMassFlow { get; } = new("m0", "kg/s", "rated mass flow", null);

    /// <summary>An input: rated volume flow, m3/s.</summary>
    public static Symbol ReferenceVolumeFlow { get; } = new("Q0", "m3/s", "rated volume flow", null);

    /// <summary>An input: discharge coefficient.</summary>
    public static Symbol DischargeCoefficient { get; } = new("Cd", "", "discharge coefficient", null);

    /// <summary>An input: area, m2.</summary>
    public static Symbol Area { get; } = new("A", "m2", "area", null);

    /// <summary>An input: pulse width, s.</summary>
    public static Symbol Width { get; } = new("tp", "s", "pulse width", null);

    /// <summary>An input: dead time, s.</summary>
    public static Symbol DeadTime { get; } = new("td", "s", "dead time", null);

    /// <summary>An input: time from pulse to pulse, s.</summary>
    public static Symbol Period { get; } = new("T", "s", "time from pulse to pulse", null);

    /// <summary>An input: temperature, degC.</summary>
    public static Symbol Temperature { get; } = new("t", "degC", "temperature", null);

    /// <summary>An input: resistivity at 20 degrees Celsius, ohm m.</summary>
    public static Symbol Resistivity { get; } = new("rho20", "ohm m", "resistivity at 20 degrees Celsius", null);

    /// <summary>An input: temperature coefficient from 20 degrees Celsius, 1/K.</summary>
    public static Symbol ResistanceCoefficient { get; } =
        new("a20", "1/K", "temperature coefficient from 20 degrees Celsius", null);

    /// <summary>A result: mean velocity, m/s. Source: [Definition] flow over area.</summary>
    public static Symbol Velocity { get; } =
        new("v", "m/s", "mean velocity", new DataSource("Definition", "flow over area"));

    /// <summary>A result: Reynolds number. Source: [White-2003] section 1.6.</summary>
    public static Symbol Reynolds { get; } =
        new("Re", "", "Reynolds number", new DataSource("White-2003", "section 1.6"));

    /// <summary>A result: 1/sqrt(f), the root of x = -2 log10(e/(3.7 D) + 2.51 x/Re). Source: [Colebrook-1939] transition curve.</summary>
    public static Symbol RootOfFriction { get; } =
        new(
            "x",
            "",
            "1/sqrt(f), the root of x = -2 log10(e/(3.7 D) + 2.51 x/Re)",
            new DataSource("Colebrook-1939", "transition curve")
        );

    /// <summary>A result: Darcy friction factor. Source: [White-2003] section 6.4; turbulent after Colebrook-White.</summary>
    public static Symbol FrictionFactor { get; } =
        new(
            "f",
            "",
            "Darcy friction factor",
            new DataSource("White-2003", "section 6.4; turbulent after Colebrook-White")
        );

    /// <summary>A result: pressure lost, Pa. Source: [White-2003] sections 6.3 and 6.9.</summary>
    public static Symbol PressureLoss { get; } =
        new("dp", "Pa", "pressure lost", new DataSource("White-2003", "sections 6.3 and 6.9"));

    /// <summary>A result: loss coefficient. Source: [Crane-TP410] chapter 2.</summary>
    public static Symbol LossCoefficient { get; } =
        new("K", "", "loss coefficient", new DataSource("Crane-TP410", "chapter 2"));

    /// <summary>A result: mass flow, kg/s. Source: [White-2003] section 6.12.</summary>
    public static Symbol MassFlow { get; } =
        new("m", "kg/s", "mass flow", new DataSource("White-2003", "section 6.12"));

    /// <summary>A result: volume flow, m3/s. Source: [White-2003] section 6.12.</summary>
    public static Symbol VolumeFlow { get; } =
        new("Q", "m3/s", "volume flow", new DataSource("White-2003", "section 6.12"));

    /// <summary>A result: mean mass flow, kg/s. Source: [Definition] mass of a pulse times pulses per second.</summary>
    public static Symbol MeanMassFlow { get; } =
        new("mm", "kg/s", "mean mass flow", new DataSource("Definition", "mass of a pulse times pulses per second"));

    /// <summary>A result: effective width, s. Source: [SAE-J1832] time offset.</summary>
    public static Symbol EffectiveWidth { get; } =
        new("w", "s", "effective width", new DataSource("SAE-J1832", "time offset"));

    /// <summary>A result: mass of one pulse, kg. Source: [SAE-J1832] dynamic flow.</summary>
    public static Symbol PulseMass { get; } =
        new("mp", "kg", "mass of one pulse", new DataSource("SAE-J1832", "dynamic flow"));

    /// <summary>A result: duty cycle. Source: [Definition] width over period.</summary>
    public static Symbol DutyCycle { get; } =
        new("d", "", "duty cycle", new DataSource("Definition", "width over period"));

    /// <summary>A result: mass of oxygen per mass of fuel. Source: [Heywood-1988] section 3.4.</summary>
    public static Symbol OxygenDemand { get; } =
        new("o2", "", "mass of oxygen per mass of fuel", new DataSource("Heywood-1988", "section 3.4"));

    /// <summary>A result: stoichiometric air-fuel ratio by mass. Source: [Heywood-1988] section 3.4.</summary>
    public static Symbol StoichiometricRatio { get; } =
        new("AFRst", "", "stoichiometric air-fuel ratio by mass", new DataSource("Heywood-1988", "section 3.4"));

    /// <summary>A result: air over the air needed. Source: [Heywood-1988] section 3.4.</summary>
    public static Symbol Lambda { get; } =
        new("lambda", "", "air over the air needed", new DataSource("Heywood-1988", "section 3.4"));

    /// <summary>A result: volume correction factor to 15 degrees Celsius. Source: [ASTM-D1250] equation of the volume correction factor.</summary>
    public static Symbol VolumeCorrection { get; } =
        new(
            "VCF",
            "",
            "volume correction factor to 15 degrees Celsius",
            new DataSource("ASTM-D1250", "equation of the volume correction factor")
        );

    /// <summary>A result: true vapor pressure, absolute, Pa. Source: [EPA-AP42] chapter 7.1; a pure substance after Antoine.</summary>
    public static Symbol VaporPressure { get; } =
        new(
            "pv",
            "Pa",
            "true vapor pressure, absolute",
            new DataSource("EPA-AP42", "chapter 7.1; a pure substance after Antoine")
        );

    /// <summary>A result: resistance, ohm. Source: [NBS-Handbook-100] section 2.</summary>
    public static Symbol Resistance { get; } =
        new("R", "ohm", "resistance", new DataSource("NBS-Handbook-100", "section 2"));

    /// <summary>A result: density of air, kg/m3. Source: [ISO-2533] equation of state.</summary>
    public static Symbol AirDensity { get; } =
        new("rhoa", "kg/m3", "density of air", new DataSource("ISO-2533", "equation of state"));

    /// <summary>A result: air mass of one event, kg. Source: [Heywood-1988] section 2.10.</summary>
    public static Symbol AirMass { get; } =
        new("ma", "kg", "air mass of one event", new DataSource("Heywood-1988", "section 2.10"));

    /// <summary>A result: mass of fuel, kg. Source: [Heywood-1988] section 3.4.</summary>
    public static Symbol FuelMass { get; } =
        new("mf", "kg", "mass of fuel", new DataSource("Heywood-1988", "section 3.4"));

    /// <summary>A result: mass flow of fuel, kg/s. Source: [Heywood-1988] section 2.8.</summary>
    public static Symbol FuelFlow { get; } =
        new("mff", "kg/s", "mass flow of fuel", new DataSource("Heywood-1988", "section 2.8"));

    /// <summary>A result: events per second, 1/s. Source: [Definition] events per revolution times revolutions per second.</summary>
    public static Symbol EventsPerSecond { get; } =
        new(
            "n",
            "1/s",
            "events per second",
            new DataSource("Definition", "events per revolution times revolutions per second")
        );

    /// <summary>An input: thermodynamic temperature, K.</summary>
    public static Symbol AbsoluteTemperature { get; } = new("T", "K", "thermodynamic temperature", null);

    /// <summary>A result: mass of fuel per mass of mixture. Source: [Definition] of the fraction.</summary>
    public static Symbol FuelFraction { get; } =
        new("ff", "", "mass of fuel per mass of mixture", new DataSource("Definition", "of the fraction"));

    /// <summary>A result: equivalence ratio. Source: [Heywood-1988] section 3.4.</summary>
    public static Symbol EquivalenceRatio { get; } =
        new("phi", "", "fuel over the fuel that the air could burn", new DataSource("Heywood-1988", "section 3.4"));

    /// <summary>A result: air-fuel ratio by mass. Source: [Definition] of lambda.</summary>
    public static Symbol AirFuelRatio { get; } =
        new("AFR", "", "air-fuel ratio by mass", new DataSource("Definition", "of lambda"));

    /// <summary>A result: a property per mass of a blend. Source: [Definition] mean by mass.</summary>
    public static Symbol MeanByMass { get; } =
        new("qb", "", "property of the blend, its mean by mass", new DataSource("Definition", "mean by mass"));

    /// <summary>A result: stretch of a ring. Source: [SAE-AS4716] appendix A.</summary>
    public static Symbol Stretch { get; } =
        new("X", "", "stretch of the ring", new DataSource("SAE-AS4716", "appendix A"));

    /// <summary>A result: thinning of a stretched section. Source: [SAE-AS4716] appendix A.</summary>
    public static Symbol SectionReduction { get; } =
        new("R", "", "thinning of the stretched section", new DataSource("SAE-AS4716", "appendix A"));

    /// <summary>A result: squeeze of a section. Source: [SAE-AS4716] appendix A.</summary>
    public static Symbol Squeeze { get; } =
        new("S", "", "squeeze of the section", new DataSource("SAE-AS4716", "appendix A"));

    /// <summary>A result: fill of a groove. Source: [Definition] areas of a circle and a rectangle.</summary>
    public static Symbol GrooveFill { get; } =
        new("F", "", "fill of the groove", new DataSource("Definition", "areas of a circle and a rectangle"));
}

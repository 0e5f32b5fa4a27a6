using FuelMath.Scalars;
using FuelMath.Sources;

namespace FuelMath.Formulas;

/// <summary>The symbols that formulas give to their results in a working.</summary>
internal static class Symbols
{
    internal static readonly Symbol Velocity = new("v", "m/s", "mean velocity", Of("Definition", "flow over area"));

    internal static readonly Symbol Reynolds = new("Re", "", "Reynolds number", Of("White-2003", "section 1.6"));

    internal static readonly Symbol FrictionFactor = new(
        "f",
        "",
        "Darcy friction factor",
        Of("Colebrook-1939", "transition curve; 64/Re in laminar flow")
    );

    internal static readonly Symbol PressureLoss = new(
        "dp",
        "Pa",
        "pressure lost",
        Of("White-2003", "sections 6.3 and 6.9")
    );

    internal static readonly Symbol LossCoefficient = new("K", "", "loss coefficient", Of("Crane-TP410", "chapter 2"));

    internal static readonly Symbol MassFlow = new("m", "kg/s", "mass flow", Of("White-2003", "section 6.12"));

    internal static readonly Symbol VolumeFlow = new("Q", "m3/s", "volume flow", Of("White-2003", "section 6.12"));

    internal static readonly Symbol EffectiveWidth = new("w", "s", "effective width", Of("SAE-J1832", "time offset"));

    internal static readonly Symbol PulseMass = new("mp", "kg", "mass of one pulse", Of("SAE-J1832", "dynamic flow"));

    internal static readonly Symbol DutyCycle = new("D", "", "duty cycle", Of("Definition", "width over period"));

    internal static readonly Symbol OxygenDemand = new(
        "o2",
        "",
        "mass of oxygen per mass of fuel",
        Of("Heywood-1988", "section 3.4")
    );

    internal static readonly Symbol StoichiometricRatio = new(
        "AFRst",
        "",
        "stoichiometric air-fuel ratio by mass",
        Of("Heywood-1988", "section 3.4")
    );

    internal static readonly Symbol Lambda = new(
        "lambda",
        "",
        "air over air needed",
        Of("Heywood-1988", "section 3.4")
    );

    internal static readonly Symbol VolumeCorrection = new(
        "VCF",
        "",
        "volume correction factor to 15 degrees Celsius",
        Of("ASTM-D1250", "equation of the volume correction factor")
    );

    internal static readonly Symbol VaporPressure = new(
        "pv",
        "Pa",
        "true vapor pressure, absolute",
        Of("EPA-AP42", "chapter 7.1")
    );

    internal static readonly Symbol Resistance = new("R", "ohm", "resistance", Of("NBS-Handbook-100", "section 2"));

    internal static readonly Symbol AirDensity = new(
        "rho",
        "kg/m3",
        "density of air",
        Of("ISO-2533", "equation of state")
    );

    internal static readonly Symbol AirMass = new(
        "ma",
        "kg",
        "air mass of one event",
        Of("Heywood-1988", "section 2.10")
    );

    internal static readonly Symbol FuelMass = new("mf", "kg", "mass of fuel", Of("Heywood-1988", "section 3.4"));

    internal static readonly Symbol EventsPerSecond = new(
        "n",
        "1/s",
        "events per second",
        Of("Definition", "events per revolution x revolutions per second")
    );

    private static DataSource Of(string key, string locator) => new(key, locator);
}

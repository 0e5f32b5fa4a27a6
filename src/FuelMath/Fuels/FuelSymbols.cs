using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Symbols of the inputs of fuel workings.</summary>
internal static class FuelSymbols
{
    internal static Symbol Carbon { get; } = new("wC", "", "mass fraction of carbon");

    internal static Symbol Hydrogen { get; } = new("wH", "", "mass fraction of hydrogen");

    internal static Symbol Sulfur { get; } = new("wS", "", "mass fraction of sulfur");

    internal static Symbol Oxygen { get; } = new("wO", "", "mass fraction of oxygen");

    internal static Symbol AirOxygen { get; } = new("wO2", "", "mass fraction of oxygen in the air");

    internal static Symbol EthanolMass { get; } = new("wE", "", "mass fraction of ethanol");

    internal static Symbol Reading { get; } = new("r", "", "reading of the instrument");

    internal static Symbol Scale { get; } = new("r1", "", "reading of the instrument at lambda 1");

    internal static Symbol BaselineRatio { get; } = new("AFR0", "", "stoichiometric air-fuel ratio of the baseline");

    internal static Symbol FuelRatio { get; } = new("AFR1", "", "stoichiometric air-fuel ratio of the fuel");

    internal static Symbol BaselineHeat { get; } = new("q0", "J/kg", "lower heating value of the baseline");

    internal static Symbol FuelHeat { get; } = new("q1", "J/kg", "lower heating value of the fuel");

    internal static Symbol BaselineDensity { get; } = new("rho0", "kg/m3", "density of the baseline");

    internal static Symbol FuelDensity { get; } = new("rho1", "kg/m3", "density of the fuel");

    internal static Symbol SurfacePressure { get; } = new("p", "Pa", "absolute pressure on the liquid");

    internal static Symbol Height { get; } = new("z", "m", "height of the liquid above the inlet");

    internal static Symbol SuctionLoss { get; } = new("dps", "Pa", "pressure lost in the suction line");

    internal static Symbol Vapor { get; } = new("pv", "Pa", "vapor pressure");

    internal static Symbol VolumeFraction { get; } = new("x", "", "volume fraction before mixing");

    internal static Symbol FuelVolume { get; } = new("V", "m3", "volume of fuel");

    internal static Symbol OilPerFuel { get; } = new("r", "", "oil for each volume of fuel");

    internal static Symbol FinalVolume { get; } = new("V", "m3", "volume in the tank afterwards");

    internal static Symbol HeldVolume { get; } = new("V0", "m3", "volume in the tank");

    internal static Symbol OilFraction { get; } = new("f", "", "oil in a volume of the mix wanted");

    internal static Symbol HeldOilFraction { get; } = new("f0", "", "oil in a volume of the mix in the tank");
}

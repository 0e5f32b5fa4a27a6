using FuelMath.Scalars;

namespace FuelMath.Fuels;

/// <summary>Symbols of the inputs of fuel workings.</summary>
internal static class FuelSymbols
{
    internal static Symbol Carbon { get; } = new("wC", "", "mass fraction of carbon", null);

    internal static Symbol Hydrogen { get; } = new("wH", "", "mass fraction of hydrogen", null);

    internal static Symbol Sulfur { get; } = new("wS", "", "mass fraction of sulfur", null);

    internal static Symbol Oxygen { get; } = new("wO", "", "mass fraction of oxygen", null);

    internal static Symbol AirOxygen { get; } = new("wO2", "", "mass fraction of oxygen in the air", null);

    internal static Symbol EthanolMass { get; } = new("wE", "", "mass fraction of ethanol", null);

    internal static Symbol Reading { get; } = new("r", "", "reading of the instrument", null);

    internal static Symbol Scale { get; } = new("r1", "", "reading of the instrument at lambda 1", null);

    internal static Symbol BaselineRatio { get; } =
        new("AFR0", "", "stoichiometric air-fuel ratio of the baseline", null);

    internal static Symbol FuelRatio { get; } = new("AFR1", "", "stoichiometric air-fuel ratio of the fuel", null);

    internal static Symbol BaselineHeat { get; } = new("q0", "J/kg", "lower heating value of the baseline", null);

    internal static Symbol FuelHeat { get; } = new("q1", "J/kg", "lower heating value of the fuel", null);

    internal static Symbol BaselineDensity { get; } = new("rho0", "kg/m3", "density of the baseline", null);

    internal static Symbol FuelDensity { get; } = new("rho1", "kg/m3", "density of the fuel", null);

    internal static Symbol SurfacePressure { get; } = new("p", "Pa", "absolute pressure on the liquid", null);

    internal static Symbol Height { get; } = new("z", "m", "height of the liquid above the inlet", null);

    internal static Symbol SuctionLoss { get; } = new("dps", "Pa", "pressure lost in the suction line", null);

    internal static Symbol Vapor { get; } = new("pv", "Pa", "vapor pressure", null);

    internal static Symbol VolumeFraction { get; } = new("x", "", "volume fraction before mixing", null);

    internal static Symbol FuelVolume { get; } = new("V", "m3", "volume of fuel", null);

    internal static Symbol OilPerFuel { get; } = new("r", "", "oil for each volume of fuel", null);

    internal static Symbol FinalVolume { get; } = new("V", "m3", "volume in the tank afterwards", null);

    internal static Symbol HeldVolume { get; } = new("V0", "m3", "volume in the tank", null);

    internal static Symbol OilFraction { get; } = new("f", "", "oil in a volume of the mix wanted", null);

    internal static Symbol HeldOilFraction { get; } = new("f0", "", "oil in a volume of the mix in the tank", null);
}

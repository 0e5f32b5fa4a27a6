namespace FuelMath;

/// <summary>The oil in a fuel: its mass, and the oxygen that would burn it, for each kg of the fuel.</summary>
internal readonly record struct OilShare(double MassFraction, double OxygenDemand)
{
    /// <summary>Air per unit of mass when the oil does not burn, from the oxygen demand of the whole fuel.</summary>
    internal double AirWithout(double oxygenDemand) =>
        Math.Max(oxygenDemand - OxygenDemand, 0) / AirModel.StandardDry.OxygenFraction;

    internal OilShare Times(double share) => new(MassFraction * share, OxygenDemand * share);

    internal OilShare Plus(OilShare other) => new(MassFraction + other.MassFraction, OxygenDemand + other.OxygenDemand);
}

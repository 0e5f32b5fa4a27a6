using FuelMath.Fuels;
using FuelMath.Hoses;
using FuelMath.Sources;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class HoseExamples
{
    [Fact]
    public void SupplyLine()
    {
        #region Hose
        Hose supply = Hose.FromDash(
            "tank to rail",
            HoseStandard.Sae100R5,
            8,
            Length.FromMeters(3.2),
            Length.FromMicrometers(1.5),
            Ratio.FromDecimalFractions(1.9),
            new DataSource("Workshop-class", "supply line of the time-trial car")
        );

        Temperature warm = Temperature.FromDegreesCelsius(40);
        Fuel fuel = StandardFuels.PumpGasoline;
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(260);
        Pressure loss = supply.LossAt(flow, fuel.DensityAt(warm), fuel.ViscosityAt(warm));
        Speed speed = supply.VelocityAt(flow);
        Volume toPrime = supply.EnclosedVolume;
        #endregion

        Assert.InRange(loss.Kilopascals, 1, 5);
        Assert.Equal(0.864, speed.MetersPerSecond, 0.001);
        Assert.Equal(0.2674, toPrime.Liters, 0.0005);
    }
}

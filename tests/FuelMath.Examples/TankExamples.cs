using UnitsNet;

namespace FuelMath.Examples;

public sealed class TankExamples
{
    [Fact]
    public void ReachATarget()
    {
        #region ReachATarget
        Temperature paddock = Temperature.FromDegreesCelsius(18);
        Tank.Liquid gasoline = Tank.Liquid.FromFuel(StandardFuels.PumpGasoline);
        Tank.Liquid can = Tank.Liquid.FromGasoline("can", StandardFuels.PumpGasoline, Ratio.FromPercent(78));

        // The tank of the time-trial car: 45 L, with 12 L of gasoline in it.
        Tank tank = Tank.Empty(Volume.FromLiters(45), paddock).Add(gasoline, Volume.FromLiters(12), paddock);

        Tank.FillPlan fill = tank.Reach(Ratio.FromPercent(30), can, paddock);
        Volume add = fill.Steps[0].Volume; // 7.50 L from the can
        string working = fill.ToWorking().ToString(); // V0 (y - x0)/(xa - y), with the numbers and the source

        // To a full tank of the same content, from two cans, in the order in which they are at hand.
        Tank.FillPlan full = tank.FillTo(Ratio.FromPercent(30), Volume.FromLiters(45), gasoline, can, paddock);
        double[] liters = [.. full.Steps.Select(s => s.Volume.Liters)]; // 15.7 and 17.3
        #endregion

        Assert.Equal(7.5, add.Liters, 0.01);
        Assert.Contains("Va = V0", working, StringComparison.Ordinal);
        Assert.Equal(45, full.Steps.Sum(s => s.Volume.Liters) + 12, 1e-9);
        Assert.Equal(30, full.Result.EthanolContent.Percent, 1e-9);
    }

    [Fact]
    public void WhatIsInTheTank()
    {
        #region WhatIsInTheTank
        // Shaken with water: 100 mL of fuel on 50 mL of water, and the lower layer stands at 76.5 mL.
        EthanolSensor.Measurement shaken = WaterShakeOut.Read(
            Volume.FromMilliliters(100),
            Volume.FromMilliliters(50),
            Volume.FromMilliliters(76.5),
            Volume.FromMilliliters(0.5),
            Temperature.FromDegreesCelsius(20)
        );
        Ratio content = shaken.Content; // 29 %, not the 26.5 % that the layer grew
        Ratio uncertainty = shaken.StandardUncertainty; // 1.1 %

        EthanolSensor.Measurement sensed = EthanolSensor
            .FromUsualScale(Ratio.FromPercent(2))
            .Read(Frequency.FromHertz(79)); // 29 %
        #endregion

        Assert.Equal(29, content.Percent, 0.1);
        Assert.Equal(1.06, uncertainty.Percent, 0.01);
        Assert.Equal(29, sensed.Content.Percent, 1e-9);
    }

    [Fact]
    public void WaterInTheTank()
    {
        #region WaterInTheTank
        Temperature mild = Temperature.FromDegreesCelsius(15);
        Tank.Liquid wet = Tank.Liquid.FromHydrous("hydrous", EthanolWater.FromStrength(Ratio.FromPercent(94)));
        Tank tank = Tank.Empty(Volume.FromLiters(45), mild)
            .Add(wet, Volume.FromLiters(4), mild)
            .Add(Tank.Liquid.FromFuel(StandardFuels.PumpGasoline), Volume.FromLiters(34), mild);

        Finding? finding = tank.PhaseSeparation(Temperature.FromDegreesCelsius(5));
        Severity? severity = finding?.Severity; // Warning: a layer may fall out
        #endregion

        Assert.Equal(Severity.Warning, severity);
    }
}

using UnitsNet;

namespace FuelMath.Examples;

public sealed class EngineExamples
{
    [Fact]
    public void FuelPerCylinder()
    {
        #region FuelPerCylinder
        var efficiency = VolumetricEfficiency.FromSpeeds(
            [RotationalSpeed.FromRevolutionsPerMinute(1000), RotationalSpeed.FromRevolutionsPerMinute(7000)],
            takenAt: new AbsolutePressure(Pressure.FromKilopascals(180)),
            [Ratio.FromPercent(78), Ratio.FromPercent(96)],
            OutsideRange.Refuse,
            new DataSource("Workshop-class", "time-trial car")
        );
        Engine engine = Engine.FourStroke("time-trial car", 4, Volume.FromLiters(2), efficiency);

        var speed = RotationalSpeed.FromRevolutionsPerMinute(6500);
        Mass air = engine.AirMassPerChamberCycle(
            speed,
            new AbsolutePressure(Pressure.FromKilopascals(180)),
            Temperature.FromDegreesCelsius(45)
        );
        Mass fuel = FuelDemand.FromAir(air, StandardFuels.Ethanol.StoichiometricRatio, Lambda.FromRatio(0.82));
        Duration period = engine.InjectionPeriod(speed, pulsesPerCycle: 1); // 18.5 ms, dead time included
        #endregion

        Assert.Equal(0.932, air.Grams, 0.001);
        Assert.Equal(126, fuel.Milligrams, 0.5);
        Assert.Equal(18.46, period.Milliseconds, 0.01);
    }

    [Fact]
    public void FuelFromPower()
    {
        #region FuelFromPower
        // At the crankshaft, with a consumption of the same fuel there: enriched already, so no lambda here.
        MassFlow fuel = FuelDemand.FromCrankPower(
            Power.FromKilowatts(260),
            BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(350)
        ); // 91 kg/h
        #endregion

        Assert.Equal(91, fuel.KilogramsPerHour, 1e-9);
    }
}

using UnitsNet;

namespace FuelMath.Examples;

public sealed class FuelTopicExamples
{
    [Fact]
    public void MixtureMeasures()
    {
        #region MixtureMeasures
        Fuel blend = StandardFuels.E85(StandardFuels.PumpGasoline, Ratio.FromPercent(70));

        // The instrument was never told which fuel burns: it shows lambda times 14.7.
        Mixture mixture = Mixture.FromDisplay(
            blend,
            AirModel.StandardDry,
            AirFuelDisplay.GasolineScale,
            AirFuelRatio.FromMassRatio(12.2)
        );
        Lambda lambda = mixture.Lambda; // 0.830
        AirFuelRatio real = mixture.AirFuelRatio; // 8.8, not 12.2
        Ratio fuelFraction = mixture.FuelFraction; // 10 % of the mixture is fuel
        Mixture onGasoline = mixture.With(StandardFuels.PumpGasoline);
        AirFuelRatio sameLambda = onGasoline.AirFuelRatio; // 12.1
        string working = mixture.ReadingWorking(AirFuelDisplay.GasolineScale).ToString();
        #endregion

        Assert.Equal(0.830, lambda.ToRatio(), 0.0005);
        Assert.Equal(8.8, real.ToMassRatio(), 0.05);
        Assert.Equal(10.2, fuelFraction.Percent, 0.1);
        Assert.Equal(12.1, onGasoline.AirFuelRatio.ToMassRatio(), 0.05);
        Assert.Contains("AFR = lambda * AFRst", working, StringComparison.Ordinal);
    }

    [Fact]
    public void ChangeOfFuel()
    {
        #region ChangeOfFuel
        Fuel blend = StandardFuels.E85(StandardFuels.PumpGasoline, Ratio.FromPercent(70));
        var change = new FuelChange(StandardFuels.PumpGasoline, blend, Temperature.FromDegreesCelsius(30));

        Ratio volume = change.VolumeRatioAtEqualLambda; // 1.31 times the volume for the same air
        Ratio? power = change.VolumeRatioAtEqualPower; // 1.31 times for the same heat
        FuelChange.InjectorHeadroom injector = change.InjectorAtEqualLambda(
            Duration.FromMilliseconds(12.4),
            Duration.FromMilliseconds(0.9),
            Duration.FromMilliseconds(17.1)
        ); // "16.37 ms, duty cycle 95.71 %, headroom 4.291 %"
        FuelChange.PumpHeadroom pump = change.PumpAtEqualLambda(
            VolumeFlow.FromLitersPerHour(140),
            VolumeFlow.FromLitersPerHour(175)
        ); // 184 L/h wanted: the pump falls short
        #endregion

        Assert.Equal(1.31, volume.DecimalFractions, 0.005);
        Assert.Equal(1.31, power!.Value.DecimalFractions, 0.005);
        Assert.Equal(0.96, injector.DutyCycle.DecimalFractions, 0.005);
        Assert.Equal(184, pump.Demand.LitersPerHour, 0.5);
        Assert.False(pump.IsEnough);
    }

    [Fact]
    public void HotFuel()
    {
        #region HotFuel
        VaporMargin tank = VaporMargin.AtPumpInlet(
            StandardFuels.PumpGasoline,
            Temperature.FromDegreesCelsius(45),
            new AbsolutePressure(Pressure.FromKilopascals(84.5)), // on a hill
            Length.FromMeters(-0.15), // the pump sits above the fuel
            Pressure.FromKilopascals(4) // strainer and hose
        );
        Pressure margin = tank.MarginAboveBoiling; // 0.2 kPa: about to boil
        Temperature boils = tank.BoilingTemperature(); // 45.1 °C
        string working = tank.ToWorking().ToString();
        #endregion

        Assert.Equal(0.2, margin.Kilopascals, 0.05);
        Assert.Equal(45.1, boils.DegreesCelsius, 0.05);
        Assert.Contains("NPSH", working, StringComparison.Ordinal);
    }

    [Fact]
    public void PremixUnknown()
    {
        #region PremixUnknown
        // Between one and two liters are left, and nobody knows whether of 50:1 or of 32:1.
        PremixRatio.AdditionBounds bounds = PremixRatio.AdditionBounds.For(
            PremixRatio.FromParts(32),
            Volume.FromLiters(1),
            Volume.FromLiters(2),
            PremixRatio.FromParts(50),
            PremixRatio.FromParts(32),
            Volume.FromLiters(5)
        );
        Volume least = bounds.LeastOil; // 91 mL
        Volume most = bounds.MostOil; // 132 mL
        #endregion

        Assert.Equal(90.9, least.Milliliters, 0.05);
        Assert.Equal(131.9, most.Milliliters, 0.05);
    }

    [Fact]
    public void PropertyWorking()
    {
        #region PropertyWorking
        string working = StandardFuels.PumpGasoline.Density.WorkingAt(Temperature.FromDegreesCelsius(25)).ToString();
        // ...
        // T = 298.15 K (thermodynamic temperature)
        // VCF = exp(...) ... [ASTM-D1250] equation of the volume correction factor
        // rho = 745 * VCF = ... kg/m3
        #endregion

        Assert.Contains("rho = 745 * VCF", working, StringComparison.Ordinal);
    }

    [Fact]
    public void BenchFluid()
    {
        #region BenchFluid
        var certificate = new DataSource("Workshop-class", "certificate of the drum");
        Fuel fluid = CalibrationFluid.DieselBench.ToFuel(
            Density.FromKilogramsPerCubicMeter(825),
            LiquidViscosity.FromPoints(
                [Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(40)],
                [DynamicViscosity.FromMillipascalSeconds(3.2), DynamicViscosity.FromMillipascalSeconds(2.1)],
                certificate
            ),
            certificate
        );
        Density warm = fluid.DensityAt(Temperature.FromDegreesCelsius(40)); // 806.9 kg/m³
        #endregion

        Assert.InRange(warm.KilogramsPerCubicMeter, 805, 810);
        Assert.Equal(825, fluid.DensityAt(Temperature.FromDegreesCelsius(15)).KilogramsPerCubicMeter, 1e-9);
    }
}

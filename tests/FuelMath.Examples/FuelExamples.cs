using UnitsNet;

namespace FuelMath.Examples;

public sealed class FuelExamples
{
    [Fact]
    public void EthanolBlend()
    {
        #region EthanolBlend
        var mixedAt = Temperature.FromDegreesCelsius(18);
        Fuel gasoline = StandardFuels.Gasoline(
            Density.FromKilogramsPerCubicMeter(742),
            new AbsolutePressure(Pressure.FromKilopascals(58))
        );
        Fuel blend = FuelBlend.ByVolume(
            "paddock blend",
            mixedAt,
            [
                new FuelBlend.Part(StandardFuels.Ethanol, Ratio.FromPercent(30)),
                new FuelBlend.Part(gasoline, Ratio.FromPercent(70)),
            ]
        );

        AirFuelRatio stoichiometric = blend.StoichiometricRatio; // 12.84, by mass, with standard dry air
        Density warm = blend.DensityAt(Temperature.FromDegreesCelsius(45)); // 730 kg/m³
        AbsolutePressure vapor = blend.VaporPressureAt(Temperature.FromDegreesCelsius(45)); // 87 kPa absolute, an estimate
        Ratio error = blend.VaporPressure.ErrorAt(Temperature.FromDegreesCelsius(45)); // up to 6 % more
        #endregion

        Assert.Equal(12.84, stoichiometric.ToMassRatio(), 0.01);
        Assert.Equal(730, warm.KilogramsPerCubicMeter, 0.6);
        Assert.Equal(87.4, vapor.AboveVacuum.Kilopascals, 0.1);
        Assert.Equal(5.9, error.Percent, 0.1);
    }

    [Fact]
    public void Premix()
    {
        #region Premix
        var ratio = PremixRatio.FromParts(32); // fuel to oil, by volume
        Volume oil = ratio.OilFor(Volume.FromLiters(5)); // 156 mL into 5 L of fuel

        // Two liters of 50:1 are left, and the tank is to hold five liters of 32:1.
        PremixRatio.Additions topUp = ratio.TopUp(
            Volume.FromLiters(2),
            PremixRatio.FromParts(50),
            Volume.FromLiters(5)
        );
        (Volume addFuel, Volume addOil) = (topUp.Fuel, topUp.Oil); // 2.888 L and 0.112 L

        Fuel mix = ratio.ToFuel(
            "premix 32:1",
            StandardFuels.PumpGasoline,
            StandardFuels.TwoStrokeOil,
            Temperature.FromDegreesCelsius(20)
        );
        #endregion

        Assert.Equal(156.25, oil.Milliliters, 1e-6);
        Assert.Equal(112.3, topUp.Oil.Milliliters, 0.05);
        Assert.Equal(2.888, topUp.Fuel.Liters, 0.0005);
        Assert.True(
            mix.DensityAt(Temperature.FromDegreesCelsius(20))
                > StandardFuels.PumpGasoline.DensityAt(Temperature.FromDegreesCelsius(20))
        );
    }

    [Fact]
    public void OwnFuel()
    {
        #region OwnFuel
        var analysis = new DataSource("Workshop-class", "delivery note of the training stand");
        LiquidDensity density = LiquidDensity.FromGasolineAt15Celsius(Density.FromKilogramsPerCubicMeter(738));
        var fuel = new Fuel(
            "training gasoline",
            ElementalComposition.FromAtomRatios(Ratio.FromDecimalFractions(1.92), Ratio.FromDecimalFractions(0)),
            density,
            LiquidViscosity.FromPoints(
                [Temperature.FromDegreesCelsius(0), Temperature.FromDegreesCelsius(40)],
                [DynamicViscosity.FromMillipascalSeconds(0.52), DynamicViscosity.FromMillipascalSeconds(0.33)],
                analysis
            ),
            LiquidVaporPressure.FromReid(new AbsolutePressure(Pressure.FromKilopascals(55))),
            analysis
        ).WithCautions(["Ignites easily."]);
        AirFuelRatio stoichiometric = fuel.StoichiometricRatio; // 14.67
        #endregion

        // By hand, per carbon atom: 1.48 O2 of 31.998 over 0.2314, for 12.011 + 1.92 x 1.008.
        Assert.Equal(1.48 * 31.998 / 0.2314 / (12.011 + (1.92 * 1.008)), stoichiometric.ToMassRatio(), 0.02);

        Assert.Equal(738, fuel.DensityAt(Temperature.FromDegreesCelsius(15)).KilogramsPerCubicMeter, 1e-9);
    }
}

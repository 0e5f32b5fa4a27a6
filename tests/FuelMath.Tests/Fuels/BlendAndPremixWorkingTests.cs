using FsCheck.Xunit;
using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Fuels.TestFuels;

namespace FuelMath.Tests.Fuels;

/// <summary>Blends and premix show their working; oil in a fill in three systems of units; mixes of mixes.</summary>
[Properties(Arbitrary = [typeof(FuelArbitraries)])]
public sealed class BlendAndPremixWorkingTests
{
    // Tables on bottles for the imperial gallon (value from memory): 5 ounces at 32:1, 3.2 at 50:1, of 160 to the gallon.
    [Theory]
    [InlineData(32, 5)]
    [InlineData(50, 3.2)]
    [Trait("Source", "Common-practice")]
    public void OilFor_OneImperialGallon_IsTheBottlesTable(int parts, double ounces) =>
        Close.Within(1e-9, ounces, PremixRatio.FromParts(parts).OilFor(Volume.FromImperialGallons(1)).ImperialOunces);

    [Property]
    public void StoichiometricWorkingByVolume_AnyBlend_EndsInItsRatio(Recipe recipe, Warmth mixed)
    {
        Fuel blend = FuelBlend.ByVolume("blend", mixed.Temperature, recipe.Parts);
        Working working = FuelBlend.StoichiometricWorkingByVolume(
            mixed.Temperature,
            recipe.Parts,
            AirModel.StandardDry
        );

        // Through the elements or straight through the ratios: a dozen roundings.
        Close.Within(1e-13, blend.StoichiometricRatio.ToMassRatio(), working.Value);
    }

    [Fact]
    public void LowerHeatingValueWorkingByVolume_OfABlend_EndsInItsValue()
    {
        IReadOnlyList<FuelBlend.Part> parts = Two(StandardFuels.Ethanol, 30, StandardFuels.PumpGasoline);

        Close.Within(
            1e-13,
            FuelBlend.ByVolume("blend", Celsius.Of(15), parts).LowerHeatingValue!.Value.JoulesPerKilogram,
            FuelBlend.LowerHeatingValueWorkingByVolume(Celsius.Of(15), parts).Value
        );
        Assert.Contains(
            "qb = (x_1 * rho_1 * q1_1 + x_2 * rho_2 * q1_2) / (x_1 * rho_1 + x_2 * rho_2)",
            FuelBlend.LowerHeatingValueWorkingByVolume(Celsius.Of(15), parts).ToString(),
            StringComparison.Ordinal
        );
    }

    // E85 from the printed ratios 9.0 and 14.7 and densities 789.24 and 745 kg/m³: 9.814, worked apart from this code.
    [Fact]
    [Trait("Source", "Definition")]
    public void MeanByVolume_E85FromPrintedRatios_IsTheOneWorkedByHand()
    {
        Real ratio = FuelMath.Formulas.Combustion.MeanByVolume<Real>(
            [new(0.85), new(0.15)],
            [new(789.24), new(745)],
            [new(9.0), new(14.7)]
        );

        Assert.Equal(9.8139, ratio.Value, 6e-5);
    }

    [Fact]
    public void MeanByVolume_UnequalNumbers_Refuses() =>
        Assert.Equal(
            RefusalCode.Count,
            Refusal
                .Of(
                    Assert.Throws<ArgumentException>(() =>
                        FuelMath.Formulas.Combustion.MeanByVolume<Real>([new(1)], [new(700)], [])
                    )
                )!
                .Code
        );

    [Fact]
    public void Workings_OfPremix_ShowTheBalances()
    {
        PremixRatio ratio = PremixRatio.FromParts(32);
        PremixRatio.Additions topUp = ratio.TopUp(
            Volume.FromLiters(2),
            PremixRatio.FromParts(50),
            Volume.FromLiters(5)
        );

        Assert.Equal(topUp.Oil.CubicMeters, topUp.OilWorking().Value);
        Assert.Equal(topUp.Fuel.CubicMeters, topUp.FuelWorking().Value);
        Assert.Contains("Voil = V * f - V0 * f0", topUp.OilWorking().ToString(), StringComparison.Ordinal);
        Assert.Equal(ratio.OilFor(Volume.FromLiters(5)).CubicMeters, ratio.OilWorkingFor(Volume.FromLiters(5)).Value);
    }

    // Two fuels and two oils that are mixed already are blends: the mix of both is the mix of all four.
    [Fact]
    public void ToFuel_OfMixedFuelsAndOils_IsTheMixOfAll()
    {
        Fuel thick = StandardFuels.TwoStrokeOilOf(
            "thick",
            Density.FromKilogramsPerCubicMeter(890),
            KinematicViscosity.FromCentistokes(90),
            KinematicViscosity.FromCentistokes(11),
            Invented
        );
        Fuel fuels = FuelBlend.ByVolume(
            "fuels",
            Celsius.Of(20),
            Two(StandardFuels.IsoOctane, 60, StandardFuels.PumpGasoline)
        );
        Fuel oils = FuelBlend.ByVolume("oils", Celsius.Of(20), Two(thick, 50, StandardFuels.TwoStrokeOil));

        Fuel mix = PremixRatio.FromParts(24).ToFuel("mix", fuels, oils, Celsius.Of(20));

        Fuel flat = FuelBlend.ByVolume(
            "flat",
            Celsius.Of(20),
            [
                Part(StandardFuels.IsoOctane, 57.6),
                Part(StandardFuels.PumpGasoline, 38.4),
                Part(thick, 2),
                Part(StandardFuels.TwoStrokeOil, 2),
            ]
        );
        Close.Within(
            1e-13,
            flat.DensityAt(Celsius.Of(40)).KilogramsPerCubicMeter,
            mix.DensityAt(Celsius.Of(40)).KilogramsPerCubicMeter
        );
        Close.Within(1e-13, flat.StoichiometricRatio.ToMassRatio(), mix.StoichiometricRatio.ToMassRatio());
    }

    [Fact]
    public void WithHeatCapacity_OfGasoline_TakesTheMeasuredOne()
    {
        LiquidHeatCapacity measured = LiquidHeatCapacity.FromPoints(
            [Celsius.Of(0), Celsius.Of(40)],
            [SpecificEntropy.FromJoulesPerKilogramKelvin(2000), SpecificEntropy.FromJoulesPerKilogramKelvin(2200)],
            Invented
        );
        LiquidBulkModulus modulus = LiquidBulkModulus.FromPoints(
            [Celsius.Of(0), Celsius.Of(40)],
            [Pressure.FromGigapascals(1.1), Pressure.FromGigapascals(0.9)],
            Invented
        );

        Fuel fuel = StandardFuels
            .PumpGasoline.WithHeatCapacity("warm", measured)
            .WithBulkModulus("warm and stiff", modulus);

        Close.Within(1e-12, 2100, fuel.HeatCapacity.At(Celsius.Of(20)).JoulesPerKilogramKelvin);
        Close.Within(1e-12, 1.0, fuel.BulkModulus.BulkModulusAt(Celsius.Of(20)).Gigapascals);
        Assert.Equal(StandardFuels.PumpGasoline.VaporPressureAt(Celsius.Of(20)), fuel.VaporPressureAt(Celsius.Of(20)));
        Assert.Equal("warm and stiff", fuel.Name);
    }

    [Fact]
    public void FuelBlend_TooMuch_SaysByHowMuch() =>
        Words.Says(
            "100 %, 110 %",
            Assert.Throws<ArgumentException>(() =>
                FuelBlend.ByMass("full", [Part(StandardFuels.Ethanol, 60), Part(StandardFuels.Toluene, 50)])
            )
        );

    [Fact]
    public void TankLiquid_WithTooMuchWater_Refuses() =>
        Words.Says(
            "0 %, 20 %, 30 %",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                new Tank.Liquid(StandardFuels.Ethanol, Ratio.FromPercent(70), Ratio.FromPercent(30))
            )
        );
}

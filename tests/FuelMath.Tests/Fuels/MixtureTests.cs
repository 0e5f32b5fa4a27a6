using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Fuels;

[Properties(Arbitrary = [typeof(FuelArbitraries)])]
public sealed class MixtureTests
{
    // A table for tuners (value from memory): lambda 0.85 shows 12.5 on the gasoline scale, which with ethanol is 7.65.
    [Fact]
    [Trait("Source", "Common-practice")]
    public void FromDisplay_EthanolOnTheGasolineScale_IsTheRatioOfEthanol()
    {
        Mixture mixture = Mixture.FromDisplay(
            StandardFuels.Ethanol,
            AirModel.LumpedNitrogen,
            AirFuelDisplay.GasolineScale,
            AirFuelRatio.FromMassRatio(12.5)
        );

        Assert.Equal(0.85, mixture.Lambda.ToRatio(), 0.001);
        Assert.Equal(7.65, mixture.AirFuelRatio.ToMassRatio(), 0.01);
    }

    // Iso-octane at the printed 15.13: fuel fraction 1/16.13 = 0.0620 of the stoichiometric mixture.
    [Fact]
    [Trait("Source", "Heywood-1988")]
    public void FuelFraction_StoichiometricIsoOctane_IsThatOfThePrintedRatio() =>
        Assert.Equal(
            1 / 16.13,
            Mixture
                .FromLambda(StandardFuels.IsoOctane, AirModel.LumpedNitrogen, Lambda.Stoichiometric)
                .FuelFraction.DecimalFractions,
            2e-5
        );

    [Property]
    public void Measures_ThereAndBack_AreTheSameMixture(Fuel fuel, Warmth any)
    {
        // 0.5 to 2: rich to lean.
        Lambda lambda = Lambda.FromRatio(0.5 + (any.Degrees / 40));
        Mixture mixture = Mixture.FromLambda(fuel, AirModel.StandardDry, lambda);

        // A handful of roundings each.
        Close.Within(1e-14, lambda.ToRatio(), mixture.Lambda.ToRatio());
        Same(mixture, Mixture.FromAirFuelRatio(fuel, AirModel.StandardDry, mixture.AirFuelRatio));
        Same(mixture, Mixture.FromEquivalenceRatio(fuel, AirModel.StandardDry, mixture.EquivalenceRatio));
        Same(mixture, Mixture.FromFuelFraction(fuel, AirModel.StandardDry, mixture.FuelFraction));
        Same(
            mixture,
            Mixture.FromDisplay(
                fuel,
                AirModel.StandardDry,
                AirFuelDisplay.GasolineScale,
                mixture.ReadingOn(AirFuelDisplay.GasolineScale)
            )
        );
    }

    [Property]
    public void With_AnotherFuel_KeepsLambdaAndTheReading(Fuel one, Fuel other)
    {
        Mixture mixture = Mixture.FromLambda(one, AirModel.StandardDry, Lambda.FromRatio(0.88));
        Mixture changed = mixture.With(other);

        Close.Within(1e-14, mixture.Lambda.ToRatio(), changed.Lambda.ToRatio());
        Close.Within(
            1e-14,
            mixture.ReadingOn(AirFuelDisplay.GasolineScale).ToMassRatio(),
            changed.ReadingOn(AirFuelDisplay.GasolineScale).ToMassRatio()
        );
    }

    [Fact]
    public void ToWorking_ShowsBothRatios()
    {
        Mixture mixture = Mixture.FromLambda(StandardFuels.Ethanol, AirModel.StandardDry, Lambda.FromRatio(0.8));

        Assert.Equal(mixture.EquivalenceRatio.DecimalFractions, mixture.ToWorking().Value);
        Assert.Contains("phi = AFRst / AFR", mixture.ToWorking().ToString(), StringComparison.Ordinal);
        Assert.Contains(
            "AFR = lambda * AFRst",
            mixture.ReadingWorking(AirFuelDisplay.GasolineScale).ToString(),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.8)]
    public void FromEquivalenceRatio_NotPositive_Refuses(double ratio)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Mixture.FromEquivalenceRatio(StandardFuels.Ethanol, AirModel.StandardDry, Ratio.FromDecimalFractions(ratio))
        );

        Assert.Equal("equivalenceRatio", error.ParamName);
        Assert.StartsWith(
            FormattableString.Invariant($"Must be finite and greater than zero; it was {ratio}"),
            error.Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void FromFuelFraction_AllFuel_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Mixture.FromFuelFraction(StandardFuels.Ethanol, AirModel.StandardDry, Ratio.FromPercent(100))
        );

        Words.Says("0.1 %, 99.9 %, 100 %", error);
    }

    [Fact]
    public void From_DefaultValues_Refuses()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Mixture.FromLambda(StandardFuels.Ethanol, AirModel.StandardDry, default)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Mixture.FromAirFuelRatio(StandardFuels.Ethanol, AirModel.StandardDry, default)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => AirFuelDisplay.GasolineScale.LambdaOf(default));
    }

    [Fact]
    public void AirFuelDisplay_OutsideItsRange_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new AirFuelDisplay(AirFuelRatio.FromMassRatio(0.5))
        );

        Words.Says("1, 40, 0.5", error);
        Assert.Equal("14.7 at lambda 1", AirFuelDisplay.GasolineScale.ToString());
    }

    private static void Same(Mixture one, Mixture other) =>
        Close.Within(1e-13, one.AirFuelRatio.ToMassRatio(), other.AirFuelRatio.ToMassRatio());
}

using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Fuels;

[Properties(Arbitrary = [typeof(FuelArbitraries)])]
public sealed class EthanolWaterTests
{
    // The general formula evaluated apart from this code; three decimals, half a unit of the last one and a little.
    [Theory]
    [InlineData(0, 0, 999.837)]
    [InlineData(0, 15, 999.096)]
    [InlineData(0, 40, 992.213)]
    [InlineData(0.05, 20, 989.378)]
    [InlineData(0.1, 15, 983.031)]
    [InlineData(0.1, 40, 974.778)]
    [InlineData(0.2, 0, 975.569)]
    [InlineData(0.2, 25, 966.351)]
    [InlineData(0.5, 0, 929.172)]
    [InlineData(0.5, 15, 917.711)]
    [InlineData(0.5, 30, 905.712)]
    [InlineData(0.8, 20, 843.386)]
    [InlineData(0.8, 40, 825.683)]
    [InlineData(0.9, 0, 834.955)]
    [InlineData(0.9, 25, 813.527)]
    [InlineData(0.95, 10, 812.739)]
    [InlineData(0.95, 30, 795.465)]
    [InlineData(0.98, 15, 799.676)]
    [InlineData(0.99, 20, 792.347)]
    [InlineData(1, 15, 793.506)]
    [InlineData(1, 40, 771.932)]
    [Trait("Source", "OIML-R22")]
    public void DensityAt_AnyMixture_IsTheSeparateEvaluation(double massFraction, double celsius, double density) =>
        Assert.Equal(density, Of(massFraction).DensityAt(Celsius.Of(celsius)).KilogramsPerCubicMeter, 6e-4);

    // Printed in a second text with two and one decimals: 96 % by volume is 93.84 % by mass, 70 % is 62.4 %.
    [Theory]
    [InlineData(96, 93.84, 0.005)]
    [InlineData(70, 62.4, 0.05)]
    [Trait("Source", "OIML-R22")]
    public void FromStrength_UsualStrengths_HaveThePrintedMassFractions(double strength, double mass, double half) =>
        Assert.Equal(mass, EthanolWater.FromStrength(Ratio.FromPercent(strength)).MassFraction.Percent, half);

    // A demonstration in many schoolbooks (value from memory): 50 mL of ethanol and 50 mL of water make about 96 mL.
    [Fact]
    [Trait("Source", "Common-practice")]
    public void ContractionAt_EqualVolumes_IsThatOfTheSchoolbook()
    {
        EthanolWater half = EthanolWater.FromVolumes(
            Volume.FromMilliliters(50),
            Volume.FromMilliliters(50),
            Celsius.Of(20)
        );

        Assert.Equal(96.5, 100 * (1 - half.ContractionAt(Celsius.Of(20)).DecimalFractions), 0.5);
    }

    [Property]
    public void FromStrength_ThereAndBack_IsTheSame(Warmth any)
    {
        Ratio strength = Ratio.FromPercent(any.Degrees / 60 * 100);

        Close.WithinOf(100, 1e-12, strength.Percent, EthanolWater.FromStrength(strength).Strength.Percent);
    }

    [Property]
    public void ContractionAt_AnyMixture_IsNotNegative(Warmth any, Warmth at)
    {
        Ratio contraction = Of(any.Degrees / 60).ContractionAt(Celsius.Of(at.Degrees / 1.5));

        Assert.InRange(contraction.DecimalFractions, -1e-15, 0.04);
    }

    [Fact]
    public void ContractionAt_PureParts_IsNone()
    {
        Assert.Equal(0, Of(0).ContractionAt(Celsius.Of(20)).DecimalFractions, 1e-15);
        Assert.Equal(0, Of(1).ContractionAt(Celsius.Of(20)).DecimalFractions, 1e-15);
    }

    [Fact]
    public void ToFuel_WithoutWater_IsEthanol()
    {
        Fuel same = Of(1).ToFuel("dry");

        Close.Within(
            1e-12,
            StandardFuels.Ethanol.StoichiometricRatio.ToMassRatio(),
            same.StoichiometricRatio.ToMassRatio()
        );
        Close.Within(
            1e-10,
            StandardFuels.Ethanol.DensityAt(Celsius.Of(20)).KilogramsPerCubicMeter,
            same.DensityAt(Celsius.Of(20)).KilogramsPerCubicMeter
        );
        Assert.Equal(
            StandardFuels.Ethanol.LowerHeatingValue!.Value.JoulesPerKilogram,
            same.LowerHeatingValue!.Value.JoulesPerKilogram
        );
    }

    // Water takes no air: the ratio falls with its mass. 93.5 % of 9.004 is 8.419.
    [Fact]
    [Trait("Source", "Definition")]
    public void ToFuel_WithWater_NeedsLessAirByItsMass() =>
        Close.Within(
            1e-12,
            0.935 * StandardFuels.Ethanol.StoichiometricRatio.ToMassRatio(),
            Of(0.935).ToFuel("hydrous").StoichiometricRatio.ToMassRatio()
        );

    [Fact]
    public void ToFuel_Viscosity_IsNotKnownAndSaysWhy()
    {
        Fuel hydrous = Of(0.94).ToFuel("hydrous");
        Fuel blend = FuelBlend.ByMass("mix", TestFuels.Two(hydrous, 20, StandardFuels.PumpGasoline));

        var unknown = Assert.Throws<UnknownPropertyException>(() => hydrous.ViscosityAt(Celsius.Of(20)));
        Assert.Equal(
            (RefusalCode.PropertyUnknown, "Viscosity", "hydrous"),
            (Refusal.Of(unknown)!.Code, Refusal.Of(unknown)!.What, Refusal.Of(unknown)!.Part)
        );
        Assert.Contains("ethanol with water is thicker than either", unknown.Reason, StringComparison.Ordinal);
        Assert.StartsWith("that of 'hydrous' is not, because", blend.Viscosity.ReasonUnknown);
        Assert.True(blend.DensityAt(Celsius.Of(20)) > StandardFuels.PumpGasoline.DensityAt(Celsius.Of(20)));
    }

    [Fact]
    public void ToFuel_MostlyWater_Refuses() =>
        Assert.Equal(
            "Must hold 80 % of ethanol or more by mass to count as a fuel; it holds 40 %.",
            Assert.Throws<InvalidOperationException>(() => Of(0.4).ToFuel("vodka")).Message
        );

    [Fact]
    public void DensityAt_TooHot_Refuses() =>
        Words.Says(
            "0 °C, 40 °C, 41 °C",
            Assert.Throws<ArgumentOutOfRangeException>(() => Of(0.5).DensityAt(Celsius.Of(41)))
        );

    [Fact]
    public void FromVolumes_Nothing_Refuses() =>
        Words.Says(
            "0 ml",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                EthanolWater.FromVolumes(Volume.FromMilliliters(0), Volume.FromMilliliters(0), Celsius.Of(20))
            )
        );

    [Theory]
    [InlineData(-1)]
    [InlineData(101)]
    public void FromStrength_Outside_Refuses(double percent) =>
        Words.Says(
            $"0 %, 100 %, {percent} %",
            Assert.Throws<ArgumentOutOfRangeException>(() => EthanolWater.FromStrength(Ratio.FromPercent(percent)))
        );

    [Fact]
    public void DensityWorkingAt_EndsInTheDensity()
    {
        EthanolWater mixture = Of(0.95);

        Assert.Equal(
            mixture.DensityAt(Celsius.Of(25)).KilogramsPerCubicMeter,
            mixture.DensityWorkingAt(Celsius.Of(25)).Value
        );
        Assert.Contains("[OIML-R22]", mixture.DensityWorkingAt(Celsius.Of(25)).ToString(), StringComparison.Ordinal);
    }

    private static EthanolWater Of(double massFraction) =>
        EthanolWater.FromMassFraction(Ratio.FromDecimalFractions(massFraction));
}

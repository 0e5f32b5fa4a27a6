using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Fuels;

/// <summary>What oil in the fuel does to lambda.</summary>
public sealed class PremixRatioMixtureEffectTests
{
    private static readonly Temperature Twenty = Workshop.Celsius(20);

    /// <summary>
    /// Worked from densities and ratios alone: lambda is air over fuel mass and stoichiometric ratio, and the mass of a pulse
    /// goes with the root of density.
    /// </summary>
    [Theory]
    [InlineData(25)]
    [InlineData(50)]
    [InlineData(100)]
    public void Factors_OfAPremix_FollowDensityAndRatio(int parts)
    {
        Fuel gasoline = StandardFuels.PumpGasoline;
        Fuel premix = PremixRatio.FromParts(parts).ToFuel("premix", gasoline, StandardFuels.TwoStrokeOil, Twenty);
        double mass = Math.Sqrt(
            premix.DensityAt(Twenty).KilogramsPerCubicMeter / gasoline.DensityAt(Twenty).KilogramsPerCubicMeter
        );
        double told = gasoline.StoichiometricRatio.ToMassRatio();

        var effect = new PremixRatio.MixtureEffect(gasoline, premix, Twenty);

        Assert.Equal(
            told / premix.StoichiometricRatio.ToMassRatio() / mass,
            effect.LambdaFactorIfOilBurns.DecimalFractions,
            1e-9
        );
        Assert.Equal(
            told / premix.StoichiometricRatioIfOilUnburned!.Value.ToMassRatio() / mass,
            effect.LambdaFactorIfOilUnburned.DecimalFractions,
            1e-9
        );
        Assert.True(effect.LambdaFactorIfOilUnburned.DecimalFractions > effect.LambdaFactorIfOilBurns.DecimalFractions);
    }

    [Fact]
    public void Factors_WithoutOil_AreOne()
    {
        var effect = new PremixRatio.MixtureEffect(StandardFuels.PumpGasoline, StandardFuels.PumpGasoline, Twenty);

        Assert.Equal(1, effect.LambdaFactorIfOilBurns.DecimalFractions, 1e-12);
        Assert.Equal(1, effect.LambdaFactorIfOilUnburned.DecimalFractions, 1e-12);
    }
}

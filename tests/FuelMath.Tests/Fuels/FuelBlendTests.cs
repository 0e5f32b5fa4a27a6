using FsCheck.Xunit;
using UnitsNet;
using static FuelMath.Tests.Fuels.TestFuels;

namespace FuelMath.Tests.Fuels;

[Properties(Arbitrary = [typeof(FuelArbitraries)])]
public sealed class FuelBlendTests
{
    // Densities 789.24 and 745 kg/m³: a volume fraction of 10 % of ethanol is 10.5313 % by mass, 85 % is 85.7207 %, worked
    // apart from this code. The mass fraction is read back from the oxygen: 34.7284 % of ethanol is oxygen.
    [Theory]
    [InlineData(10, 10.5313)]
    [InlineData(85, 85.7207)]
    [Trait("Source", "Definition")]
    public void ByVolume_EthanolInGasoline_PassesThroughMass(double percentByVolume, double percentByMass)
    {
        Fuel ethanol = WithDensity(StandardFuels.Ethanol, 789.24);
        Fuel gasoline = WithDensity(StandardFuels.PumpGasoline, 745);

        Fuel blend = FuelBlend.ByVolume("blend", Celsius.Of(20), Two(ethanol, percentByVolume, gasoline));

        double oxygen = blend.Composition.Oxygen.Percent / ethanol.Composition.Oxygen.DecimalFractions;
        Assert.Equal(percentByMass, oxygen, 6e-5);
    }

    // Commonly quoted 14.1 and 9.8, for a gasoline of 14.7; ours is 14.6, and the air model moves 0.7 %.
    [Theory]
    [InlineData(10, 14.1)]
    [InlineData(85, 9.8)]
    [Trait("Source", "Common-practice")]
    public void StoichiometricRatio_EthanolBlends_AreTheUsualOnes(double percent, double ratio) =>
        Close.Within(
            0.01,
            ratio,
            FuelBlend
                .ByVolume("blend", Celsius.Of(15), Two(StandardFuels.Ethanol, percent, StandardFuels.PumpGasoline))
                .StoichiometricRatio.ToMassRatio()
        );

    // The index at 5 and 20 mm²/s with sixty and forty percent by mass, worked by hand: ln ln 5.8 = 0.56408 and
    // ln ln 20.8 = 1.11035; mean 0.78259; exp exp = 8.9085; less 0.8 is 8.1085.
    [Fact]
    [Trait("Source", "Maples-2000")]
    public void ViscosityAt_TwoOils_IsTheBlendingIndexByHand()
    {
        Fuel thin = Oil(5);
        Fuel thick = Oil(20);

        Fuel blend = FuelBlend.ByMass("blend", Two(thin, 60, thick));

        double kinematic =
            blend.ViscosityAt(Celsius.Of(40)).PascalSeconds
            / blend.DensityAt(Celsius.Of(40)).KilogramsPerCubicMeter
            * 1e6;
        Close.Within(1e-4, 8.1085, kinematic);
    }

    [Property]
    public void ByVolume_InOtherOrder_IsTheSameFuel(Recipe recipe, Warmth mixed, Warmth at)
    {
        Fuel one = FuelBlend.ByVolume("one", mixed.Temperature, recipe.Parts);
        Fuel other = FuelBlend.ByVolume("other", mixed.Temperature, recipe.Backwards);

        Same(one, other, at);
    }

    // The masses of the parts, from their volumes and densities, are the mass of the blend in its volume, because volumes
    // add at the temperature of mixing.
    [Property]
    public void ByVolume_AtTheTemperatureOfMixing_KeepsMassAndVolume(Recipe recipe, Warmth mixed)
    {
        Fuel blend = FuelBlend.ByVolume("blend", mixed.Temperature, recipe.Parts);

        double mass = recipe
            .Fuels.Zip(recipe.Percents, (f, p) => p / 100.0 * f.DensityAt(mixed.Temperature).KilogramsPerCubicMeter)
            .Sum();
        Close.Within(1e-14, mass, blend.DensityAt(mixed.Temperature).KilogramsPerCubicMeter);
    }

    [Property]
    public void ByMass_Elements_AreKept(Recipe recipe)
    {
        Fuel blend = FuelBlend.ByMass("blend", recipe.Parts);

        double carbon = recipe.Fuels.Zip(recipe.Percents, (f, p) => p * f.Composition.Carbon.DecimalFractions).Sum();
        Assert.Equal(carbon, blend.Composition.Carbon.Percent, 1e-11);
    }

    [Property]
    public void ByMass_StoichiometricRatio_IsTheMeanByMass(Recipe recipe)
    {
        Fuel blend = FuelBlend.ByMass("blend", recipe.Parts);

        double mean = recipe
            .Fuels.Zip(recipe.Percents, (f, p) => p / 100.0 * f.StoichiometricRatio.ToMassRatio())
            .Sum();
        double ratio = blend.StoichiometricRatio.ToMassRatio();
        Close.Within(1e-13, mean, ratio);
        Assert.InRange(
            ratio,
            recipe.Fuels.Min(f => f.StoichiometricRatio.ToMassRatio()) * (1 - 1e-13),
            recipe.Fuels.Max(f => f.StoichiometricRatio.ToMassRatio()) * (1 + 1e-13)
        );
    }

    [Property]
    public void ByMass_DensityAndViscosity_LieBetweenTheParts(Recipe recipe, Warmth at)
    {
        Fuel blend = FuelBlend.ByMass("blend", recipe.Parts);

        Between(
            recipe.Fuels.Select(f => f.DensityAt(at.Temperature).KilogramsPerCubicMeter),
            blend.DensityAt(at.Temperature).KilogramsPerCubicMeter
        );
        Between(recipe.Fuels.Select(f => Kinematic(f, at)), Kinematic(blend, at));
    }

    // Not the same object: an equal fuel built again, so that the rules of mixing are used.
    [Property]
    public void ByVolume_AFuelWithAnEqualOne_ChangesNothing(Gasoline gasoline, Warmth mixed, Warmth at)
    {
        Fuel one = gasoline.ToFuel();
        Fuel twin = gasoline.ToFuel();

        Same(one, FuelBlend.ByVolume("twins", mixed.Temperature, Two(one, 30, twin)), at);
    }

    [Fact]
    public void ByVolume_AFuelWithItself_KeepsItsVaporPressure()
    {
        Fuel same = FuelBlend.ByVolume("same", Celsius.Of(15), Two(StandardFuels.NHeptane, 40, StandardFuels.NHeptane));

        Assert.Equal(StandardFuels.NHeptane.VaporPressureAt(Celsius.Of(30)), same.VaporPressureAt(Celsius.Of(30)));
    }

    // A blend of blends is the blend of all: volumes of the inner one add up at the temperature of mixing.
    [Property]
    public void ByVolume_OfABlend_IsTheBlendOfAll(Warmth mixed, Warmth at)
    {
        Fuel half = FuelBlend.ByVolume(
            "half",
            mixed.Temperature,
            Two(StandardFuels.IsoOctane, 50, StandardFuels.Toluene)
        );
        Fuel nested = FuelBlend.ByVolume("nested", mixed.Temperature, Two(half, 40, StandardFuels.NHeptane));
        Fuel flat = FuelBlend.ByVolume(
            "flat",
            mixed.Temperature,
            [Part(StandardFuels.IsoOctane, 20), Part(StandardFuels.Toluene, 20), Part(StandardFuels.NHeptane, 60)]
        );

        Same(flat, nested, at);
    }

    [Fact]
    public void LowerHeatingValue_OfABlend_IsTheMeanByMass()
    {
        Fuel blend = FuelBlend.ByMass("blend", Two(StandardFuels.Ethanol, 85, StandardFuels.PumpGasoline));

        // 0.85 x 26.95 + 0.15 x 43.44 MJ/kg.
        Close.Within(1e-4, 29.42, blend.LowerHeatingValue!.Value.MegajoulesPerKilogram);
    }

    private static void Same(Fuel one, Fuel other, Warmth at)
    {
        // A handful of roundings each; the logarithm of a logarithm lifts them by 1/(nu ln nu) to some hundred.
        Close.Within(
            1e-14,
            one.DensityAt(at.Temperature).KilogramsPerCubicMeter,
            other.DensityAt(at.Temperature).KilogramsPerCubicMeter
        );
        Close.Within(
            1e-12,
            one.ViscosityAt(at.Temperature).PascalSeconds,
            other.ViscosityAt(at.Temperature).PascalSeconds
        );
        Close.Within(1e-13, one.StoichiometricRatio.ToMassRatio(), other.StoichiometricRatio.ToMassRatio());
    }

    private static void Between(IEnumerable<double> parts, double blend)
    {
        double[] all = [.. parts];
        Assert.InRange(blend, all.Min() * (1 - 1e-12), all.Max() * (1 + 1e-12));
    }

    private static double Kinematic(Fuel fuel, Warmth at) =>
        fuel.ViscosityAt(at.Temperature).PascalSeconds / fuel.DensityAt(at.Temperature).KilogramsPerCubicMeter;
}

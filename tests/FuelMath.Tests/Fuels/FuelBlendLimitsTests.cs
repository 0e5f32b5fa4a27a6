using UnitsNet;
using static FuelMath.Tests.Fuels.TestFuels;

namespace FuelMath.Tests.Fuels;

/// <summary>What a blend does not know, labels or refuses.</summary>
public sealed class FuelBlendLimitsTests
{
    [Fact]
    public void LowerHeatingValue_WithAPartOfUnknown_IsNotKnownAndSaysSo()
    {
        Fuel bench = WithoutHeatingValue("bench fluid", StandardFuels.NHeptane);
        Fuel mix = FuelBlend.ByMass("mix", Two(bench, 3, StandardFuels.PumpGasoline));

        Assert.Null(mix.LowerHeatingValue);
        var error = Assert.Throws<UnknownPropertyException>(() =>
            new FuelChange(StandardFuels.PumpGasoline, mix, Celsius.Of(20)).WorkingAtEqualPower()
        );
        Assert.Equal("The lower heating value of 'mix' is not known.", error.Message);
    }

    [Fact]
    public void VaporPressureAt_OfAMethanolBlend_RefusesAndSaysWhy()
    {
        Assert.False(TestFuels.MethanolBlend.VaporPressure.IsKnown);
        var error = Assert.Throws<UnknownPropertyException>(() =>
            TestFuels.MethanolBlend.VaporPressureAt(Celsius.Of(20))
        );
        Assert.Equal(
            "The vapor pressure of fuel 'M10' is not known: a part of it holds oxygen and is not ethanol in gasoline, and alcohol "
                + "lifts the vapor pressure of a blend above that of both parts. Measure the blend's.",
            error.Message
        );
    }

    [Fact]
    public void VaporPressureAt_OfAPureSubstanceInGasoline_RefusesAndSaysWhy()
    {
        Fuel blend = FuelBlend.ByMass("mix", Two(StandardFuels.IsoOctane, 50, StandardFuels.PumpGasoline));

        var error = Assert.Throws<UnknownPropertyException>(() => blend.VaporPressureAt(Celsius.Of(20)));
        Assert.Contains("no rule with a source", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Estimates_OfABlend_NameTheRules()
    {
        Fuel blend = FuelBlend.ByMass("mix", Two(StandardFuels.IsoOctane, 50, StandardFuels.NHeptane));

        Assert.Contains(blend.Estimates, e => e.StartsWith("Density of the blend", StringComparison.Ordinal));
        Assert.Contains(blend.Estimates, e => e.StartsWith("Viscosity of the blend", StringComparison.Ordinal));
    }

    // What is an estimate about the gasoline's vapor pressure is none about a blend that has none.
    [Fact]
    public void Estimates_OfAMethanolBlend_LeaveOutTheVaporPressure()
    {
        Fuel blend = TestFuels.MethanolBlend;

        Assert.Contains(blend.Estimates, e => e.StartsWith("Composition of gasoline", StringComparison.Ordinal));
        Assert.Contains(blend.Estimates, e => e.StartsWith("Viscosity of gasoline", StringComparison.Ordinal));
        Assert.DoesNotContain(blend.Estimates, e => e.StartsWith("Vapor pressure", StringComparison.Ordinal));
    }

    [Fact]
    public void Cautions_OfABlend_AreThoseOfItsParts()
    {
        Fuel blend = FuelBlend.ByMass("mix", Two(StandardFuels.Methanol, 5, StandardFuels.PumpGasoline));

        Assert.Superset(new HashSet<string>(StandardFuels.Methanol.Cautions), new HashSet<string>(blend.Cautions));
    }

    [Fact]
    public void Range_OfABlend_IsWhereAllPartsAreKnown()
    {
        Fuel blend = FuelBlend.ByMass("mix", Two(StandardFuels.Ethanol, 50, StandardFuels.PumpGasoline));

        Assert.Equal(-18, blend.Density.LowestTemperature!.Value.DegreesCelsius, 1e-9);
        Assert.Equal(90, blend.Density.HighestTemperature!.Value.DegreesCelsius, 1e-9);
        Assert.Throws<OutsideTableException>(() => blend.DensityAt(Celsius.Of(95)));
    }

    [Fact]
    public void ByMass_PartsThatAreNowhereKnownTogether_Refuses()
    {
        Fuel cold = WithDensityBetween(StandardFuels.IsoOctane, -30, -20);
        Fuel hot = WithDensityBetween(StandardFuels.IsoOctane, 50, 60);

        var error = Assert.Throws<ArgumentException>(() => FuelBlend.ByMass("mix", Two(cold, 50, hot)));
        Assert.Equal(
            "Density of the blend is known nowhere: that of one part begins at 50 °C, that of another ends at -20 °C.",
            error.Message
        );
    }

    [Fact]
    public void ViscosityAt_PartTooThinForTheRule_RefusesAndNamesIt()
    {
        Fuel thin = WithViscosity("thin", StandardFuels.IsoOctane, 0.12);
        Fuel blend = FuelBlend.ByMass("mix", Two(thin, 50, StandardFuels.NHeptane));

        var error = Assert.Throws<UnknownPropertyException>(() => blend.ViscosityAt(Celsius.Of(20)));
        Assert.Equal(
            "The viscosity of the blend is not known: that of 'thin' is too low for the blending rule, "
                + "which needs more than 0.2 mm²/s of every part.",
            error.Message
        );
    }

    [Fact]
    public void ByVolume_FractionsThatMissOne_SaysTheirSum()
    {
        var error = Assert.Throws<ArgumentException>(() =>
            FuelBlend.ByVolume(
                "short",
                Celsius.Of(15),
                [Part(StandardFuels.Ethanol, 85), Part(StandardFuels.PumpGasoline, 10)]
            )
        );

        Words.Says("100 %, 95 %, 5 %", error);
    }

    [Fact]
    public void ByVolume_NoParts_Refuses()
    {
        var error = Assert.Throws<ArgumentException>(() => FuelBlend.ByVolume("none", Celsius.Of(15), []));

        Words.Says("100 %, 0 %", error);
    }

    [Fact]
    public void ByVolume_MixedTooHot_Refuses() =>
        Assert.Throws<OutsideTableException>(() =>
            FuelBlend.ByVolume("hot", Celsius.Of(120), Two(StandardFuels.Ethanol, 50, StandardFuels.PumpGasoline))
        );

    [Theory]
    [InlineData(-1)]
    [InlineData(101)]
    public void FuelPart_OutsideOne_Refuses(double percent)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Part(StandardFuels.Ethanol, percent));

        Words.Says($"0 %, 100 %, {percent} %", error);
    }

    [Fact]
    public void ByMass_PartOfNothing_IsLeftOut()
    {
        Fuel blend = FuelBlend.ByMass("all", Two(StandardFuels.TwoStrokeOil, 0, StandardFuels.NHeptane));

        Assert.True(blend.VaporPressure.IsKnown);
        Assert.Empty(blend.Estimates);
    }

    // A gasoline that nobody measured may boil earlier than the other one: it is no oil.
    [Fact]
    public void VaporPressureAt_WithALittleOfAnUnmeasuredGasoline_Refuses()
    {
        Fuel unmeasured = new(
            "unmeasured",
            StandardFuels.PumpGasoline.Composition,
            StandardFuels.PumpGasoline.Density,
            StandardFuels.PumpGasoline.Viscosity,
            LiquidVaporPressure.Unknown("not measured."),
            null,
            Invented,
            [],
            []
        );

        Assert.False(FuelBlend.ByMass("mix", Two(unmeasured, 5, StandardFuels.PumpGasoline)).VaporPressure.IsKnown);
        Assert.True(
            FuelBlend
                .ByMass("mix", Two(StandardFuels.TwoStrokeOil, 5, StandardFuels.PumpGasoline))
                .VaporPressure.IsKnown
        );
        Assert.False(
            FuelBlend
                .ByMass("mix", Two(StandardFuels.TwoStrokeOil, 20, StandardFuels.PumpGasoline))
                .VaporPressure.IsKnown
        );
    }
}

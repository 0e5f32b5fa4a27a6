using FsCheck.Xunit;
using FuelMath.Tests.Fuels;
using UnitsNet;

namespace FuelMath.Tests.Tanks;

[Properties(Arbitrary = [typeof(FuelArbitraries)])]
public sealed class TankTests
{
    private static readonly Temperature Reference = Celsius.Of(15);
    private static readonly Tank.Liquid Gasoline = Tank.Liquid.FromFuel(StandardFuels.PumpGasoline);
    private static readonly Tank.Liquid Ethanol = Tank.Liquid.PureEthanol;
    private static readonly Tank.Liquid E85 = Tank.Liquid.FromGasoline("E85", StandardFuels.PumpGasoline, Percent(80));

    // By hand at one temperature: 20 L of gasoline and V of 80 % to 40 %: V 0.8 = 0.4 (20 + V), V = 20.
    [Fact]
    [Trait("Source", "Definition")]
    public void Reach_AtOneTemperature_IsTheBalanceByHand()
    {
        Tank.FillPlan fill = Holding(20, Gasoline).Reach(Percent(40), E85, Reference);

        Tank.FillStep step = Assert.Single(fill.Steps);
        Close.Within(1e-12, 20, step.Volume.Liters);
        Close.Within(1e-12, 40, fill.Result.EthanolContent.Percent);
        Close.Within(1e-12, 40, fill.Result.Held.Liters);
    }

    // By hand: 50 L of 30 % from 10 L of 10 %, ethanol and gasoline: ethanol 15 - 1 = 14 L, gasoline 50 - 10 - 14 = 26 L.
    [Fact]
    [Trait("Source", "Definition")]
    public void FillTo_TwoLiquids_IsTheBalanceByHand()
    {
        Tank tank = Holding(9, Gasoline).Add(Ethanol, Volume.FromLiters(1), Reference);

        Tank.FillPlan fill = tank.FillTo(Percent(30), Volume.FromLiters(50), Gasoline, Ethanol, Reference);

        Close.Within(1e-12, 26, fill.Steps[0].Volume.Liters);
        Close.Within(1e-12, 14, fill.Steps[1].Volume.Liters);
        Close.Within(1e-12, 100 / 36.0, fill.Steps[0].After.EthanolContent.Percent);
        Close.Within(1e-12, 30, fill.Result.EthanolContent.Percent);
    }

    // A rule of thumb of the trade (value from memory): one part of E85 at 85 % into two of E10 makes E35.
    [Fact]
    [Trait("Source", "Common-practice")]
    public void Add_OnePartInTwo_IsTheUsualRule()
    {
        Tank.Liquid strong = Tank.Liquid.FromGasoline("85 %", StandardFuels.PumpGasoline, Percent(85));
        Tank.Liquid weak = Tank.Liquid.FromGasoline("10 %", StandardFuels.PumpGasoline, Percent(10));

        Tank tank = Holding(20, weak).Add(strong, Volume.FromLiters(10), Reference);

        Assert.Equal(35, tank.EthanolContent.Percent, 1e-9);
    }

    [Property]
    public void Reach_AtAnyTemperatures_ReachesTheTargetAndKeepsMass(Warmth held, Warmth measured, Warmth wanted)
    {
        Tank tank = Tank.Empty(Volume.FromLiters(5000), held.Temperature)
            .Add(Gasoline, Volume.FromLiters(20), measured.Temperature);
        Ratio target = Percent(1 + (wanted.Degrees * 1.2));

        Tank.FillPlan fill = tank.Reach(target, E85, measured.Temperature);

        // A dozen roundings, divided by how near the target is to what is added.
        Close.Within(1e-11, target.Percent, fill.Result.EthanolContent.Percent);
        double added =
            fill.Steps[0].Volume.CubicMeters * E85.Fuel.DensityAt(measured.Temperature).KilogramsPerCubicMeter;
        Close.Within(1e-12, tank.Mass.Kilograms + added, fill.Result.Mass.Kilograms);
    }

    [Property]
    public void FillTo_AtAnyTemperatures_ReachesVolumeAndTarget(Warmth held, Warmth measured, Warmth wanted)
    {
        Tank tank = Tank.Empty(Volume.FromLiters(60), held.Temperature)
            .Add(Gasoline, Volume.FromLiters(10), measured.Temperature);
        Ratio target = Percent(5 + (0.95 * wanted.Degrees));

        Tank.FillPlan fill = tank.FillTo(target, Volume.FromLiters(55), Gasoline, E85, measured.Temperature);

        Close.Within(1e-11, target.Percent, fill.Result.EthanolContent.Percent);
        Close.Within(1e-12, 55, fill.Result.Held.Liters);
    }

    [Property]
    public void FillTo_InTheOtherOrder_HasTheSameVolumes(Warmth held, Warmth wanted)
    {
        Tank tank = Tank.Empty(Volume.FromLiters(60), held.Temperature).Add(Gasoline, Volume.FromLiters(10), Reference);
        Ratio target = Percent(5 + (0.95 * wanted.Degrees));

        Tank.FillPlan one = tank.FillTo(target, Volume.FromLiters(55), Gasoline, E85, Reference);
        Tank.FillPlan other = tank.FillTo(target, Volume.FromLiters(55), E85, Gasoline, Reference);

        Close.WithinOf(55, 1e-12, one.Steps[0].Volume.Liters, other.Steps[1].Volume.Liters);
        Close.WithinOf(55, 1e-12, one.Steps[1].Volume.Liters, other.Steps[0].Volume.Liters);
    }

    [Property]
    public void Drain_SomeOfTheWhole_KeepsTheContent(Warmth any)
    {
        Tank tank = Holding(20, Gasoline).Add(E85, Volume.FromLiters(10), Reference);

        Tank less = tank.Drain(Volume.FromLiters(any.Degrees / 61 * 30));

        Close.Within(1e-12, tank.EthanolContent.Percent, less.EthanolContent.Percent);
        Close.Within(1e-12, 30 - (any.Degrees / 61 * 30), less.Held.Liters);
    }

    [Fact]
    public void ToFuel_OfWhatItHolds_IsTheBlendByVolume()
    {
        Tank tank = Holding(70, Gasoline).Add(Ethanol, Volume.FromLiters(30), Reference);
        Fuel blend = FuelBlend.ByVolume(
            "blend",
            Reference,
            TestFuels.Two(StandardFuels.Ethanol, 30, StandardFuels.PumpGasoline)
        );

        Close.Within(
            1e-12,
            blend.StoichiometricRatio.ToMassRatio(),
            tank.ToFuel("tank").StoichiometricRatio.ToMassRatio()
        );
        Close.Within(1e-12, 30, tank.ToLiquid("tank").EthanolContent.Percent);
    }

    [Fact]
    public void Reach_WhatItHolds_AddsNothing() =>
        Assert.Equal(0, Holding(20, E85).Reach(Percent(80), Ethanol, Reference).Steps[0].Volume.Liters, 1e-9);

    // Nothing over nothing is no working.
    [Fact]
    public void ToWorking_WhenNothingIsToBeAdded_IsNothing() =>
        Assert.Equal(0, Holding(20, E85).Reach(Percent(80), E85, Reference).ToWorking().Value);

    // Two cans that hardly differ, each of which expands in its own way: refused rather than guessed.
    [Fact]
    public void FillTo_TwoNearlyAlike_ReachesTheTargetOrRefuses()
    {
        Tank.Liquid twin = Tank.Liquid.FromGasoline("twin", StandardFuels.IsoOctane, Percent(80.0001));
        Tank hot = Tank.Empty(Volume.FromLiters(100), Celsius.Of(60)).Add(Gasoline, Volume.FromLiters(20), Reference);
        for (double target = 50; target < 70; target += 0.0005)
        {
            try
            {
                Tank.FillPlan fill = hot.FillTo(Percent(target), Volume.FromLiters(90), E85, twin, Reference);
                Assert.Equal(target, fill.Result.EthanolContent.Percent, 1e-3);
            }
            catch (ArgumentException error)
            {
                Assert.StartsWith("Must ", error.Message);
            }
        }
    }

    [Fact]
    public void Reach_BeyondWhatIsAdded_SaysWhatCanBeReached()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Holding(20, Gasoline).Reach(Percent(85), E85, Reference)
        );

        Words.Says("0 %, 80 %, 85 %", error);
    }

    // The tank holds 100 L: 60 L of gasoline and 40 L of 80 % make 32 %; for 50 % of a full tank 37.5 L may stay.
    [Fact]
    public void Reach_WithoutTheRoom_SaysWhatAFullTankHoldsAndWhatToDrain()
    {
        Tank tank = Holding(60, Gasoline);

        var error = Assert.Throws<ArgumentOutOfRangeException>(() => tank.Reach(Percent(50), E85, Reference));

        Words.Says("0 %, 32 %, 22.5 l, 50 %", error);
        Tank.FillPlan fill = tank.Drain(Volume.FromLiters(22.5)).Reach(Percent(50), E85, Reference);
        Close.Within(1e-9, 100, fill.Result.Held.Liters);
    }

    [Fact]
    public void Reach_FromAnEmptyTank_Refuses() =>
        Assert.StartsWith(
            "An empty tank takes on the content of whatever is put in",
            Assert
                .Throws<InvalidOperationException>(() => Holding(0, Gasoline).Reach(Percent(50), E85, Reference))
                .Message
        );

    [Fact]
    public void FillTo_OutOfReach_SaysWhatBothReach()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Holding(50, Gasoline).FillTo(Percent(60), Volume.FromLiters(100), Gasoline, E85, Reference)
        );

        Words.Says("0 %, 40 %, 'gasoline', 'E85', 100 l, 60 %", error);
    }

    [Fact]
    public void FillTo_MoreThanTheCapacity_Refuses() =>
        Words.Says(
            "50 l, 100 l, 120 l",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                Holding(50, Gasoline).FillTo(Percent(20), Volume.FromLiters(120), Gasoline, E85, Reference)
            )
        );

    [Fact]
    public void FillTo_TwoOfOneContent_Refuses() =>
        Words.Says(
            "'E85', 80 %",
            Assert.Throws<ArgumentException>(() =>
                Holding(50, Gasoline).FillTo(Percent(20), Volume.FromLiters(90), E85, E85, Reference)
            )
        );

    [Fact]
    public void Add_MoreThanTheRoom_SaysTheRoom() =>
        Words.Says(
            "40 l, 41 l",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                Holding(60, Gasoline).Add(E85, Volume.FromLiters(41), Reference)
            )
        );

    [Fact]
    public void Add_NegativeVolume_Refuses() =>
        Words.Says(
            "-1 l",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                Holding(60, Gasoline).Add(E85, Volume.FromLiters(-1), Reference)
            )
        );

    [Fact]
    public void Drain_MoreThanItHolds_Refuses() =>
        Words.Says(
            "0 l, 60 l, 61 l",
            Assert.Throws<ArgumentOutOfRangeException>(() => Holding(60, Gasoline).Drain(Volume.FromLiters(61)))
        );

    [Fact]
    public void EmptyTank_HasNeitherFuelNorContent()
    {
        Tank empty = Holding(0, Gasoline);

        Assert.True(empty.IsEmpty);
        Assert.Equal(0, empty.EthanolContent.Percent);
        Assert.Throws<InvalidOperationException>(() => empty.ToFuel("none"));
        Assert.Throws<InvalidOperationException>(() => empty.ContentWorking());
    }

    [Fact]
    public void TankLiquid_MoreEthanolThanItsOxygen_Refuses()
    {
        var error = Assert.Throws<ArgumentException>(() =>
            new Tank.Liquid(StandardFuels.PumpGasoline, Percent(10), Percent(0))
        );

        Words.Says("'gasoline', 0 %", error);
    }

    [Fact]
    public void Workings_ShowTheBalance()
    {
        Tank.FillPlan reach = Holding(20, Gasoline).Reach(Percent(40), E85, Reference);
        Tank.FillPlan fill = Holding(20, Gasoline).FillTo(Percent(40), Volume.FromLiters(60), Gasoline, E85, Reference);

        Close.Within(1e-12, 0.02, reach.ToWorking().Value);
        Assert.Contains("Va = V0 * (y - x0) / (xa - y)", reach.ToWorking().ToString(), StringComparison.Ordinal);
        Close.Within(1e-12, fill.Steps[0].Volume.CubicMeters, fill.ToWorking().Value);
        Close.Within(1e-12, 0.4, reach.Result.ContentWorking().Value);
    }

    // 0.5 % of water at 60 °F is the published limit of 10 % ethanol, 3.8 teaspoons of 768 in a gallon.
    [Theory]
    [InlineData(0.55, 15.6, true)]
    [InlineData(0.45, 15.6, false)]
    [InlineData(0.45, -6.6, true)]
    [InlineData(0.30, -6.6, false)]
    [Trait("Source", "EPA-1995")]
    public void PhaseSeparation_TenPercentEthanol_IsThePublishedLimit(double water, double celsius, bool separates)
    {
        Finding? finding = WithWater(10, water).PhaseSeparation(Celsius.Of(celsius));

        Assert.Equal(separates, finding is { Severity: Severity.Warning, What: "water in the tank separates" });
    }

    /// <summary>
    /// More water than 10 % of ethanol holds falls out with less ethanol too, and in greater cold; above 15.6 °C it is not known.
    /// </summary>
    [Theory]
    [InlineData(9.84, 0.64, 10, "water in the tank separates")]
    [InlineData(5, 0.5, 15, "water in the tank separates")]
    [InlineData(10, 0.4, -20, "water in the tank separates")]
    [InlineData(5, 0.1, 10, "water in the tank may separate: less than 10 %")]
    [InlineData(10, 0.1, -20, "water in the tank may separate: nothing is known below")]
    [InlineData(10, 0.6, 30, "water in the tank may separate: above 15.6 °C")]
    [Trait("Source", "EPA-1995")]
    public void PhaseSeparation_BesideWhatIsPublished_IsBounded(
        double ethanol,
        double water,
        double celsius,
        string what
    )
    {
        Finding? finding = WithWater(ethanol, water).PhaseSeparation(Celsius.Of(celsius));

        Assert.Equal(Severity.Warning, finding!.Severity);
        Assert.StartsWith(what, finding.What);
    }

    [Fact]
    public void PhaseSeparation_OutsideWhatIsKnown_SaysSo()
    {
        Assert.Contains(
            "below -6.7 °C",
            WithWater(10, 0.1).PhaseSeparation(Celsius.Of(-20))!.What,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "less than 10 %",
            WithWater(5, 0.1).PhaseSeparation(Celsius.Of(10))!.What,
            StringComparison.Ordinal
        );
        Assert.Equal(Severity.Note, WithWater(60, 2).PhaseSeparation(Celsius.Of(10))!.Severity);
        Assert.Null(WithWater(60, 0.2).PhaseSeparation(Celsius.Of(10)));
        Assert.Null(Holding(20, Gasoline).PhaseSeparation(Celsius.Of(-40)));
    }

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    private static Tank Holding(double liters, Tank.Liquid liquid) =>
        Tank.Empty(Volume.FromLiters(100), Reference).Add(liquid, Volume.FromLiters(liters), Reference);

    /// <summary>A tank with ethanol and water in percent by volume.</summary>
    private static Tank WithWater(double ethanol, double water)
    {
        EthanolWater mixture = EthanolWater.FromVolumes(
            Volume.FromLiters(ethanol),
            Volume.FromLiters(water),
            Reference
        );
        Tank.Liquid hydrous = Tank.Liquid.FromHydrous("hydrous", mixture);
        return Tank.Empty(Volume.FromLiters(200), Reference)
            .Add(hydrous, Volume.FromLiters((ethanol + water) * Shrunk(mixture)), Reference)
            .Add(Gasoline, Volume.FromLiters(100 - ethanol - water), Reference);
    }

    private static double Shrunk(EthanolWater mixture) => 1 - mixture.ContractionAt(Reference).DecimalFractions;
}

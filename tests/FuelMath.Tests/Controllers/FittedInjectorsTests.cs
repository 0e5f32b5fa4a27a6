using UnitsNet;

namespace FuelMath.Tests.Controllers;

/// <summary>The mixture of every chamber, against closed forms.</summary>
public sealed class FittedInjectorsTests
{
    private static readonly Injector Rated = Trade.Injector(500);

    [Fact]
    public void OpenLoop_TrueBelief_MeetsTheTarget()
    {
        PredictedMixture mixture = Trade
            .Fitted(Rated, Rated, Rated)
            .OpenLoop(Trade.Point(Rated, 4, lambda: 0.85), Trade.Share(1));

        Assert.All(Trade.Lambdas(mixture), l => Close.Within(1e-12, 0.85, l));
        Assert.Empty(mixture.Findings);
    }

    /// <summary>Root of the pressures: a rail at 2 bar that was told to be at 3.</summary>
    [Fact]
    public void OpenLoop_LessPressureThanBelieved_IsLeanByTheRoot()
    {
        PredictedMixture mixture = Trade.Fitted(Rated, Rated).OpenLoop(Trade.Point(Rated, 4, bars: 2), Trade.Share(1));

        Close.Within(1e-12, Math.Sqrt(3.0 / 2), Trade.Lambdas(mixture)[0]);
    }

    /// <summary>Another fuel in the tank: lambda goes with the stoichiometric ratios and the root of the densities.</summary>
    [Fact]
    public void OpenLoop_AnotherFuelThanBelieved_GoesWithRatioAndDensity()
    {
        Fuel ethanol = StandardFuels.Ethanol;
        var set = FittedInjectors.FromStage(
            ethanol,
            new FittedInjectors.Stage("primary", Trade.Belief(Rated), 1, [Rated]),
            MixtureLimits.CommonPractice
        );
        double root = Math.Sqrt(ethanol.DensityAt(Trade.Warm) / Trade.Density);
        double ratios = Trade.Fluid.StoichiometricRatio.ToMassRatio() / ethanol.StoichiometricRatio.ToMassRatio();

        Close.Within(1e-12, ratios / root, Trade.Lambdas(set.OpenLoop(Trade.Point(Rated, 4), Trade.Share(1)))[0]);
    }

    [Fact]
    public void OpenLoop_AirModelThatReckonsWithLess_IsLean()
    {
        MixturePoint point = Trade.Point(Rated, 4).WithBelievedAir(Trade.Share(0.9));

        Close.Within(1e-12, 1 / 0.9, Trade.Lambdas(Trade.Fitted(Rated, Rated).OpenLoop(point, Trade.Share(1)))[0]);
    }

    /// <summary>Unequal air, equal fuel: each lambda goes with its air, the sensor sees the mean of the air.</summary>
    [Fact]
    public void OpenLoop_UnequalAir_GoesWithTheAir()
    {
        MixturePoint even = Trade.Point(Rated, 4);
        MixturePoint point = even.WithChamberAir([even.ChamberAir[0] * 0.9, even.ChamberAir[0] * 1.1]);
        PredictedMixture mixture = Trade.Fitted(Rated, Rated, Rated).OpenLoop(point, Trade.Share(1));

        Close.Within(1e-12, 0.9, Trade.Lambdas(mixture)[0]);
        Close.Within(1e-12, 1.1, Trade.Lambdas(mixture)[1]);
        Close.Within(1e-12, 1, mixture.Banks[0].Lambda!.Value.ToRatio());
    }

    /// <summary>The controller's correction scales the mass, so that each bank meets its lambda by its own factor.</summary>
    [Fact]
    public void ClosedLoop_TwoBanks_CorrectsEachByItsOwnSensor()
    {
        var set = new FittedInjectors(
            Trade.Fluid,
            [
                new FittedInjectors.Stage(
                    "primary",
                    Trade.Belief(Rated),
                    1,
                    [Rated, Trade.Injector(450), Rated, Trade.Injector(550)]
                ),
            ],
            [],
            [1, 1, 2, 2],
            MixtureLimits.CommonPractice
        );
        PredictedMixture mixture = set.ClosedLoop(Trade.Point(Rated, 4));

        Close.Within(1e-12, 500 / 475.0, mixture.Banks[0].Correction.DecimalFractions);
        Close.Within(1e-12, 500 / 525.0, mixture.Banks[1].Correction.DecimalFractions);
        Assert.All(mixture.Banks, b => Close.Within(1e-12, 1, b.Lambda!.Value.ToRatio()));
        Close.Within(1e-12, 475 / 450.0, Trade.Lambdas(mixture)[1]);
        Close.Within(1e-12, 475 / 450.0, mixture.TrimFor(2).DecimalFractions);
        Assert.Equal<int>([3, 4], mixture.Banks[1].Chambers);
    }

    /// <summary>Twice the dead-time error is made good by a correction of 1 + dt/w: the corrected pulse is longer by dt.</summary>
    [Fact]
    public void ClosedLoop_LongerDeadTime_AddsItToThePulse()
    {
        PredictedMixture mixture = Trade
            .Fitted(Rated, Trade.Injector(500, deadMilliseconds: 1.2))
            .ClosedLoop(Trade.Point(Rated, 4));

        Close.Within(1e-12, 1 + (0.2 / 4), mixture.Banks[0].Correction.DecimalFractions);
        Close.Within(1e-12, 5.2, mixture.Banks[0].PulseWidths[0].Milliseconds);
    }

    /// <summary>A limit of 1.25 leaves 1000/(770 x 1.25) = 1.039 of the lambda.</summary>
    [Fact]
    public void ClosedLoop_AtItsLimit_SaysWhatRemains()
    {
        Injector rated = Trade.Injector(1000);
        PredictedMixture mixture = Trade
            .Fitted(rated, Trade.Injector(640), Trade.Injector(740), Trade.Injector(930))
            .ClosedLoop(Trade.Point(rated, 4));
        double left = 1000 * 3 / (640 + 740 + 930.0) / 1.25;

        Assert.True(mixture.Banks[0].IsAtLimit);
        Assert.Equal(1.25, mixture.Banks[0].Correction.DecimalFractions);
        Close.Within(1e-12, left, mixture.Banks[0].RemainingCorrection!.Value.DecimalFractions);
        Assert.Equal(
            "Danger: The mixture of bank 1 needs more correction than the controller gives at 'test': 129.9 % of the fuel "
                + "that it would give by itself (limit 75.0 % to 125.0 %, [Common-practice] rule of thumb). Do not load the "
                + "engine: at that limit the mixture stays leaner than asked for. Correct what the controller was told of "
                + "injectors, pressure and fuel, or fit larger injectors.",
            mixture.Findings[0].ToString()
        );
    }

    [Fact]
    public void ClosedLoop_RichAtItsLimit_IsAWarning()
    {
        PredictedMixture mixture = Trade.Fitted(Rated, Trade.Injector(800)).ClosedLoop(Trade.Point(Rated, 4));

        Assert.True(mixture.Banks[0].IsAtLimit);
        Assert.Equal(Severity.Warning, mixture.Findings[0].Severity);
    }

    [Fact]
    public void ClosedLoop_OneLeanChamber_IsHiddenFromTheSensorAndSaid()
    {
        PredictedMixture mixture = Trade
            .Fitted(Rated, Rated, Rated, Rated, Trade.Injector(400))
            .ClosedLoop(Trade.Point(Rated, 4));

        Assert.Contains(
            mixture.Findings,
            f => f.Severity == Severity.Danger && f is { Code: FindingCode.ChamberLean, Part: "chamber 4" }
        );
        Assert.Contains(mixture.Findings, f => f.Action.Contains("misfires", StringComparison.Ordinal));
    }

    /// <summary>
    /// Batch: two pulses of half the fuel, each with a dead time of its own, so that 0.1 ms too little is 0.1 of 2 ms twice.
    /// </summary>
    [Fact]
    public void OpenLoop_TwoPulsesPerCycle_LosesTheDeadTimeTwice()
    {
        var set = FittedInjectors.FromStage(
            Trade.Fluid,
            new FittedInjectors.Stage("primary", Trade.Belief(Rated), 2, [Trade.Injector(500, deadMilliseconds: 1.1)]),
            MixtureLimits.CommonPractice
        );
        PredictedMixture mixture = set.OpenLoop(Trade.Point(Rated, 4), Trade.Share(1));

        Close.Within(1e-12, 2 / 1.9, Trade.Lambdas(mixture)[0]);
        Close.Within(1e-12, 3, mixture.Banks[0].PulseWidths[0].Milliseconds);
        Close.Within(1e-12, 2 / 1.9, set.WorkingFor(Trade.Point(Rated, 4), 1).Value);
    }

    [Fact]
    public void OpenLoop_PulseInsideTheDeadTime_IsDangerAndHasNoLambda()
    {
        PredictedMixture mixture = Trade
            .Fitted(Rated, Trade.Injector(500, deadMilliseconds: 3))
            .OpenLoop(Trade.Point(Rated, 1.5), Trade.Share(1));

        Assert.Null(mixture.Chambers[0].Lambda);
        Assert.Null(mixture.Banks[0].Lambda);
        Assert.Equal("Chamber 1 gets no fuel at 'test'", mixture.Findings[0].What);
        Assert.Throws<InvalidOperationException>(() => mixture.TrimFor(1));
    }

    [Fact]
    public void OpenLoop_ShortPulse_IsFound()
    {
        PredictedMixture mixture = Trade
            .Fitted(Rated, Trade.Injector(500, smallestMilliseconds: 0.9))
            .OpenLoop(Trade.Point(Rated, 0.5), Trade.Share(1));

        Assert.Contains(mixture.Findings, f => f is { Limit: "0.900 ms", Value: "0.500 ms after dead time" });
    }

    [Fact]
    public void AtPulseWidths_GivenWidths_DeliversThem()
    {
        PredictedMixture mixture = Trade
            .Fitted(Rated, Rated)
            .AtPulseWidths(Trade.Point(Rated, 4), [Trade.Milliseconds(3)]);

        // 2 ms of effective width instead of 4.
        Close.Within(1e-12, 2, Trade.Lambdas(mixture)[0]);
    }

    [Fact]
    public void AtPulseWidths_LongerThanThePeriod_IsHeldOpenAndSaid()
    {
        PredictedMixture mixture = Trade
            .Fitted(Rated, Rated)
            .AtPulseWidths(Trade.Point(Rated, 4), [Trade.Milliseconds(25)]);

        Close.Within(1e-12, 4.0 / 20, Trade.Lambdas(mixture)[0]);
        Assert.Contains(
            mixture.Findings,
            f => f.What == "Injectors of stage 'primary' have no time left to close at 'test'"
        );
    }

    /// <summary>Weaker secondaries than believed: the transition moves, and only their share is lean.</summary>
    [Fact]
    public void OpenLoop_WeakSecondaries_AreLeanByTheirShare()
    {
        Injector weak = Trade.Injector(400);
        var set = new FittedInjectors(
            Trade.Fluid,
            [
                new FittedInjectors.Stage("primary", Trade.Belief(Rated), 1, [Rated]),
                new FittedInjectors.Stage("secondary", Trade.Belief(Rated), 1, [weak]),
            ],
            [new StageSchedule.Transition(Trade.Share(0.5))],
            [1],
            MixtureLimits.CommonPractice
        );
        MixturePoint one = Trade.Point(Rated, 13);
        var point = new MixturePoint(
            "staged",
            one.Cycle,
            one.ChamberAir[0],
            one.Target,
            new InjectorConditions(
                [Pressure.FromBars(3), Pressure.FromBars(3)],
                one.Injectors.FuelTemperature,
                one.Injectors.Voltage
            )
        ).WithVoltageAtController(one.AtController);
        PredictedMixture mixture = set.OpenLoop(point, Trade.Share(1));

        // The primaries stay at half of 20 ms, 9 ms effective; 4 ms are left to the secondaries, of which 3.2 arrive.
        Close.Within(1e-12, 13 / (9 + (4 * 0.8)), Trade.Lambdas(mixture)[0]);
        Close.Within(1e-12, 10, mixture.Banks[0].PulseWidths[0].Milliseconds);
        Close.Within(1e-12, 5, mixture.Banks[0].PulseWidths[1].Milliseconds);
    }

    [Fact]
    public void CorrectedBelief_EnteredInstead_BringsTheMeanToTheTarget()
    {
        FittedInjectors set = Trade.Fitted(Trade.Injector(700), Trade.Injector(450), Trade.Injector(550));
        MixturePoint point = Trade.Point(Trade.Injector(700), 4, bars: 2.5);
        ControllerBelief belief = set.CorrectedBelief("primary", point, Trade.Invented);
        PredictedMixture mixture = set.WithBelief("primary", belief).OpenLoop(point, Trade.Share(1));

        Close.Within(1e-12, 500, belief.Injector.Rating.StaticVolumeFlow.CubicCentimetersPerMinute);
        Close.Within(1e-12, 1, mixture.Banks[0].Lambda!.Value.ToRatio());
    }

    [Fact]
    public void NeededCorrection_InjectorsTooSmall_SaysSo()
    {
        NoSolutionException error = Assert.Throws<NoSolutionException>(() =>
            Trade.Fitted(Rated, Trade.Injector(50)).NeededCorrection(Trade.Point(Rated, 4), 1)
        );
        Words.Says("1, 'test'", error);
    }

    [Fact]
    public void NeededCorrection_InjectorsTooLarge_SaysSo()
    {
        NoSolutionException error = Assert.Throws<NoSolutionException>(() =>
            Trade.Fitted(Rated, Trade.Injector(50_000)).NeededCorrection(Trade.Point(Rated, 4), 1)
        );
        Assert.Contains("smallest pulses that repeat give more fuel", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void NeededCorrection_NoSuchBank_NamesThem() =>
        Words.Refused<ArgumentException>(
            "bank",
            "1, 2",
            () => Trade.Fitted(Rated, Rated).NeededCorrection(Trade.Point(Rated, 4), 2)
        );

    [Fact]
    public void New_BanksOfOtherNumber_SaysHowMany() =>
        Words.Refused<ArgumentException>(
            "banks",
            "2, 1",
            () =>
                _ = new FittedInjectors(
                    Trade.Fluid,
                    [new FittedInjectors.Stage("p", Trade.Belief(Rated), 1, [Rated, Rated])],
                    [],
                    [1],
                    MixtureLimits.CommonPractice
                )
        );

    [Fact]
    public void New_StagesOfOtherNumber_NamesTheStage() =>
        Words.Refused<ArgumentException>(
            "stages",
            "2, 's', 1",
            () =>
                _ = new FittedInjectors(
                    Trade.Fluid,
                    [
                        new FittedInjectors.Stage("p", Trade.Belief(Rated), 1, [Rated, Rated]),
                        new FittedInjectors.Stage("s", Trade.Belief(Rated), 1, [Rated]),
                    ],
                    [new StageSchedule.Transition(Trade.Share(0.5))],
                    [1, 1],
                    MixtureLimits.CommonPractice
                )
        );

    [Fact]
    public void New_NoTransition_SaysHowMany() =>
        Words.Refused<ArgumentException>(
            "transitions",
            "2, 1, 0",
            () =>
                _ = new FittedInjectors(
                    Trade.Fluid,
                    [
                        new FittedInjectors.Stage("p", Trade.Belief(Rated), 1, [Rated]),
                        new FittedInjectors.Stage("s", Trade.Belief(Rated), 1, [Rated]),
                    ],
                    [],
                    [1],
                    MixtureLimits.CommonPractice
                )
        );

    [Fact]
    public void OpenLoop_PointOfOneStageForTwo_SaysHowMany()
    {
        var set = new FittedInjectors(
            Trade.Fluid,
            [
                new FittedInjectors.Stage("p", Trade.Belief(Rated), 1, [Rated]),
                new FittedInjectors.Stage("s", Trade.Belief(Rated), 1, [Rated]),
            ],
            [new StageSchedule.Transition(Trade.Share(0.5))],
            [1],
            MixtureLimits.CommonPractice
        );

        Words.Refused<ArgumentException>(
            "point",
            "'test', 2, 1",
            () => set.OpenLoop(Trade.Point(Rated, 4), Trade.Share(1))
        );
    }

    [Fact]
    public void OpenLoop_AirForThreeOfTwo_SaysHowMany()
    {
        Mass air = Mass.FromMilligrams(300);

        Words.Refused<ArgumentException>(
            "point",
            "'test', 2, 3",
            () =>
                Trade
                    .Fitted(Rated, Rated, Rated)
                    .OpenLoop(Trade.Point(Rated, 4).WithChamberAir([air, air, air]), Trade.Share(1))
        );
    }

    [Fact]
    public void OpenLoop_NoCorrectionAtAll_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "correction",
            "0",
            () => Trade.Fitted(Rated, Rated).OpenLoop(Trade.Point(Rated, 4), Trade.Share(0))
        );

    [Fact]
    public void AtPulseWidths_TwoForOne_SaysHowMany() =>
        Words.Refused<ArgumentException>(
            "pulseWidths",
            "1, 2",
            () =>
                Trade
                    .Fitted(Rated, Rated)
                    .AtPulseWidths(Trade.Point(Rated, 4), [Trade.Milliseconds(3), Trade.Milliseconds(3)])
        );

    [Fact]
    public void WithInjectors_OtherNumber_SaysHowMany() =>
        Words.Refused<ArgumentException>(
            "fitted",
            "'primary', 1, 2",
            () => Trade.Fitted(Rated, Rated).WithInjectors("primary", [Rated, Rated])
        );

    [Fact]
    public void WithInjectors_NoSuchStage_NamesThem() =>
        Words.Refused<ArgumentException>(
            "stage",
            "'third'",
            () => Trade.Fitted(Rated, Rated).WithInjectors("third", [Rated])
        );

    [Fact]
    public void MixtureLimits_CorrectionAboveOneAsLowest_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "lowestCorrection",
            "0, 1, 1.2",
            () => _ = new MixtureLimits(Trade.Share(1.2), Trade.Share(1.3), Trade.Share(0.05), Trade.Invented)
        );

    [Fact]
    public void Swap_OtherBanks_IsRefused() =>
        Words.Refused<ArgumentException>(
            "after",
            () =>
                _ = new InjectorSwap(
                    Trade.Fitted(Rated, Rated),
                    Trade.Fitted(Rated, Rated, Rated),
                    [Trade.Point(Rated, 4)]
                )
        );

    [Fact]
    public void RailPressure_FixedBelowTheManifold_SaysSo() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "discharge",
            "400 kPa, 450 kPa",
            () =>
                RailPressure
                    .Fixed(new(Pressure.FromBars(3)))
                    .DifferentialPressureAt(new(Pressure.FromBars(4.5)), new(Pressure.FromBars(1)))
        );

    [Fact]
    public void WorkingFor_AChamber_EndsAtItsLambda()
    {
        FittedInjectors set = Trade.Fitted(Rated, Trade.Injector(450, deadMilliseconds: 1.1), Rated);
        MixturePoint point = Trade.Point(Rated, 4, bars: 2.8);
        var working = set.WorkingFor(point, 1);

        Close.Within(1e-12, Trade.Lambdas(set.OpenLoop(point, Trade.Share(1)))[0], working.Value);
        Assert.Equal(
            ["m_1", "mf_1", "mp_1", "m_2", "tp", "w", "mp_2", "mf_2", "lambda"],
            working.Lines.Select(l => l.ToString().Split(' ')[0])
        );
    }

    [Fact]
    public void WorkingFor_NoSuchChamber_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "chamber",
            "1, 2",
            () => Trade.Fitted(Rated, Rated).WorkingFor(Trade.Point(Rated, 4), 2)
        );

    /// <summary>A fixed rail under boost: a controller that knows it meets the lambda, one that does not is lean by the root.</summary>
    [Fact]
    public void OpenLoop_ControllerThatMeasuresThePressure_MeetsTheTarget()
    {
        MixturePoint blind = Trade.Point(Rated, 4, bars: 1.5);
        MixturePoint told = blind.WithBelievedPressures([Pressure.FromBars(1.5)]);
        FittedInjectors set = Trade.Fitted(Rated, Rated);

        Close.Within(1e-12, Math.Sqrt(2), Trade.Lambdas(set.OpenLoop(blind, Trade.Share(1)))[0]);
        Close.Within(1e-12, 1, Trade.Lambdas(set.OpenLoop(told, Trade.Share(1)))[0]);
        Close.Within(1e-12, 1, set.WorkingFor(told, 1).Value);
    }

    [Fact]
    public void WithBelievedPressures_TwoForOne_SaysHowMany() =>
        Words.Refused<ArgumentException>(
            "differentialPressures",
            "1, 2",
            () => Trade.Point(Rated, 4).WithBelievedPressures([Pressure.FromBars(3), Pressure.FromBars(3)])
        );
}

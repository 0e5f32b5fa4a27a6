using FuelMath.Findings;
using FuelMath.Injectors;
using FuelMath.Quantities;
using FuelMath.Regulators;
using FuelMath.Systems;
using UnitsNet;

namespace FuelMath.Tests.Systems;

public sealed class FuelSystemTests
{
    // ---- The demand, by hand ---------------------------------------------------------------------------

    /// <summary>
    /// Closed form: air by the ideal-gas law with R = 287.053 J/(kg K) [ISO-2533], fuel by division. 2 L, half a turn each, 6000 rpm:
    /// 50 cycles a second a cylinder; 100 kPa, 25 degC; efficiency 0.95.
    /// </summary>
    [Fact]
    [Trait("Source", "ISO-2533")]
    public void Solve_HoldLambda_DrawsWhatTheAirNeeds()
    {
        SystemState state = Workshop.Four().Solve(Workshop.Point(6000, 100, Workshop.Hold(0.9)));

        double airPerCycle = 100_000 * 0.0005 / (287.053 * 298.15) * 0.95;
        double ratio = Workshop.Gasoline.StoichiometricRatio.ToMassRatio();
        double fuel = airPerCycle / (ratio * 0.9) * 4 * 50;
        Close.Within(1e-5, fuel, state.Stages[0].MeanFlow.KilogramsPerSecond);
        Close.Within(1e-9, 0.9, state.Lambda!.Value.ToRatio());
    }

    [Fact]
    public void Solve_Anywhere_PumpFlowIsDrawPlusReturn()
    {
        SystemState state = Workshop.Four().Solve(Workshop.Point(4000, 80, Workshop.Hold(1)));

        double drawn = state.Injectors.Sum(i => i.MeanFlow.CubicMetersPerSecond);
        double pumped = state.FlowThrough("pump").CubicMetersPerSecond;
        Close.Within(1e-9, pumped, drawn + state.FlowThrough("return hose").CubicMetersPerSecond);
        Close.Within(1e-12, pumped, state.Pumps[0].Flow.CubicMetersPerSecond);
    }

    [Fact]
    public void Solve_PumpMatch_LiesOnThePumpsOwnCurveAtItsOwnVoltage()
    {
        FuelSystem system = Workshop.Four();
        PumpMatch match = system.Solve(Workshop.Point(4000, 80, Workshop.Hold(1))).Pumps[0];

        var curve = system.Plan.Lines[0].Pump!.CurveAt(match.Voltage);
        Close.Within(1e-7, curve.FlowAt(match.PressureRise).LitersPerHour, match.Flow.LitersPerHour);
        Close.Within(1e-9, curve.CurrentAt(match.PressureRise).Amperes, match.Current.Amperes);
        Close.Within(1e-9, 13.8 - (system.Power.Pumps.Resistance.Ohms * match.Current.Amperes), match.Voltage.Volts);
    }

    // ---- Regulator states ---------------------------------------------------------------------------------

    [Fact]
    public void Solve_ManifoldReference_KeepsTheDifferenceAcrossTheInjector()
    {
        FuelSystem system = Workshop.Four();
        SystemState low = system.Solve(Workshop.Point(3000, 40, Workshop.Hold(1)));
        SystemState high = system.Solve(Workshop.Point(3000, 200, Workshop.Hold(1)));

        Assert.Equal(RegulatorState.Regulating, low.Regulators[0].State);
        Assert.Equal(RegulatorState.Regulating, high.Regulators[0].State);

        // 1.6 bar more in the manifold moves the difference only by slope, hose losses and the seat's own area (3 %).
        Close.WithinOf(
            1,
            0.15,
            low.Injectors[3].DifferentialPressure.Bars,
            high.Injectors[3].DifferentialPressure.Bars
        );
    }

    [Fact]
    public void Solve_AmbientReference_LosesTheDifferenceAsTheManifoldRises()
    {
        FuelSystem system = Workshop.Four(reference: RegulatorReference.Ambient);
        SystemState low = system.Solve(Workshop.Point(3000, 100, Workshop.Hold(1)));
        SystemState high = system.Solve(Workshop.Point(3000, 200, Workshop.Hold(1)));

        Close.WithinOf(
            1,
            0.1,
            low.Injectors[3].DifferentialPressure.Bars - 1,
            high.Injectors[3].DifferentialPressure.Bars
        );
        Assert.Contains(
            high.Findings,
            f => f.What.StartsWith("Injector differential pressure", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Solve_SmallPump_SeatsTheRegulatorAndSaysSo()
    {
        SystemState state = Workshop.Four(deliveryShare: 0.25).Solve(Workshop.Point(7000, 160, Workshop.Hold(0.85)));

        Assert.Equal(RegulatorState.Seated, state.Regulators[0].State);
        Assert.Contains(
            state.Findings,
            f => f.Severity == Severity.Danger && f.What.Contains("is shut", StringComparison.Ordinal)
        );
        Assert.True(state.Injectors[0].DifferentialPressure.Bars < 3);
    }

    [Fact]
    public void Solve_ThinReturn_OpensTheRegulatorFullyAndLiftsTheRail()
    {
        FuelSystem wide = Workshop.Four();
        FuelSystem thin = Workshop.Four(returnBoreMillimeters: 3.2);
        OperatingPoint point = Workshop.Point(900, 35, Workshop.Hold(1));
        SystemState lifted = thin.Solve(point);

        Assert.Equal(RegulatorState.FullyOpen, lifted.Regulators[0].State);
        Assert.True(lifted.PressureAt("rail end") > wide.Solve(point).PressureAt("rail end"));
        Assert.Contains(lifted.Findings, f => f.What.Contains("fully open", StringComparison.Ordinal));
    }

    // ---- What the controller believes ------------------------------------------------------------------

    /// <summary>Flow 10 % low everywhere and no dead-time difference: lambda rises by 1/0.9, at every load.</summary>
    [Theory]
    [InlineData(1500, 45)]
    [InlineData(3000, 80)]
    [InlineData(6000, 110)]
    public void Solve_OpenLoopWithWeakInjectors_GivesTheFactorOfTheFlow(double rpm, double kilopascals)
    {
        Injector rated = Workshop.Injector("rated", 500);
        Injector weak = rated.WithFlowScale("weak", Ratio.FromPercent(90), Workshop.Invented);
        OperatingPoint point = Workshop.Point(rpm, kilopascals, Workshop.Open(1));

        double good = Workshop.Four([rated, rated, rated, rated]).Solve(point).Lambda!.Value.ToRatio();
        double lean = Workshop.Four([weak, weak, weak, weak], believed: rated).Solve(point).Lambda!.Value.ToRatio();

        // Weak injectors draw less, the rail rises a few hundred pascals: second order.
        Close.Within(2e-3, good / 0.9, lean);
    }

    /// <summary>With belief and truth alike the controller hits its target, but for what it does not know.</summary>
    [Fact]
    public void Solve_OpenLoopWithTrueBelief_ComesNearItsTarget()
    {
        SystemState state = Workshop.Four(injectorOhms: 0.001).Solve(Workshop.Point(3000, 100, Workshop.Open(1)));

        // The regulator's slope and the hoses move the difference from the believed 3 bar: half its relative error.
        double pressureError = Math.Sqrt(state.Injectors[0].DifferentialPressure.Bars / 3);
        Close.Within(0.01, 1 / pressureError, state.Lambda!.Value.ToRatio());
    }

    /// <summary>
    /// Closed form: a dead time 0.2 ms longer than believed leaves w - 0.2 ms of an effective width w, so that lambda grows
    /// by w / (w - 0.2 ms): most at short pulses. What is left is the rail, which rises a little with less flow.
    /// </summary>
    [Theory]
    [InlineData(900, 35)]
    [InlineData(3000, 60)]
    [InlineData(3000, 105)]
    public void Solve_LongerDeadTimeThanBelieved_TakesItsShareOfThePulse(double rpm, double kilopascals)
    {
        Injector rated = Workshop.Injector("rated", 500);
        Injector slow = Workshop.Injector("slow", 500, extraDeadMilliseconds: 0.2);
        OperatingPoint point = Workshop.Point(rpm, kilopascals, Workshop.Open(1));
        SystemState good = Workshop.Four([rated, rated, rated, rated]).Solve(point);
        SystemState bad = Workshop.Four([slow, slow, slow, slow], believed: rated).Solve(point);

        double width = good.Injectors[0].Pulse.EffectiveWidth.Milliseconds;
        Close.Within(2e-3, width / (width - 0.2), bad.Lambda!.Value.ToRatio() / good.Lambda!.Value.ToRatio());
    }

    [Fact]
    public void Solve_OneWeakInjector_IsLeanInItsOwnChamberOnlyAndIsFound()
    {
        Injector rated = Workshop.Injector("rated", 500);
        Injector weak = rated.WithFlowScale("weak", Ratio.FromPercent(88), Workshop.Invented);
        SystemState state = Workshop
            .Four([rated, weak, rated, rated], believed: rated)
            .Solve(Workshop.Point(5000, 100, Workshop.Hold(0.9)));

        double[] lambda = [.. state.Chambers.Select(c => c.Lambda!.Value.ToRatio())];
        Close.Within(1e-9, 0.9, state.Lambda!.Value.ToRatio());

        // One sensor sees total air over total fuel: the harmonic mean of equal-air chambers.
        Close.Within(1e-9, 4 / lambda.Sum(l => 1 / l), state.Lambda!.Value.ToRatio());
        Close.Within(2e-3, 1 / 0.88, lambda[1] / lambda[0]);
        Assert.Contains(state.Findings, f => f.What == "Chamber 2 runs leaner than the others");
    }

    // ---- Stages ----------------------------------------------------------------------------------------------

    [Fact]
    public void Solve_AcrossTheTransition_KeepsTheTotalContinuousAndTheSecondariesRepeatable()
    {
        FuelSystem system = Workshop.Four(secondaries: (Workshop.Injector("second", 700), 0.6));
        double smallest = system.Stages[1].Seats[0].Injector.SmallestRepeatableWidth.Seconds;
        bool alone = false;
        bool joined = false;
        for (double kilopascals = 100; kilopascals <= 240; kilopascals += 1)
        {
            SystemState state = system.Solve(Workshop.Point(7000, kilopascals, Workshop.Hold(0.85)));
            Close.Within(1e-9, 0.85, state.Lambda!.Value.ToRatio());
            if (state.Stages[1].IsShut)
            {
                alone = true;
                Assert.True(state.Stages[0].DutyCycle.DecimalFractions <= 0.6 + 1e-9);
            }
            else
            {
                joined = true;
                Assert.True(
                    state.Injectors[4].Pulse.EffectiveWidth.Seconds >= smallest * (1 - 1e-9),
                    $"{kilopascals} kPa: {state.Injectors[4].Pulse.EffectiveWidth.Seconds}"
                );
            }
        }

        Assert.True(alone && joined);
    }

    [Fact]
    public void Solve_BeyondAllInjectors_ReportsTheShortfallAndTheLambda()
    {
        SystemState state = Workshop.Four().Solve(Workshop.Point(7500, 250, Workshop.Hold(0.8)));

        Assert.True(state.Stages[0].IsHeldOpen);
        Assert.True(state.Lambda!.Value.ToRatio() > 0.9);
        Assert.Contains(
            state.Findings,
            f => f.Severity == Severity.Danger && f.What.Contains("no time left", StringComparison.Ordinal)
        );
        Assert.Contains(
            state.Findings,
            f => f.Severity == Severity.Danger && f.What.Contains("leaner than asked", StringComparison.Ordinal)
        );
    }

    // ---- Other commands ----------------------------------------------------------------------------------

    [Fact]
    public void Solve_Cut_DrawsNothingAndHasNoLambda()
    {
        SystemState state = Workshop.Four().Solve(Workshop.Point(5000, 30, FuelCommand.Cut));

        Assert.Equal(0, state.Injectors.Sum(i => i.MeanFlow.CubicMetersPerSecond), 1e-15);
        Assert.Null(state.Lambda);
        Assert.All(state.Stages, s => Assert.True(s.IsShut));
        Assert.DoesNotContain(state.Findings, f => f.Severity == Severity.Danger);
    }

    [Fact]
    public void Solve_AllOpenAtStandstill_FlowsTheRatingCarriedToThePressure()
    {
        FuelSystem system = Workshop.Four();
        SystemState state = system.Solve(Workshop.Point(0, 100, FuelCommand.AllOpen));

        InjectorResult one = state.Injectors[0];
        Injector injector = one.Seat.Injector;
        Density density = Workshop.Gasoline.DensityAt(Workshop.Celsius(20));
        Close.Within(
            1e-8,
            injector.Rating.VolumeFlowAt(one.DifferentialPressure, density).LitersPerHour,
            one.MeanFlow.LitersPerHour
        );
    }

    [Fact]
    public void Solve_PulseWidths_GiveTheMassOfThePulse()
    {
        FuelSystem system = Workshop.Four();
        SystemState state = system.Solve(
            Workshop.Point(3000, 100, FuelCommand.FromPulseWidths([Duration.FromMilliseconds(8)]))
        );

        InjectorResult one = state.Injectors[0];
        InjectorPulse pulse = one.Seat.Injector.Deliver(
            Duration.FromMilliseconds(8),
            Duration.FromMilliseconds(40),
            one.DifferentialPressure,
            Workshop.Gasoline.DensityAt(Workshop.Celsius(20)),
            one.Voltage
        );
        double perSecond = pulse.Mass.Kilograms * 25;
        Close.Within(
            1e-8,
            perSecond,
            one.MeanFlow.CubicMetersPerSecond * Workshop.Gasoline.DensityAt(Workshop.Celsius(20)).KilogramsPerCubicMeter
        );
    }

    // ---- Refusals ------------------------------------------------------------------------------------------

    [Fact]
    public void Solve_ManifoldAboveRail_SaysBothPressures()
    {
        FuelSystem system = Workshop.Four(reference: RegulatorReference.Ambient, setBars: 1.5);

        var error = Assert.Throws<NoSolutionException>(() =>
            system.Solve(Workshop.Point(800, 295, FuelCommand.FromPulseWidths([Duration.FromMilliseconds(3)])))
        );

        Assert.Contains(
            "is not above the pressure that its injector sprays against (1.95 bar gauge)",
            error.Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Solve_VoltageBelowThePumpsData_SaysTheRange()
    {
        var error = Assert.Throws<OutsideTableException>(() =>
            Workshop.Four().Solve(Workshop.Point(200, 95, Workshop.Hold(0.8), volts: 7.5))
        );

        Assert.Equal(8, error.Minimum, 1e-9);
    }

    [Fact]
    public void Solve_SpeedOutsideTheBreathingTable_Refuses() =>
        Assert.Throws<OutsideTableException>(() => Workshop.Four().Solve(Workshop.Point(9000, 100, Workshop.Hold(1))));

    [Fact]
    public void Solve_WrongNumberOfWidths_SaysBothNumbers()
    {
        var error = Assert.Throws<ArgumentException>(() =>
            Workshop.Four().Solve(Workshop.Point(3000, 100, FuelCommand.FromPulseWidths([])))
        );

        Assert.StartsWith(
            "The command must give a pulse width for each of 1 stages; it gives 0.",
            error.Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Solve_Null_Throws() =>
        Assert.Throws<ArgumentNullException>("point", () => Workshop.Four().Solve(null!));

    [Fact]
    public void WithInjectors_UnknownStage_NamesTheStages()
    {
        var error = Assert.Throws<ArgumentException>(() => Workshop.Four().WithInjectors("third", []));

        Assert.StartsWith("Must be one of: primary; it was 'third'.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void PressureAt_UnknownNode_NamesTheNodes()
    {
        SystemState state = Workshop.Four().Solve(Workshop.Point(3000, 100, Workshop.Hold(1)));

        var error = Assert.Throws<ArgumentException>("node", () => state.PressureAt("rail"));
        Assert.StartsWith("Must be one of: tank, pump outlet,", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("line", () => state.FlowThrough("rails"));
    }
}

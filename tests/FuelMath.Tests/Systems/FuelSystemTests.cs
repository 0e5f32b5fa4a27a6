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
        SystemState.PumpResult match = system.Solve(Workshop.Point(4000, 80, Workshop.Hold(1))).Pumps[0];

        var curve = ((Pump)system.Network.Lines[0].Part).CurveAt(match.Voltage);
        Close.Within(1e-7, curve.FlowAt(match.PressureRise).LitersPerHour, match.Flow.LitersPerHour);
        Close.Within(1e-9, curve.CurrentAt(match.PressureRise).Amperes, match.Current.Amperes);
        Close.Within(
            1e-9,
            13.8 - (((PowerSupply.TwoCircuits)system.Power).Pumps.Resistance.Ohms * match.Current.Amperes),
            match.Voltage.Volts
        );
    }

    // ---- Regulator states ---------------------------------------------------------------------------------

    [Fact]
    public void Solve_ManifoldReference_KeepsTheDifferenceAcrossTheInjector()
    {
        FuelSystem system = Workshop.Four();
        SystemState low = system.Solve(Workshop.Point(3000, 40, Workshop.Hold(1)));
        SystemState high = system.Solve(Workshop.Point(3000, 200, Workshop.Hold(1)));

        Assert.Equal(RegulatorCondition.Regulating, low.Regulators[0].State);
        Assert.Equal(RegulatorCondition.Regulating, high.Regulators[0].State);

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

        Assert.Equal(RegulatorCondition.Seated, state.Regulators[0].State);
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

        Assert.Equal(RegulatorCondition.FullyOpen, lifted.Regulators[0].State);
        Assert.True(lifted.PressureAt("rail end") > wide.Solve(point).PressureAt("rail end"));
        Assert.Contains(lifted.Findings, f => f.What.Contains("fully open", StringComparison.Ordinal));
    }

    [Fact]
    public void Solve_FilterBeyondItsTestedFlow_IsSaid()
    {
        SystemState state = Workshop.Four(deliveryShare: 1.3).Solve(Workshop.Point(900, 35, Workshop.Hold(1)));

        Assert.True(state.FlowThrough("filter").LitersPerHour > 240);
        Assert.Contains(state.Findings, f => f.What.Contains("its loss is extrapolated", StringComparison.Ordinal));
    }

    [Fact]
    public void Solve_ReturnIntoTheTank_IsNotTakenForTheSuctionSide() =>
        Assert.DoesNotContain(
            Workshop.Four().Solve(Workshop.Point(900, 35, Workshop.Hold(1))).Findings,
            f => f.What == "Fuel runs fast in hose 'return hose'"
        );
}

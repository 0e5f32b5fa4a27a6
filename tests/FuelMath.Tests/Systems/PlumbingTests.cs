using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>Each part of the plumbing on the network, held against what the part says by itself.</summary>
public sealed class PlumbingTests
{
    private static readonly OperatingPoint Cruise = Workshop.Point(3000, 60, Workshop.Hold(1));

    // ---- Without a return from the rail ---------------------------------------------------------------------

    /// <summary>Behind the regulator stands what its forces say at its supply, and the relief takes what is left over.</summary>
    [Fact]
    public void Reducing_OnTheNetwork_HoldsWhatItsForcesSay()
    {
        FuelSystem system = PlumbingRig.WithoutReturn();
        SystemState state = system.Solve(Cruise);
        SystemState.RegulatorResult result = Assert.Single(state.Regulators);
        VolumeFlow drawn = state.FlowThrough("regulator");

        GaugePressure byForces = PlumbingRig
            .Reducing(RegulatorReference.Manifold)
            .HeldPressure(PlumbingRig.Bar(-0.4), state.PressureAt("filter outlet"), drawn);

        Assert.True(result.IsReducing);
        Assert.Equal(RegulatorCondition.Regulating, result.State);
        Close.Within(1e-8, byForces.AboveAmbient.Bars, result.Outlet!.Value.AboveAmbient.Bars);
        Close.Within(1e-8, byForces.AboveAmbient.Bars, state.PressureAt("rail start").AboveAmbient.Bars);
        Assert.Equal(0, result.BypassedFlow.LitersPerHour);
        Close.Within(1e-8, (state.Pumps[0].Flow - drawn).LitersPerHour, state.FlowThrough("relief").LitersPerHour);
        Close.Within(
            1e-6,
            state.FlowThrough("relief").LitersPerHour,
            PlumbingRig
                .Relief(5)
                .FlowAt(state.PressureAt("pump outlet").AboveAmbient, system.Fuel.DensityAt(Cruise.Fuel))
                .LitersPerHour
        );
        Assert.Contains(state.Findings, f => f.What == "Relief valve 'relief' is open");
    }

    [Fact]
    public void Reducing_WhenNothingIsDrawn_IsSatisfied()
    {
        SystemState state = PlumbingRig.WithoutReturn().Solve(Workshop.Point(3000, 60, FuelCommand.Cut));

        Assert.Equal(RegulatorCondition.Seated, Assert.Single(state.Regulators).State);
        Assert.DoesNotContain(state.Findings, f => f.What.Contains("starved", StringComparison.Ordinal));
    }

    /// <summary>A pump of a fifth of the size: open to its stop, the rail is the supply less the restriction.</summary>
    [Fact]
    public void Reducing_WithTooSmallAPump_IsStarvedAndSaysSo()
    {
        FuelSystem system = PlumbingRig.WithoutReturn(0.25);
        OperatingPoint point = Workshop.Point(6000, 160, Workshop.Open(0.85));
        SystemState state = system.Solve(point);
        VolumeFlow drawn = state.FlowThrough("regulator");

        double left = PlumbingRig
            .Reducing(RegulatorReference.Manifold)
            .DownstreamPressure(
                PlumbingRig.Bar(0.6),
                state.PressureAt("filter outlet"),
                drawn,
                system.Fuel.DensityAt(point.Fuel)
            )
            .AboveAmbient.Bars;

        Assert.Equal(RegulatorCondition.FullyOpen, state.Regulators[0].State);
        Close.Within(1e-8, left, state.PressureAt("rail start").AboveAmbient.Bars);
        Assert.Contains(
            state.Findings,
            f =>
                f.Severity == Severity.Danger
                && f.What.StartsWith("Regulator 'regulator' is starved", StringComparison.Ordinal)
        );
    }

    /// <summary>Referred to a vented tank it does not follow the manifold.</summary>
    [Fact]
    public void Reducing_ReferredToTheTank_DoesNotFollowTheManifold()
    {
        FuelSystem system = PlumbingRig.WithoutReturn(1, PlumbingRig.Reducing(RegulatorReference.Tank));

        SystemState state = system.Solve(Cruise);

        Assert.Equal(0, state.Regulators[0].Reference.AboveAmbient.Bars);
        Assert.InRange(state.PressureAt("rail start").AboveAmbient.Bars, 2.9, 3.1);
    }

    /// <summary>Several points at once, in vectors, are the single ones.</summary>
    [Fact]
    public void Sweep_WithoutAReturn_IsTheSinglePoints()
    {
        FuelSystem system = PlumbingRig.WithoutReturn();
        var sweep = new Sweep(
            system,
            Cruise,
            [Workshop.Rpm(1500), Workshop.Rpm(3000), Workshop.Rpm(5000)],
            [Workshop.Kilopascals(40), Workshop.Kilopascals(80), Workshop.Kilopascals(120)],
            CancellationToken.None
        );

        foreach (Sweep.Point swept in sweep.Points)
        {
            OperatingPoint point = Workshop.Point(
                swept.Speed.RevolutionsPerMinute,
                swept.Manifold.AboveVacuum.Kilopascals,
                Workshop.Hold(1)
            );
            double alone = system.Solve(point).PressureAt("rail end").AboveAmbient.Bars;
            Close.Within(1e-9, alone, swept.State!.PressureAt("rail end").AboveAmbient.Bars);
        }
    }

    [Fact]
    public void Plan_WithTwoTanksAndNeitherAtTheRegulator_IsRefused()
    {
        var refused = Assert.Throws<ArgumentException>(() =>
            Workshop
                .Four()
                .WithNetwork(
                    new(
                        [
                            Network.Node.FixedPressure("left", default, Length.Zero),
                            Network.Node.FixedPressure("right", default, Length.Zero),
                            Network.Node.Junction("a", Length.Zero),
                            Network.Node.Junction("b", Length.Zero),
                        ],
                        [
                            new("pump", "left", "a", Workshop.Pump(1)),
                            new("regulator", "a", "b", PlumbingRig.Reducing(RegulatorReference.Tank)),
                            new("back", "b", "right", Workshop.Hose("back", 1, 8)),
                        ]
                    )
                )
        );

        Words.Says("'regulator'", refused);
    }

    // ---- Reference of another ratio -------------------------------------------------------------------------

    [Fact]
    public void Bypass_WithAReferenceOfFour_FollowsFourTimes()
    {
        BypassRegulator rising = Workshop
            .Regulator(RegulatorReference.Manifold, 3)
            .WithReferenceRatio("rising", Ratio.FromDecimalFractions(4));
        SystemState state = PlumbingRig
            .With(PlumbingRig.Usual(regulator: rising))
            .Solve(Workshop.Point(4000, 130, Workshop.Hold(0.9)));

        double byForces = rising
            .HeldPressure(PlumbingRig.Bar(0.3), state.PressureAt("return"), state.FlowThrough("regulator"))
            .AboveAmbient.Bars;

        Assert.Equal(RegulatorCondition.Regulating, state.Regulators[0].State);
        Assert.Equal(0.3, state.Regulators[0].Reference.AboveAmbient.Bars, 1e-9);
        Close.Within(1e-8, byForces, state.PressureAt("rail end").AboveAmbient.Bars);
        Assert.InRange(byForces, 4.1, 4.4);
    }

    // ---- Hoses and filters ----------------------------------------------------------------------------------

    [Fact]
    public void Hose_BentAllAlong_LosesWhatThePartSays()
    {
        Hose coil = Workshop.Hose("feed", 3, 8.7).WithCoil(Length.FromMillimeters(260));
        FuelSystem system = PlumbingRig.With(PlumbingRig.Usual(feed: coil));
        SystemState state = system.Solve(Cruise);

        double expected = coil.LossAt(
            state.FlowThrough("feed"),
            system.Fuel.DensityAt(Cruise.Fuel),
            system.Fuel.ViscosityAt(Cruise.Fuel)
        ).Kilopascals;

        double lost = (state.PressureAt("filter outlet") - state.PressureAt("rail start")).Kilopascals;

        Close.WithinOf(300, 1e-9, expected, lost);
        Assert.True(expected > 1);
    }

    [Fact]
    public void Filter_Loaded_LosesWhatThePartSays()
    {
        Filter loaded = Workshop.Filter().Loaded(PlumbingRig.Loading(), Mass.FromGrams(7));
        FuelSystem system = PlumbingRig.With(PlumbingRig.Usual(Workshop.Pump(0.8), loaded));
        SystemState state = system.Solve(Cruise);

        double expected = loaded
            .LossAt(
                state.FlowThrough("filter"),
                system.Fuel.DensityAt(Cruise.Fuel),
                system.Fuel.ViscosityAt(Cruise.Fuel)
            )
            .Kilopascals;

        double lost = (state.PressureAt("pump outlet") - state.PressureAt("filter outlet")).Kilopascals;

        Close.WithinOf(300, 1e-9, expected, lost);
    }

    [Fact]
    public void Filter_BeyondItsCollapse_IsADanger()
    {
        Filter weak = Workshop
            .Filter()
            .Loaded(PlumbingRig.Loading(), Mass.FromGrams(9))
            .WithCollapseLimit(Pressure.FromKilopascals(30));

        SystemState state = PlumbingRig.With(PlumbingRig.Usual(filter: weak)).Solve(Cruise);

        Assert.Contains(
            state.Findings,
            f =>
                f.Severity == Severity.Danger
                && f.What == "Filter 'filter' loses more than its element stands"
                && f.Limit == "0.30 bar"
        );
    }

    /// <summary>Ahead of the pump the same filter takes its loss from the inlet; behind it the inlet keeps tank pressure.</summary>
    [Fact]
    public void Filter_AheadOfThePump_LowersItsInletByItsLoss()
    {
        Filter filter = Workshop.Filter();
        Line[] usual = PlumbingRig.Usual();
        FuelSystem ahead = PlumbingRig.With(
            new("filter", "tank", "pump inlet", filter),
            new("pump", "pump inlet", "filter outlet", Workshop.Pump(0.8)),
            usual[2],
            usual[3],
            usual[4],
            usual[5]
        );

        SystemState state = ahead.Solve(Cruise);
        Pressure loss = filter.LossAt(
            state.FlowThrough("filter"),
            ahead.Fuel.DensityAt(Cruise.Fuel),
            ahead.Fuel.ViscosityAt(Cruise.Fuel)
        );

        Close.WithinOf(100, 1e-9, -loss.Kilopascals, state.PressureAt("pump inlet").AboveAmbient.Kilopascals);
    }

    // ---- Pumps ----------------------------------------------------------------------------------------------

    /// <summary>Two unlike pumps side by side: the network finds the flows that the bank's curve has.</summary>
    [Fact]
    public void Pumps_SideBySide_GiveWhatTheBankSays()
    {
        Line[] usual = PlumbingRig.Usual();
        FuelSystem system = PlumbingRig.With([
            usual[0],
            new Line("second pump", "tank", "pump outlet", Workshop.Pump(0.6)),
            .. usual[1..],
        ]);
        SystemState state = system.Solve(Cruise);
        ElectricPotential volts = state.Pumps[0].Voltage;

        PumpCurve bank = PumpCombination.InParallel(
            [Workshop.Pump(1).CurveAt(volts), Workshop.Pump(0.6).CurveAt(volts)],
            Workshop.Invented
        );

        // The bank's curve keeps flows and slopes of its pumps at its points, and is one of its own between.
        double both = (state.Pumps[0].Flow + state.Pumps[1].Flow).LitersPerHour;
        Close.Within(1e-5, bank.FlowAt(state.Pumps[0].PressureRise).LitersPerHour, both);
        Close.Within(1e-8, both, state.FlowThrough("filter").LitersPerHour);
    }

    /// <summary>A lift pump ahead of the other: one flow, and the rises add up.</summary>
    [Fact]
    public void Pumps_InARow_AddTheirRises()
    {
        Line[] usual = PlumbingRig.Usual();
        FuelSystem system = PlumbingRig.With([
            new Line("lift pump", "tank", "pump inlet", Workshop.Pump(1)),
            new Line("pump", "pump inlet", "pump outlet", Workshop.Pump(1)),
            .. usual[1..],
        ]);
        SystemState state = system.Solve(Cruise);

        Close.Within(1e-8, state.Pumps[0].Flow.LitersPerHour, state.Pumps[1].Flow.LitersPerHour);
        Close.Within(
            1e-8,
            state.PressureAt("pump outlet").AboveAmbient.Bars,
            (state.Pumps[0].PressureRise + state.Pumps[1].PressureRise).Bars
        );
    }

    /// <summary>At part duty the pump gives less, draws less, and the evidence says that its curve is an estimate.</summary>
    [Fact]
    public void Pump_Chopped_DrawsLessAndIsCalledAnEstimate()
    {
        Pump chopped = Workshop.Pump(1).WithDrive("chopped", PumpDrive.ByDuty(Ratio.FromPercent(80)));
        SystemState full = PlumbingRig.With(PlumbingRig.Usual()).Solve(Cruise);
        SystemState part = PlumbingRig.With(PlumbingRig.Usual(pump: chopped)).Solve(Cruise);

        Assert.True(part.Pumps[0].Flow < full.Pumps[0].Flow);
        Assert.True(part.Pumps[0].Current < full.Pumps[0].Current);
        Assert.Contains(
            "A pump curve is an estimate: Pump 'chopped' at a duty of 80 %: a chopped supply taken by its mean.",
            part.Evidence.Estimates
        );
        Assert.DoesNotContain(full.Evidence.Estimates, e => e.StartsWith("A pump curve", StringComparison.Ordinal));
    }

    /// <summary>The usual pump was measured at two voltages and runs between them; one of a single curve does not.</summary>
    [Fact]
    public void Pump_BetweenMeasuredVoltages_IsSaidToBeUnproven()
    {
        const string unproven =
            "A pump runs between two measured voltages, where flow and current are taken as linear in voltage: not proven.";
        Pump single = new Pump("single", [Workshop.Pump(1).Curves[1]], Workshop.Gasoline, Workshop.Invented).WithDrive(
            "held",
            PumpDrive.BySpeed(Ratio.FromPercent(95), ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(16))
        );

        Assert.Contains(unproven, PlumbingRig.With(PlumbingRig.Usual()).Solve(Cruise).Evidence.Estimates);
        Assert.DoesNotContain(
            unproven,
            PlumbingRig.With(PlumbingRig.Usual(pump: single)).Solve(Cruise).Evidence.Estimates
        );
    }

    /// <summary>A held speed does not care for the voltage: with half of it lost, the flow stays.</summary>
    [Fact]
    public void Pump_OfControlledSpeed_HoldsItsFlowAtAnyVoltage()
    {
        Pump held = new Pump("held", [Workshop.Pump(1).Curves[1]], Workshop.Gasoline, Workshop.Invented).WithDrive(
            "held",
            PumpDrive.BySpeed(Ratio.FromPercent(95), ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(16))
        );
        FuelSystem system = PlumbingRig.With(PlumbingRig.Usual(pump: held));

        SystemState high = system.Solve(Workshop.Point(3000, 60, FuelCommand.Cut));
        SystemState low = system.Solve(Workshop.Point(3000, 60, FuelCommand.Cut, volts: 10));

        Close.Within(1e-9, high.Pumps[0].Flow.LitersPerHour, low.Pumps[0].Flow.LitersPerHour);
        Assert.True(low.Pumps[0].Current > high.Pumps[0].Current);
    }

    [Fact]
    public void Pump_Worn_LeavesLessForTheRegulator()
    {
        Pump worn = Workshop
            .Pump(1)
            .Worn("worn", new PumpWear(Ratio.FromPercent(80), VolumeFlow.FromLitersPerHour(8), Pressure.FromBars(1)));
        SystemState good = PlumbingRig.With(PlumbingRig.Usual()).Solve(Cruise);
        SystemState tired = PlumbingRig.With(PlumbingRig.Usual(pump: worn)).Solve(Cruise);

        double lost = (good.Regulators[0].BypassedFlow - tired.Regulators[0].BypassedFlow).LitersPerHour;

        // A fifth of 230 to 260 L/h, and 8 L/h for each of about 3 bar; the rail falls a little with the bypassed flow.
        Assert.InRange(lost, 60, 85);
        Assert.Contains(tired.Evidence.Estimates, e => e.Contains("wear: 80 %", StringComparison.Ordinal));
    }
}

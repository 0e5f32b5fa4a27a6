using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>
/// Systems laid out unlike the bundled ones, held to what follows from conservation of volume and from the parts by hand: the
/// numbers that an assessment rests on.
/// </summary>
public sealed class OtherLayoutsTests
{
    private static readonly OperatingPoint Hard = Workshop.Point(6000, 100, Workshop.Hold(0.9));

    // ---- Without a return, two banks -------------------------------------------------------------------------

    private static FuelSystem TwoBanks(double pumpShare) =>
        PlumbingRig.With(
            new("pump", "tank", "pump outlet", Workshop.Pump(pumpShare)),
            new("relief", "pump outlet", "tank", PlumbingRig.Relief(6)),
            new("filter", "pump outlet", "filter outlet", Workshop.Filter()),
            new("regulator", "filter outlet", "Y", PlumbingRig.Reducing(RegulatorReference.Manifold)),
            new("left bank", "Y", "rail start", Workshop.Hose("left", 0.5, 7)),
            new("right bank", "Y", "rail end", Workshop.Hose("right", 0.9, 7))
        );

    /// <summary>Each bank carries its own two injectors, and both together all that is drawn.</summary>
    [Fact]
    public void TwoBanks_EachCarriesItsInjectors()
    {
        SystemState state = TwoBanks(1).Solve(Hard);
        double Drawn(string node) => state.Injectors.Where(i => i.Seat.Node == node).Sum(i => i.MeanFlow.LitersPerHour);

        Close.WithinOf(10, 1e-6, Drawn("rail start"), state.FlowThrough("left bank").LitersPerHour);
        Close.WithinOf(10, 1e-6, Drawn("rail end"), state.FlowThrough("right bank").LitersPerHour);
        Assert.True(state.PressureAt("rail end").Si < state.PressureAt("rail start").Si);
    }

    /// <summary>
    /// What the pump could still give: with the engine drawing so much more that the regulator is open to its stop, no less
    /// pressure is held than before. Solved again with jets that draw the reserve, the regulator is at its end.
    /// </summary>
    [Fact]
    public void TwoBanks_ReserveIsWhatAJetMayDrawBeforeTheRegulatorStarves()
    {
        FuelSystem system = TwoBanks(1);
        SystemState state = system.Solve(Hard);
        double reserve = state.PumpReserve!.Value.LitersPerHour;

        Assert.True(reserve > 1);
        Assert.Equal(RegulatorCondition.Regulating, WithJet(0.8 * reserve).Regulators[0].State);
        Assert.Equal(RegulatorCondition.FullyOpen, WithJet(1.3 * reserve).Regulators[0].State);

        SystemState WithJet(double litersPerHour) =>
            system
                .WithNetwork(
                    new(
                        system.Network.Nodes,
                        [
                            .. system.Network.Lines,
                            new(
                                "test jet",
                                "Y",
                                "tank",
                                new Jet(
                                    "test jet",
                                    VolumeFlow.FromLitersPerHour(litersPerHour),
                                    state.PressureAt("Y").AboveAmbient,
                                    system.Fuel.DensityAt(Hard.Fuel),
                                    Workshop.Invented
                                )
                            ),
                        ]
                    )
                )
                .Solve(Hard);
    }

    // ---- Two switched pumps beside a third, all from one surge tank -------------------------------------------

    private static FuelSystem TwoSwitched(double liftShare)
    {
        FuelSystem one = SurgeTankSystemTests.With(liftShare);
        Line Joining(string name, double kilopascals) =>
            new Line(name, "surge", "pump outlet", Workshop.Pump(0.6)).SwitchedBy(
                PumpSwitch.ManifoldAbove(
                    new(Pressure.FromKilopascals(kilopascals)),
                    new(Pressure.FromKilopascals(kilopascals - 10)),
                    false
                )
            );
        return one.WithNetwork(
            new(one.Network.Nodes, [.. one.Network.Lines, Joining("second", -30), Joining("third", -10)])
        );
    }

    /// <summary>Ambient is 100 kPa: the second joins above 70 kPa, the third above 90.</summary>
    [Theory]
    [InlineData(60, 2)]
    [InlineData(80, 3)]
    [InlineData(98, 4)]
    public void TwoSwitched_JoinOneAfterTheOther(double kilopascals, int running)
    {
        SystemState state = TwoSwitched(1).Solve(Workshop.Point(5000, kilopascals, Workshop.Hold(1)));

        Assert.Equal(running, state.Pumps.Length);
        double pumped = state.Pumps.Where(p => p.Line != "lift pump").Sum(p => p.Flow.LitersPerHour);
        double drawn = state.Injectors.Sum(i => i.MeanFlow.LitersPerHour);
        SurgeTankBalance tank = Assert.Single(state.SurgeTanks);
        Close.WithinOf(10, 1e-6, pumped, tank.DrawnFlow.LitersPerHour);
        Close.WithinOf(10, 1e-6, pumped - drawn, tank.ReturnFlow.LitersPerHour);
        Close.WithinOf(10, 1e-6, pumped - drawn, state.PumpReserve!.Value.LitersPerHour);
        Close.WithinOf(10, 1e-6, state.Pumps[0].Flow.LitersPerHour - drawn, tank.OverflowFlow.LitersPerHour);
        Assert.Equal("lift pump", Assert.Single(tank.LiftPumps));
    }

    /// <summary>
    /// A lift pump that brings just a little more than is burned: the tank does not drain yet, and nothing is to spare.
    /// </summary>
    [Fact]
    public void TwoSwitched_ALiftPumpWithLittleToSpare_IsAWarning()
    {
        SystemState strong = TwoSwitched(1).Solve(Hard);
        double drawn = strong.Injectors.Sum(i => i.MeanFlow.LitersPerHour);
        double share = 1.05 * drawn / strong.Pumps[0].Flow.LitersPerHour;
        SystemState weak = TwoSwitched(share).Solve(Hard);
        bool Lifted(Finding f) => f.Code == FindingCode.PumpReserveLow && f.Part == "surge";

        Assert.DoesNotContain(strong.Findings, Lifted);
        Assert.False(weak.SurgeTanks[0].DrainsWithLift);
        Finding found = Assert.Single(weak.Findings, Lifted);
        Assert.Equal(Severity.Warning, found.Severity);
        Close.WithinOf(
            drawn,
            1e-6,
            weak.SurgeTanks[0].OverflowFlow.LitersPerHour,
            ((VolumeFlow)found.ValueQuantity!).LitersPerHour
        );
        // By common practice 15 % of what the tank loses, which is what is burned.
        Close.Within(1e-6, 0.15 * drawn, ((VolumeFlow)found.LimitQuantity!).LitersPerHour);
        Assert.Contains(
            FormattableString.Invariant($"at least {0.15 * drawn:0.0} L/h"),
            found.Limit,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(
            TwoSwitched(0.8 * share).Solve(Hard).Findings,
            f => Lifted(f) && f.Severity == Severity.Warning
        );
    }

    // ---- A bypass regulator ahead of the rail -----------------------------------------------------------------

    private static FuelSystem BypassAhead(double feedBore) =>
        PlumbingRig.With(
            new("pump", "tank", "pump outlet", Workshop.Pump(1)),
            new("filter", "pump outlet", "filter outlet", Workshop.Filter()),
            new("regulator", "filter outlet", "return", Workshop.Regulator(RegulatorReference.Manifold, 3)),
            new("return hose", "return", "tank", Workshop.Hose("return", 2, 8)),
            new("feed", "filter outlet", "rail start", Workshop.Hose("feed", 3, feedBore)),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12))
        );

    /// <summary>The feed carries what is drawn and no more; what returns is what the pump has to spare.</summary>
    [Fact]
    public void BypassAhead_FeedCarriesWhatIsDrawn()
    {
        SystemState state = BypassAhead(8).Solve(Hard);
        double drawn = state.Injectors.Sum(i => i.MeanFlow.LitersPerHour);

        Close.WithinOf(10, 1e-6, drawn, state.FlowThrough("feed").LitersPerHour);
        Close.WithinOf(10, 1e-6, state.Pumps[0].Flow.LitersPerHour - drawn, state.PumpReserve!.Value.LitersPerHour);
    }

    /// <summary>
    /// The regulator holds its pressure at the filter, not at the rail: what a narrow feed takes is missing there, and is said.
    /// </summary>
    [Fact]
    public void BypassAhead_ANarrowFeed_IsPressureNotAsTold()
    {
        SystemState wide = BypassAhead(10).Solve(Hard);
        SystemState narrow = BypassAhead(2.5).Solve(Hard);

        Assert.DoesNotContain(wide.Findings, f => f.Code == FindingCode.PressureNotAsTold);
        Assert.Contains(narrow.Findings, f => f.Code == FindingCode.PressureNotAsTold);
        Assert.True(narrow.Regulators[0].Inlet!.Value.Si > narrow.PressureAt("rail end").Si + 20e3);
    }
}

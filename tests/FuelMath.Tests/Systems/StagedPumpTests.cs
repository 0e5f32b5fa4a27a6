using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>A second pump that joins: which state lasts, and what is refused.</summary>
public sealed class StagedPumpTests
{
    private static readonly FuelSystem One = PlumbingRig.With(PlumbingRig.Usual());

    private static readonly FuelSystem Both = PlumbingRig.With([.. PlumbingRig.Usual(), Second(1)]);

    private static readonly OperatingPoint Cruise = Workshop.Point(3000, 60, Workshop.Hold(1));

    private static readonly OperatingPoint Full = Workshop.Point(6000, 100, Workshop.Hold(0.85));

    /// <summary>At the manifold's pressure of the point, given: the state is that of the system with, or without, the pump.</summary>
    [Theory]
    [InlineData(60, false)]
    [InlineData(100, true)]
    public void Solve_ByTheManifold_IsTheSystemWithOrWithoutThePump(double kilopascals, bool joins)
    {
        OperatingPoint point = Workshop.Point(3000, kilopascals, Workshop.Hold(1));
        StagedPumpState staged = Boost(join: -10, leave: -30, wasRunning: !joins).Solve(point);
        SystemState same = (joins ? Both : One).Solve(point);

        Assert.Equal(joins, staged.IsRunning);
        Assert.Equal(joins ? 2 : 1, staged.State.Pumps.Length);
        Assert.Equal("", staged.Other);
        foreach (PlanNode node in One.Plan.Nodes)
        {
            Assert.Equal(same.PressureAt(node.Name), staged.State.PressureAt(node.Name));
        }
    }

    /// <summary>The pump's current is off the circuit while it stands still: the other one gets more voltage.</summary>
    [Fact]
    public void Solve_WithThePumpStopped_LeavesTheOtherMoreVoltage()
    {
        ElectricPotential stopped = Boost(10, 0, false).Solve(Cruise).State.Pumps[0].Voltage;
        ElectricPotential running = Boost(-60, -70, false).Solve(Cruise).State.Pumps[0].Voltage;

        Assert.True(stopped.Volts > running.Volts + 0.1);
    }

    /// <summary>Minus 40 kPa lies between minus 50 and minus 20: what was running decides, and the state says so.</summary>
    [Theory]
    [InlineData(true, "It would last stopped, too; what was running decides.")]
    [InlineData(false, "It would last running, too; what was running decides.")]
    public void Solve_BetweenTheThresholds_StaysAsItWas(bool wasRunning, string other)
    {
        StagedPumpState state = Boost(join: -20, leave: -50, wasRunning).Solve(Cruise);

        Assert.Equal(wasRunning, state.IsRunning);
        Assert.Equal(other, state.Other);
    }

    /// <summary>A speed that goes up and down again draws the loop of a switch with hysteresis.</summary>
    [Fact]
    public void After_UpAndDown_DrawsALoop()
    {
        StagedPump staged = new(
            Both,
            "second",
            PumpSwitch.TotalDrawAbove(VolumeFlow.FromLitersPerHour(30), VolumeFlow.FromLitersPerHour(15), false)
        );
        var runs = new List<bool>();
        foreach (double rpm in new[] { 1000.0, 3000, 6000, 3000, 1000 })
        {
            StagedPumpState state = staged.Solve(Workshop.Point(rpm, 100, Workshop.Hold(1)));
            double draw = state.State.Injectors.Sum(i => i.MeanFlow.LitersPerHour);
            Assert.True(state.IsRunning ? draw >= 15 : draw <= 30);
            staged = staged.After(state.IsRunning);
            runs.Add(state.IsRunning);
        }

        Assert.Equal([false, false, true, true, false], runs);
    }

    [Fact]
    public void Solve_ByTheFlowOfALine_SaysWhatItSees()
    {
        StagedPump staged = new(
            Both,
            "second",
            PumpSwitch.FlowAbove("feed", VolumeFlow.FromLitersPerHour(1), VolumeFlow.Zero, wasRunning: false)
        );
        StagedPumpState state = staged.Solve(Cruise);

        Assert.True(state.IsRunning);
        Assert.StartsWith("With 'second' stopped the flow in 'feed' is ", state.Reason, StringComparison.Ordinal);
        Assert.Contains(
            "which starts it: it joins above 1 L/h and leaves below 0 L/h.",
            state.Reason,
            StringComparison.Ordinal
        );
    }

    /// <summary>
    /// A pump of a seventh of the size, alone, lets the rail sag, a second one holds it. A switch with its thresholds between the two
    /// pressures starts the pump that it then stops.
    /// </summary>
    [Fact]
    public void Solve_WhereTheSwitchWouldChatter_RefusesWithBothPressures()
    {
        Line[] weak = PlumbingRig.Usual(pump: Workshop.Pump(0.14));
        FuelSystem both = PlumbingRig.With([.. weak, Second(0.5)]);
        double alone = PlumbingRig.With(weak).Solve(Full).PressureAt("rail start").AboveAmbient.Kilopascals;
        double together = both.Solve(Full).PressureAt("rail start").AboveAmbient.Kilopascals;
        Assert.True(together > alone + 20);
        GaugePressure between = new(Pressure.FromKilopascals((alone + together) / 2));
        StagedPump staged = new(both, "second", PumpSwitch.PressureBelow("rail start", between, between, false));

        NoSolutionException refusal = Assert.Throws<NoSolutionException>(() => staged.Solve(Full));

        Assert.Contains("It lasts neither running nor stopped.", refusal.Message, StringComparison.Ordinal);
        Assert.Contains($"is {alone:0.###} kPa gauge, which starts it", refusal.Message, StringComparison.Ordinal);
        Assert.Contains($"is {together:0.###} kPa gauge, which stops it", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Constructor_WithTheOnlyPump_IsRefused() =>
        Refused(
            "A staged pump joins another; 'pump' is the only one.",
            () => new StagedPump(One, "pump", PumpSwitch.PressureBelow("rail start", Gauge(200), Gauge(250), false))
        );

    [Fact]
    public void Constructor_WithALineThatIsNoPump_IsRefused() =>
        Refused(
            "Must be one of: pump, second; it was 'feed'.",
            () => new StagedPump(Both, "feed", PumpSwitch.PressureBelow("rail start", Gauge(200), Gauge(250), false))
        );

    [Fact]
    public void Constructor_WatchingAnUnknownNode_IsRefused() =>
        Refused(
            "A switch must watch one of: tank, pump outlet, filter outlet, rail start, rail end, return, manifold; it was 'rail'.",
            () => new StagedPump(Both, "second", PumpSwitch.PressureBelow("rail", Gauge(200), Gauge(250), false))
        );

    /// <summary>The flow of the pump itself is gone when it stands still: no switch can watch it.</summary>
    [Fact]
    public void Constructor_WatchingItsOwnFlow_IsRefused() =>
        Refused(
            "A switch must watch one of: pump, filter, feed, rail, regulator, return hose; it was 'second'.",
            () => new StagedPump(Both, "second", PumpSwitch.FlowAbove("second", default, default, false))
        );

    [Fact]
    public void Constructor_WithANodeNamedAsTheManifold_IsRefused() =>
        Refused(
            "A switch may not watch 'manifold' where a node of the plan is called so; rename the node.",
            () =>
                new StagedPump(
                    Both.WithPlan(
                        new(
                            [.. Both.Plan.Nodes, PlanNode.Junction("manifold", Length.Zero)],
                            [.. Both.Plan.Lines, new("stub", "rail end", "manifold", Workshop.Hose("stub", 0.1, 8))]
                        )
                    ),
                    "second",
                    PumpSwitch.PressureAbove("manifold", Gauge(0), Gauge(-10), false)
                )
        );

    private static Line Second(double share) => new("second", "tank", "pump outlet", Workshop.Pump(share));

    private static StagedPump Boost(double join, double leave, bool wasRunning) =>
        new(Both, "second", PumpSwitch.PressureAbove(StagedPump.Manifold, Gauge(join), Gauge(leave), wasRunning));

    private static GaugePressure Gauge(double kilopascals) => new(Pressure.FromKilopascals(kilopascals));

    private static void Refused(string words, Func<StagedPump> action) =>
        Assert.StartsWith(words, Assert.Throws<ArgumentException>(action).Message, StringComparison.Ordinal);
}

using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>A second pump of a system that joins: which state lasts, and what is refused.</summary>
public sealed class SwitchedPumpSystemTests
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
        SystemState state = Boost(join: -10, leave: -30, wasRunning: !joins).Solve(point);
        SystemState same = (joins ? Both : One).Solve(point);

        Assert.Equal(joins, Runs(state));
        Assert.Equal(joins ? 2 : 1, state.Pumps.Length);
        Assert.Equal(2, state.Remarks.Length);
        foreach (Network.Node node in One.Network.Nodes)
        {
            Close.WithinOf(1e5, 1e-9, same.PressureAt(node.Name).Si, state.PressureAt(node.Name).Si);
        }
    }

    /// <summary>A pump that stands still draws nothing: its own suction hose and inlet stand at the pressure of the tank.</summary>
    [Fact]
    public void Solve_StoppedWithItsOwnSuction_LeavesTheRestAsWithoutIt()
    {
        FuelSystem own = PlumbingRig.With([
            .. PlumbingRig.Usual(),
            new("own suction", "tank", "own inlet", Workshop.Hose("own suction", 1, 4)),
            new Line("second", "own inlet", "pump outlet", Workshop.Pump(1)).SwitchedBy(
                PumpSwitch.ManifoldAbove(Gauge(10), Gauge(0), false)
            ),
        ]);
        SystemState state = own.Solve(Cruise);
        SystemState without = One.Solve(Cruise);

        Assert.Equal(0, state.FlowThrough("second").LitersPerHour);
        Assert.Equal(0, state.PressureAt("own inlet").AboveAmbient.Pascals, 1e-3);
        foreach (Network.Node node in One.Network.Nodes)
        {
            Close.WithinOf(1e5, 1e-9, without.PressureAt(node.Name).Si, state.PressureAt(node.Name).Si);
        }
    }

    /// <summary>Its check valve is shut both ways: the pressure of the tank or of a pump ahead of it feeds nothing through it.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Solve_ThroughAStoppedPump_FeedsNothing(bool pumpAhead)
    {
        Line second = new Line("second", pumpAhead ? "between" : "tank", "pump outlet", Workshop.Pump(1)).SwitchedBy(
            PumpSwitch.ManifoldAbove(Gauge(10), Gauge(0), false)
        );
        Line[] usual = PlumbingRig.Usual();
        FuelSystem system = PlumbingRig.With([
            .. pumpAhead ? [new("pump", "tank", "between", Workshop.Pump(1))] : Array.Empty<Line>(),
            second,
            .. usual[1..],
        ]);

        var refused = Assert.Throws<NoSolutionException>(() => system.Solve(Cruise));

        Assert.Equal(RefusalCode.NoPumpSetLasts, Refusal.Of(refused)!.Code);
        Assert.Contains("with 'second' stopped, there is no state", refused.Message, StringComparison.Ordinal);
        Assert.Contains("no fuel can pass", refused.Message, StringComparison.Ordinal);
    }

    /// <summary>The pump's current is off the circuit while it stands still: the other one gets more voltage.</summary>
    [Fact]
    public void Solve_WithThePumpStopped_LeavesTheOtherMoreVoltage()
    {
        ElectricPotential stopped = Boost(10, 0, false).Solve(Cruise).Pumps[0].Voltage;
        ElectricPotential running = Boost(-60, -70, false).Solve(Cruise).Pumps[0].Voltage;

        Assert.True(stopped.Volts > running.Volts + 0.1);
    }

    /// <summary>Minus 40 kPa lies between minus 50 and minus 20: what was running decides, and the state says so.</summary>
    [Theory]
    [InlineData(true, "It would last with 'second' stopped, too; what was running decides.")]
    [InlineData(false, "It would last with 'second' running, too; what was running decides.")]
    public void Solve_BetweenTheThresholds_StaysAsItWas(bool wasRunning, string other)
    {
        SystemState state = Boost(join: -20, leave: -50, wasRunning).Solve(Cruise);

        Assert.Equal(wasRunning, Runs(state));
        Assert.Contains(other, state.Remarks);
    }

    /// <summary>A speed that goes up and down again draws the loop of a switch with hysteresis.</summary>
    [Fact]
    public void After_UpAndDown_DrawsALoop()
    {
        FuelSystem system = Switched(
            PumpSwitch.TotalDrawAbove(VolumeFlow.FromLitersPerHour(30), VolumeFlow.FromLitersPerHour(15), false)
        );
        var runs = new List<bool>();
        foreach (double rpm in new[] { 1000.0, 3000, 6000, 3000, 1000 })
        {
            SystemState state = system.Solve(Workshop.Point(rpm, 100, Workshop.Hold(1)));
            double draw = state.Injectors.Sum(i => i.MeanFlow.LitersPerHour);
            Assert.True(Runs(state) ? draw >= 15 : draw <= 30);
            system = system.After(state);
            runs.Add(Runs(state));
        }

        Assert.Equal([false, false, true, true, false], runs);
    }

    [Fact]
    public void Solve_ByTheFlowOfALine_SaysWhatItSees()
    {
        FuelSystem system = Switched(
            PumpSwitch.FlowAbove("feed", VolumeFlow.FromLitersPerHour(1), VolumeFlow.Zero, wasRunning: false)
        );
        SystemState state = system.Solve(Cruise);

        Assert.True(Runs(state));
        Assert.StartsWith("'second' is running: the flow in 'feed' is ", state.Remarks[0], StringComparison.Ordinal);
        Assert.StartsWith(
            "With 'second' stopped, as it was, the flow in 'feed' is ",
            state.Remarks[1],
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "which starts 'second' (it joins above 1 L/h and leaves below 0 L/h).",
            state.Remarks[1],
            StringComparison.Ordinal
        );
    }

    /// <summary>
    /// A pump of a seventh of the size, alone, lets the rail sag, a second one holds it. A switch with its thresholds between
    /// the two pressures starts the pump that it then stops.
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
        FuelSystem chatters = Switched(both, PumpSwitch.PressureBelow("rail start", between, between, false));

        NoSolutionException refusal = Assert.Throws<NoSolutionException>(() => chatters.Solve(Full));

        Assert.Contains("No set of running pumps lasts", refusal.Message, StringComparison.Ordinal);
        Assert.Contains(
            FormattableString.Invariant($"is {alone:0.###} kPa gauge, which starts 'second'"),
            refusal.Message,
            StringComparison.Ordinal
        );
        Words.Says($"{together:0.###} kPa, 'second'", refusal);
        Sweep.Point swept = Assert.Single(Swept(chatters, Full, [6000], [100]).Points);
        Assert.Equal(refusal.Message, swept.Refusal!.Message);
    }

    /// <summary>Each point of a sweep is the state of its point, with the words of why the pump runs or not.</summary>
    [Fact]
    public void Sweep_OfASwitchedPump_IsTheSameAsEachPoint()
    {
        FuelSystem system = Boost(join: -20, leave: -50, wasRunning: false);
        Sweep sweep = Swept(system, Cruise, [1500, 3000, 4500, 6000], [40, 70, 90]);

        Assert.Equal([false, true], sweep.Points.Select(p => Runs(p.State!)).Distinct().Order());
        foreach (Sweep.Point point in sweep.Points)
        {
            SystemState alone = system.Solve(Cruise.At(point.Speed, point.Manifold));
            Assert.Equal(alone.Remarks.AsEnumerable(), point.State!.Remarks.AsEnumerable());
            Assert.Equal(alone.PressureAt("rail start"), point.State.PressureAt("rail start"));
            Assert.Equal(alone.Lambda, point.State.Lambda);
        }
    }

    /// <summary>What varies does not reach the manifold's pressure: the run is that of the system with, or without, the pump.</summary>
    [Theory]
    [InlineData(60, false)]
    [InlineData(100, true)]
    public void MonteCarlo_ByTheManifold_IsThatWithOrWithoutThePump(double kilopascals, bool joins)
    {
        OperatingPoint point = Workshop.Point(6000, kilopascals, Workshop.Hold(1));
        FuelSystem system = Boost(join: -10, leave: -30, wasRunning: !joins);
        SystemMonteCarlo run = Varied(system, point);
        SystemMonteCarlo same = Varied(
            system.Running(SwitchedPump.Of(system.Network.Lines.Select(l => (l.Name, l.Switch))), joins ? 1 : 0),
            point
        );

        Assert.Equal(0, run.RefusedCount);
        Assert.Equal(same.PressureAt("rail start").Mean, run.PressureAt("rail start").Mean);
        Assert.Equal(same.MeanLambda().StandardDeviation, run.MeanLambda().StandardDeviation);
    }

    /// <summary>A pipe between a stopped pump's outlet and a check valve has no pressure that anything determines.</summary>
    [Fact]
    public void MonteCarlo_ANodeCutOff_IsRefusedAndNotANumber()
    {
        FuelSystem car = SystemDocument.Read(Documents.TestFiles.System("circuit-car"));
        FuelSystem closed = car.WithNetwork(
            new(
                car.Network.Nodes,
                car.Network.Lines.Select(l =>
                    l.Name == "second outlet hose"
                        ? new Line(
                            l.Name,
                            l.From,
                            l.To,
                            new CheckValve(
                                Pressure.FromKilopascals(2),
                                Pressure.FromKilopascals(1),
                                VolumeFlow.FromLitersPerHour(100),
                                PlumbingRig.Petrol
                            )
                        )
                        : l
                )
            )
        );
        OperatingPoint idle = OperatingListDocument
            .Read(Documents.TestFiles.Points("circuit-car"))
            .First(p => p.Name == "idle, hot");
        SystemMonteCarlo run = Varied(closed, idle);

        var refused = Assert.Throws<InvalidOperationException>(() => run.PressureAt("second outlet"));
        Assert.Equal(
            "Every way to 'second outlet' is shut in 200 of 200 trials: its pressure is not determined there.",
            refused.Message
        );
        Assert.True(double.IsFinite(run.PressureAt("rail rear").StandardDeviation.Pascals));
    }

    [Fact]
    public void Network_OfSwitchedLines_FollowsItsConditions()
    {
        Network network = new(
            [Network.Node.FixedPressure("tank", default, default), Network.Node.Junction("rail", default, default)],
            [
                new("first", "tank", "rail", Workshop.Pump(1)),
                new Line("second", "tank", "rail", Workshop.Pump(1)).SwitchedBy(
                    PumpSwitch.ManifoldAbove(Gauge(0), Gauge(-10), false)
                ),
                new("jet", "rail", "tank", PlumbingParts.Jet()),
            ]
        );
        NetworkConditions At(double kilopascals) =>
            new NetworkConditions(PlumbingRig.Petrol, DynamicViscosity.FromMillipascalSeconds(0.45))
                .WithPumpVoltage(ElectricPotential.FromVolts(12))
                .WithManifold(Gauge(kilopascals));

        Assert.Equal(Network.LineCondition.Stopped, network.Solve(At(-40)).ConditionOf("second"));
        NetworkState boosted = network.Solve(At(20));
        Assert.Equal(Network.LineCondition.Running, boosted.ConditionOf("second"));
        Assert.Equal(Network.LineCondition.Running, network.After(boosted).Solve(At(-5)).ConditionOf("second"));
        Assert.Equal(Network.LineCondition.Stopped, network.Solve(At(-5)).ConditionOf("second"));
        Words.Refused<ArgumentException>(
            "conditions",
            "'second'",
            () =>
                network.Solve(
                    new NetworkConditions(
                        PlumbingRig.Petrol,
                        DynamicViscosity.FromMillipascalSeconds(0.45)
                    ).WithPumpVoltage(ElectricPotential.FromVolts(12))
                )
        );
    }

    [Fact]
    public void WriteThenRead_KeepsTheSwitch()
    {
        foreach (
            PumpSwitch by in new[]
            {
                PumpSwitch.ManifoldAbove(Gauge(-20), Gauge(-50), true),
                PumpSwitch.PressureBelow("rail start", Gauge(200), Gauge(250), false),
                PumpSwitch.FlowAbove("feed", VolumeFlow.FromLitersPerHour(20), default, false),
                PumpSwitch.TotalDrawAbove(VolumeFlow.FromLitersPerHour(20), default, false),
            }
        )
        {
            string text = SystemDocument.Write(Switched(by));
            FuelSystem read = SystemDocument.Read(text);

            Assert.Equal(text, SystemDocument.Write(read));
            Assert.Equal(Switched(by).Solve(Full).Remarks.AsEnumerable(), read.Solve(Full).Remarks.AsEnumerable());
        }
    }

    [Fact]
    public void SwitchedBy_ALineWithoutPump_IsRefused() =>
        Refused(
            "Only a pump joins and leaves; line 'feed' holds none.",
            () => new Line("feed", "a", "b", Workshop.Hose("feed", 1, 8)).SwitchedBy(Low("a"))
        );

    [Fact]
    public void FuelSystem_WatchingAnUnknownNode_IsRefused() =>
        Refused(
            "Pump 'second' is switched by the pressure at 'rail', which is not there.",
            () => Switched(Low("rail"))
        );

    /// <summary>The flow of the pump itself is gone when it stands still: no switch can watch it.</summary>
    [Fact]
    public void FuelSystem_WatchingItsOwnFlow_IsRefused() =>
        Refused(
            "The switch of pump 'second' watches the pump's own flow, which is gone when it stands still.",
            () => Switched(PumpSwitch.FlowAbove("second", default, default, false))
        );

    private static Line Second(double share) => new("second", "tank", "pump outlet", Workshop.Pump(share));

    private static PumpSwitch Low(string node) => PumpSwitch.PressureBelow(node, Gauge(200), Gauge(250), false);

    private static FuelSystem Boost(double join, double leave, bool wasRunning) =>
        Switched(PumpSwitch.ManifoldAbove(Gauge(join), Gauge(leave), wasRunning));

    private static FuelSystem Switched(PumpSwitch by) => Switched(Both, by);

    private static FuelSystem Switched(FuelSystem system, PumpSwitch by) =>
        system.WithNetwork(
            new(system.Network.Nodes, system.Network.Lines.Select(l => l.Name == "second" ? l.SwitchedBy(by) : l))
        );

    private static bool Runs(SystemState state) => state.Network.ConditionOf("second") != Network.LineCondition.Stopped;

    private static Sweep Swept(FuelSystem system, OperatingPoint point, double[] rpm, double[] kilopascals) =>
        new(
            system,
            point,
            rpm.Select(n => RotationalSpeed.FromRevolutionsPerMinute(n)),
            kilopascals.Select(p => new AbsolutePressure(Pressure.FromKilopascals(p))),
            CancellationToken.None
        );

    private static SystemMonteCarlo Varied(FuelSystem system, OperatingPoint point) =>
        new(
            system,
            point,
            [
                UncertainInput.PumpFlow(Ratio.FromPercent(3), SpreadShape.Normal, Workshop.Invented),
                UncertainInput.FuelDensity(Ratio.FromPercent(1), SpreadShape.Normal, Workshop.Invented),
            ],
            200,
            1,
            null,
            CancellationToken.None
        );

    private static GaugePressure Gauge(double kilopascals) => new(Pressure.FromKilopascals(kilopascals));

    private static void Refused(string words, Func<object> action) =>
        Assert.StartsWith(words, Assert.Throws<ArgumentException>(action).Message, StringComparison.Ordinal);
}

using FsCheck.Xunit;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>
/// A second pump that joins and leaves, by hand. u counts 100 L/h, pressures are in kPa: each pump gives 500 - 100 u, the
/// rail loses k u to a tank. One pump alone: u = 500 / (100 + k); both: u = 500 / (50 + k).
/// </summary>
public sealed class PumpSwitchTests
{
    private const double Exact = 1e-8;
    private static readonly PlainPump Pump = Straight(OutsideRange.Refuse, (0, 500), (500, 0));

    /// <summary>
    /// k = 150: 300 kPa with one pump, 375 kPa with both. It joins below 310 and leaves above 380: with one it joins, with
    /// both it stays, whatever it did before.
    /// </summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    [Trait("Source", "Definition")]
    public void Solve_RailThatSags_MakesThePumpJoin(bool wasRunning)
    {
        NetworkState state = Rail(150, PumpSwitch.PressureBelow("rail", Gauge(310), Gauge(380), wasRunning)).Solve();

        Close.Within(Exact, 375, state.KilopascalsAt("rail"));
        Close.Within(Exact, 125, state.LitersPerHourIn("second"));
        Assert.Equal(Network.LineCondition.Running, state.ConditionOf("second"));
        Assert.Equal(
            "'second' is running: the pressure at 'rail' is 375 kPa gauge; it joins below 310 kPa gauge and leaves above 380 "
                + "kPa gauge.",
            state.Remarks[0]
        );
    }

    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_PumpThatJoins_SaysWhatItWasBefore() =>
        Assert.Equal(
            "With 'second' stopped, as it was, the pressure at 'rail' is 300 kPa gauge, which starts 'second' (it joins below "
                + "310 kPa gauge and leaves above 380 kPa gauge).",
            Rail(150, PumpSwitch.PressureBelow("rail", Gauge(310), Gauge(380), false)).Solve().Remarks[^1]
        );

    /// <summary>It leaves above 350: with both pumps 375 would stop it, with one 300 does not start it below 290.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    [Trait("Source", "Definition")]
    public void Solve_RailThatHolds_MakesThePumpLeave(bool wasRunning)
    {
        NetworkState state = Rail(150, PumpSwitch.PressureBelow("rail", Gauge(290), Gauge(350), wasRunning)).Solve();

        Close.Within(Exact, 300, state.KilopascalsAt("rail"));
        Assert.Equal(Network.LineCondition.Stopped, state.ConditionOf("second"));
        Assert.Equal(0, state.LitersPerHourIn("second"));
    }

    /// <summary>Joins below 290, leaves above 400: 300 does not start it, 375 does not stop it.</summary>
    [Theory]
    [InlineData(true, 375, "'second' stopped")]
    [InlineData(false, 300, "'second' running")]
    [Trait("Source", "Definition")]
    public void Solve_BetweenTheThresholds_StaysAsItWas(bool wasRunning, double pressure, string other)
    {
        Network network = Rail(150, PumpSwitch.PressureBelow("rail", Gauge(290), Gauge(400), wasRunning));
        NetworkState state = network.Solve();

        Close.Within(Exact, pressure, state.KilopascalsAt("rail"));
        Assert.Equal($"It would last with {other}, too; what was running decides.", state.Remarks[^1]);
        Assert.Equal(2, network.SolveAll().Length);
    }

    /// <summary>Joins below 310, leaves above 350: 300 starts it, and 375 stops it.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    [Trait("Source", "Definition")]
    public void Solve_SwitchThatChatters_IsRefusedWithBothNumbers(bool wasRunning)
    {
        Network network = Rail(150, PumpSwitch.PressureBelow("rail", Gauge(310), Gauge(350), wasRunning));
        const string Words = "it joins below 310 kPa gauge and leaves above 350 kPa gauge";
        const string Stopped =
            $"with 'second' stopped, the pressure at 'rail' is 300 kPa gauge, which starts 'second' ({Words})";
        const string Running =
            $"with 'second' running, the pressure at 'rail' is 375 kPa gauge, which stops 'second' ({Words})";

        Assert.Equal(
            $"No set of running pumps lasts: {(wasRunning ? Running : Stopped)}; {(wasRunning ? Stopped : Running)}.",
            Assert.Throws<NoSolutionException>(network.Solve).Reason
        );
        Assert.Equal(
            $"No set of running pumps lasts: {Stopped}; {Running}.",
            Assert.Throws<NoSolutionException>(() => network.SolveAll()).Reason
        );
    }

    /// <summary>By the pressure of a manifold, which the pumps do not move: boost alone decides.</summary>
    [Theory]
    [InlineData(120, false, Network.LineCondition.Running)]
    [InlineData(60, false, Network.LineCondition.Stopped)]
    [InlineData(60, true, Network.LineCondition.Running)]
    [InlineData(20, true, Network.LineCondition.Stopped)]
    [Trait("Source", "Definition")]
    public void Solve_ByManifoldPressure_FollowsBoost(double boost, bool wasRunning, Network.LineCondition expected) =>
        Assert.Equal(
            expected,
            Rail(150, PumpSwitch.PressureAbove("manifold", Gauge(100), Gauge(50), wasRunning), boost)
                .Solve()
                .ConditionOf("second")
        );

    /// <summary>The line carries 200 L/h with one pump and 250 L/h with both.</summary>
    [Theory]
    [InlineData(190, 180, false, Network.LineCondition.Running)]
    [InlineData(240, 230, false, Network.LineCondition.Stopped)]
    [InlineData(240, 230, true, Network.LineCondition.Running)]
    [InlineData(300, 260, true, Network.LineCondition.Stopped)]
    [Trait("Source", "Definition")]
    public void Solve_ByFlow_FollowsTheLink(
        double join,
        double leave,
        bool wasRunning,
        Network.LineCondition expected
    ) =>
        Assert.Equal(
            expected,
            Rail(150, PumpSwitch.FlowAbove("line", LitersPerHour(join), LitersPerHour(leave), wasRunning))
                .Solve()
                .ConditionOf("second")
        );

    /// <summary>20 L/h drawn at the rail and 60 L/h by injectors: the way back to the tank is no draw.</summary>
    [Theory]
    [InlineData(79, Network.LineCondition.Running)]
    [InlineData(81, Network.LineCondition.Stopped)]
    [Trait("Source", "Definition")]
    public void Solve_ByTotalDraw_CountsJunctionsAndOpenings(double join, Network.LineCondition expected)
    {
        Network network = Fuel(
            Fixed("tank", 0),
            Fixed("manifold", 0),
            Drawn("rail", 20),
            OwnLine.Pump("first", "tank", "rail", Pump),
            OwnLine
                .Pump("second", "tank", "rail", Pump)
                .SwitchedBy(PumpSwitch.TotalDrawAbove(LitersPerHour(join), LitersPerHour(10), false)),
            Injector("injectors", "rail", "manifold", 300, 60),
            Linear("back", "rail", "tank", 150)
        );

        Assert.Equal(expected, network.Solve().ConditionOf("second"));
    }

    /// <summary>
    /// The first pump alone can't meet a draw of 650 L/h: 500 is all it has. With both it is 325 L/h each, at 175 kPa.
    /// </summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_DrawThatNeedsBoth_RunsBothAndSaysWhy()
    {
        PlainPump extended = Straight(OutsideRange.Extend, (0, 500), (500, 0));
        NetworkState state = Fuel(
                Fixed("tank", 0),
                Drawn("rail", 650),
                OwnLine.Pump("first", "tank", "rail", extended),
                OwnLine
                    .Pump("second", "tank", "rail", extended)
                    .SwitchedBy(PumpSwitch.PressureBelow("rail", Gauge(150), Gauge(450), false))
            )
            .Solve();

        Close.Within(Exact, 175, state.KilopascalsAt("rail"));
        Assert.StartsWith(
            "With 'second' stopped, as it was, there is no state: Draws need 650 L/h; the most at zero pressure is 500 L/h, from first.",
            state.Remarks[^1],
            StringComparison.Ordinal
        );
    }

    /// <summary>What stands still lets nothing through, so that what hangs on it alone has no pressure of its own.</summary>
    [Fact]
    public void Solve_PlaceBehindAStoppedPump_IsCutOff()
    {
        NetworkState state = Fuel(
                Fixed("tank", 0),
                Fixed("high", 100),
                Junction("out"),
                Junction("rail"),
                Linear("first", "high", "rail", 10),
                Linear("way back", "rail", "tank", 10),
                OwnLine
                    .Pump("second", "tank", "out", Pump)
                    .SwitchedBy(PumpSwitch.PressureBelow("rail", Gauge(20), Gauge(90), false)),
                Check("check", "out", "rail", 0)
            )
            .Solve();

        Assert.Equal("out", Assert.Single(state.CutOffNodeNames));
        Close.Within(Exact, 50, state.KilopascalsAt("rail"));
    }

    [Fact]
    public void Solve_ByAPressureThatIsNotDetermined_IsRefused()
    {
        Network network = Fuel(
            Fixed("tank", 0),
            Fixed("high", 100),
            Junction("out"),
            Linear("way", "high", "tank", 10),
            OwnLine
                .Pump("second", "tank", "out", Pump)
                .SwitchedBy(PumpSwitch.PressureBelow("out", Gauge(20), Gauge(90), false)),
            Check("check", "out", "high", 0)
        );

        Assert.Equal(
            "'second' is switched by the pressure at 'out', which is not determined: every way to it is shut.",
            Assert.Throws<NoSolutionException>(network.Solve).Reason
        );
    }

    /// <summary>The load grows and shrinks again: the pump joins late and leaves late. 500 k / (100 + k) with one pump.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void After_ALoadThatComesAndGoes_ShowsTheHysteresis()
    {
        List<Network.LineCondition> seen = [];
        NetworkState? last = null;
        foreach (double k in new double[] { 250, 150, 100, 150, 200, 300, 200 })
        {
            // One pump: 357, 300, 250, 300, 333, 375. Both: 417, 375, 333, 375, 400, 429.
            Network fresh = Rail(k, PumpSwitch.PressureBelow("rail", Gauge(280), Gauge(410), false));
            last = (last is null ? fresh : fresh.After(last)).Solve();
            seen.Add(last.ConditionOf("second"));
        }

        const Network.LineCondition On = Network.LineCondition.Running;
        const Network.LineCondition Off = Network.LineCondition.Stopped;
        Assert.Equal([Off, Off, On, On, On, Off, Off], seen);
    }

    /// <summary>Any load and thresholds: of the four cases of the room's page the right one comes about.</summary>
    [Property]
    public void Solve_AnySwitch_DoesWhatTheThresholdsSay(byte load, ushort join, byte gap, bool wasRunning)
    {
        double k = 50 + load;
        (double joins, double leaves) = (150 + (join % 300) + 0.5, 150 + (join % 300) + 0.5 + gap);
        bool staysOff = 500 * k / (100 + k) >= joins;
        bool staysOn = 500 * k / (50 + k) <= leaves;
        Network network = Rail(k, PumpSwitch.PressureBelow("rail", Gauge(joins), Gauge(leaves), wasRunning));
        if (Edge(100) || Edge(50))
        {
            return;
        }

        if (!staysOff && !staysOn)
        {
            Assert.Throws<NoSolutionException>(network.Solve);
            return;
        }

        NetworkState state = network.Solve();
        bool running = staysOn && (wasRunning || !staysOff);
        Assert.Equal(
            running ? Network.LineCondition.Running : Network.LineCondition.Stopped,
            state.ConditionOf("second")
        );
        Close.Within(Exact, 500 * k / ((running ? 50 : 100) + k), state.KilopascalsAt("rail"));
        Assert.Equal((staysOff ? 1 : 0) + (staysOn ? 1 : 0), network.SolveAll().Length);

        bool Edge(double slope) =>
            Math.Abs((500 * k / (slope + k)) - joins) < 1e-6 || Math.Abs((500 * k / (slope + k)) - leaves) < 1e-6;
    }

    /// <summary>
    /// Two stages that wait for the same rail: 300 kPa with the first alone at k = 150, 375 with two pumps, 409 with three.
    /// The second joins below 310, the third below 290: with both stopped the rail starts the second only.
    /// </summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_TwoStages_TakesTheSetThatLasts()
    {
        NetworkState state = Stages(290, 380).Solve();

        Close.Within(Exact, 375, state.KilopascalsAt("rail"));
        Assert.Equal(Network.LineCondition.Running, state.ConditionOf("second"));
        Assert.Equal(Network.LineCondition.Stopped, state.ConditionOf("third"));
    }

    /// <summary>Both join below 310 and leave above 380: either may be first, and then the other has no reason to.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_TwoStagesOfWhichEitherMayBeFirst_IsRefused() =>
        Assert.EndsWith(
            "It would last with 'second' running and 'third' stopped, or with 'second' stopped and 'third' running: which one "
                + "comes about depends on what switches first.",
            Assert.Throws<NoSolutionException>(() => Stages(310, 380).Solve()).Reason,
            StringComparison.Ordinal
        );

    /// <summary>
    /// A second pump with a hump against the first one: 300 + 200 u to 1, then 900 - 400 u; 320 kPa held by the tank above.
    /// </summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void SolveAll_SwitchedPumpWithAHump_GivesTheStatesOfEachSet()
    {
        PlainPump humped = Straight(OutsideRange.Refuse, (0, 300), (100, 500), (200, 100));
        Network network = HumpTests.Lifted(
            OwnLine
                .Pump("pump", "tank", "out", humped)
                .SwitchedBy(PumpSwitch.PressureAbove("tank", Gauge(10), Gauge(-10), true)),
            320,
            0,
            100
        );

        Assert.Equal(4, network.SolveAll().Length);
        Assert.Equal(Network.LineCondition.Stopped, network.SolveAll()[0].State.ConditionOf("pump"));
        Close.Within(
            Exact,
            100 * (Math.Sqrt(9.8) - 2),
            network.Solve(PlainPump.ApproachSide.FreeFlow).LitersPerHourIn("pump")
        );
    }

    [Fact]
    public void Switch_ThatWouldLeaveBeforeItJoins_IsRefused()
    {
        Words.Refused<ArgumentException>(
            "leaveAbove",
            "300 kPa, 290 kPa",
            () => PumpSwitch.PressureBelow("rail", Gauge(300), Gauge(290), false)
        );
        Words.Refused<ArgumentException>(
            "leaveBelow",
            "100 L/h, 120 L/h",
            () => PumpSwitch.FlowAbove("line", LitersPerHour(100), LitersPerHour(120), false)
        );
    }

    [Fact]
    public void Constructor_SwitchByWhatIsNotThere_IsRefused()
    {
        Words.Refused<ArgumentException>(
            "lines",
            "'second', 'rial'",
            () => Rail(150, PumpSwitch.PressureBelow("rial", Gauge(300), Gauge(310), false))
        );
        Words.Refused<ArgumentException>(
            "lines",
            "'second', 'rail'",
            () => Rail(150, PumpSwitch.FlowAbove("rail", LitersPerHour(100), LitersPerHour(90), false))
        );
    }

    [Fact]
    public void Constructor_FourSwitchedPumps_AreRefused()
    {
        PumpSwitch by = PumpSwitch.PressureBelow("rail", Gauge(300), Gauge(310), false);
        OwnLine[] pumps =
        [
            .. Enumerable.Range(1, 4).Select(i => OwnLine.Pump($"pump {i}", "tank", "rail", Pump).SwitchedBy(by)),
        ];

        Words.Refused<ArgumentException>(
            "lines",
            "3, 4",
            () => Fuel([Fixed("tank", 0), Junction("rail"), Linear("line", "rail", "tank", 100), .. pumps])
        );
    }

    [Fact]
    public void BufferAndBatch_OfASwitchedPump_AreRefused()
    {
        PumpSwitch by = PumpSwitch.PressureBelow("rail", Gauge(300), Gauge(310), false);
        const string Reason =
            "Must have one state by its laws; 'second' joins and leaves. Solve such a network by itself.";

        Words.Refused<ArgumentException>("network", Reason, () => _ = new Network.Buffer(Rail(150, by)));
        Words.Refused<ArgumentException>("network", Reason, () => _ = new NetworkBatch(Rail(150, by), 2));
    }

    internal static Network Rail(double k, PumpSwitch second) => Rail(k, second, 0);

    private static Network Rail(double k, PumpSwitch second, double boost) =>
        Fuel(
            Fixed("tank", 0),
            Fixed("manifold", boost),
            Junction("rail"),
            OwnLine.Pump("first", "tank", "rail", Pump),
            OwnLine.Pump("second", "tank", "rail", Pump).SwitchedBy(second),
            Injector("shut injectors", "rail", "manifold", 100, 0),
            Linear("line", "rail", "tank", k)
        );

    private static Network Stages(double thirdBelow, double thirdAbove) =>
        Fuel(
            Fixed("tank", 0),
            Junction("rail"),
            OwnLine.Pump("first", "tank", "rail", Pump),
            OwnLine
                .Pump("second", "tank", "rail", Pump)
                .SwitchedBy(PumpSwitch.PressureBelow("rail", Gauge(310), Gauge(380), false)),
            OwnLine
                .Pump("third", "tank", "rail", Pump)
                .SwitchedBy(PumpSwitch.PressureBelow("rail", Gauge(thirdBelow), Gauge(thirdAbove), false)),
            Linear("line", "rail", "tank", 150)
        );
}

using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>
/// Pumps whose curve has a hump, by hand. u counts 100 L/h, pressures are in kPa. Straight tables make each meeting point
/// the root of a line or of a quadratic. The solver leaves a billionth, the tests ask for a hundred millionth.
/// </summary>
public sealed class HumpTests
{
    private const double Exact = 1e-8;

    /// <summary>300 + 200 u up to u = 1, then 900 - 400 u.</summary>
    private static readonly PlainPump Peaked = Straight(OutsideRange.Refuse, (0, 300), (100, 500), (200, 100));

    /// <summary>300 + 20 u up to 0.5, then 120 + 380 u up to 1, then 900 - 400 u.</summary>
    private static readonly PlainPump Stepped = Straight(
        OutsideRange.Refuse,
        (0, 300),
        (50, 310),
        (100, 500),
        (200, 100)
    );

    /// <summary>
    /// A lift above the shutoff, the surge of the textbooks: 320 + 100 u². On the rise 100 u² - 200 u + 20 = 0, on the fall
    /// 100 u² + 400 u - 580 = 0; and the check valve holds at no flow.
    /// </summary>
    [Fact]
    [Trait("Source", "Greitzer-1981")]
    public void SolveAll_LiftAboveShutoff_HasThreeStates() =>
        Meets(
            Lifted(Peaked, 320, 0, 100),
            (0, 300, true),
            (100 * (1 - Math.Sqrt(0.8)), 300 + (200 * (1 - Math.Sqrt(0.8))), false),
            (100 * (Math.Sqrt(9.8) - 2), 900 - (400 * (Math.Sqrt(9.8) - 2)), true)
        );

    /// <summary>250 + 150 u: 130 u = 50; 230 u = 130; 550 u = 650.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void SolveAll_ThreeRunningStates_AreFound() =>
        Meets(
            Lifted(Stepped, 250, 150, 0),
            (5000.0 / 130, 250 + (150 * 50.0 / 130), true),
            (13000.0 / 230, 250 + (150 * 130.0 / 230), false),
            (65000.0 / 550, 250 + (150 * 650.0 / 550), true)
        );

    /// <summary>25 u² + 100 u = 300 + 200 u at u = 6, beyond the rise; 900 - 400 u = 25 u² + 100 u at u = -10 + sqrt(136).</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void SolveAll_SystemThatMeetsTheFallOnly_HasOneState()
    {
        Network network = Lifted(Peaked, 0, 100, 25);
        double u = Math.Sqrt(136) - 10;

        Meets(network, (100 * u, 900 - (400 * u), true));
        NetworkState state = network.Solve();
        Close.Within(Exact, 100 * u, state.LitersPerHourIn("pump"));
        Assert.Equal(
            "The curve of 'pump' has a hump and meets the network at one flow only: 166.2 L/h (stable).",
            Assert.Single(state.Remarks)
        );
        Assert.Equal(state.FlowIn("pump"), network.Solve(PlainPump.ApproachSide.NoFlow).FlowIn("pump"));
        Assert.Equal(state.FlowIn("pump"), network.Solve(state).FlowIn("pump"));
    }

    [Fact]
    [Trait("Source", "Definition")]
    public void SolveAll_SystemAboveTheCurve_HasTheStalledStateOnly()
    {
        Network.Solution only = Assert.Single(Lifted(Peaked, 600, 100, 0).SolveAll());

        Assert.True(only.IsStable);
        Assert.Equal(Network.LineCondition.Stalled, only.State.ConditionOf("pump"));
        Assert.Equal(0, only.State.LitersPerHourIn("pump"));
    }

    /// <summary>
    /// Injectors take 20 L/h; a regulator holds 320. Below that the flow is 20 L/h at 304. It holds where 120 + 380 u = 320
    /// and where 900 - 400 u = 320.
    /// </summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void SolveAll_BehindARegulator_HasThreeStates()
    {
        Network network = Fuel(
            Fixed("tank", 0),
            Fixed("manifold", 0),
            Junction("out"),
            OwnLine.Pump("pump", "tank", "out", Stepped),
            Injector("injectors", "out", "manifold", 300, 20),
            OwnLine.BypassRegulator(
                "regulator",
                "out",
                "tank",
                new(Kilopascals(320), Gauge(0), Kilopascals(5), LitersPerHour(100))
            )
        );

        Meets(network, (20, 304, true), (20000.0 / 380, 320, false), (145, 320, true));
        Assert.Equal(
            [Network.LineCondition.Seated, Network.LineCondition.Regulating, Network.LineCondition.Regulating],
            network.SolveAll().Select(s => s.State.ConditionOf("regulator"))
        );
    }

    /// <summary>A check valve of 20 before a lift of 300, 5 u² beyond: 5 u² - 200 u + 20 = 0 and 5 u² + 400 u - 580 = 0.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void SolveAll_BehindACheckValve_HasThreeStates()
    {
        double low = 20 - Math.Sqrt(396);
        double high = Math.Sqrt(1716) - 40;
        Network network = Fuel(
            Fixed("tank", 0),
            Junction("out"),
            Fixed("high", 300),
            OwnLine.Pump("pump", "tank", "out", Peaked),
            Check("check", "out", "high", 20)
        );

        Meets(network, (0, 300, true), (100 * low, 300 + (200 * low), false), (100 * high, 900 - (400 * high), true));
        Assert.Equal(Network.LineCondition.Shut, network.SolveAll()[0].State.ConditionOf("check"));
    }

    /// <summary>A fixed draw leaves no choice of flow: the curve says the pressure.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void SolveAll_FixedDraw_HasOneState() =>
        Meets(Fuel(Fixed("tank", 0), Drawn("out", 75), OwnLine.Pump("pump", "tank", "out", Stepped)), (75, 405, true));

    /// <summary>
    /// A second pump of 450 - 100 u at its side, 250 + 150 (u + v) behind both: v = (200 - 150 u) / 250, so that they are
    /// asked for 370 + 60 u. 300 + 20 u is below that; 120 + 380 u = 370 + 60 u; 900 - 400 u = 370 + 60 u.
    /// </summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void SolveAll_BesideAPumpWithoutAHump_HasThreeStates() =>
        Meets(
            Fuel(
                Fixed("tank", 0),
                Junction("out"),
                Fixed("high", 250),
                OwnLine.Pump("pump", "tank", "out", Stepped),
                OwnLine.Pump("other", "tank", "out", Straight(OutsideRange.Refuse, (0, 450), (300, 150))),
                Linear("line", "out", "high", 150)
            ),
            (0, 370, true),
            (25000.0 / 320, 370 + (60 * 250.0 / 320), false),
            (53000.0 / 460, 370 + (60 * 530.0 / 460), true)
        );

    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_SeveralStableStates_IsRefusedWithTheirNumbers()
    {
        NoSolutionException error = Assert.Throws<NoSolutionException>(() => Lifted(Stepped, 250, 150, 0).Solve());

        Assert.Equal(
            "The curve of 'pump' has a hump and meets the network at 3 flows: 38.46 L/h (stable), 56.52 L/h (not stable), "
                + "118.2 L/h (stable). Ask for all of them, or say from which side the pump comes.",
            error.Reason
        );
    }

    [Theory]
    [InlineData(PlainPump.ApproachSide.NoFlow, 5000.0 / 130, "This one is come to from no flow.")]
    [InlineData(PlainPump.ApproachSide.FreeFlow, 65000.0 / 550, "This one is come to from free flow.")]
    [Trait("Source", "Definition")]
    public void Solve_FromASide_TakesTheOuterState(PlainPump.ApproachSide side, double flow, string remark)
    {
        NetworkState state = Lifted(Stepped, 250, 150, 0).Solve(side);

        Close.Within(Exact, flow, state.LitersPerHourIn("pump"));
        Assert.Equal(remark, state.Remarks[^1]);
    }

    [Fact]
    public void Solve_FromAnUnknownSide_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "side",
            "7",
            () => Lifted(Peaked, 0, 100, 0).Solve((PlainPump.ApproachSide)7)
        );

    /// <summary>320 + 180 u is 500 at the very peak, and above the curve on both sides.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void SolveAll_SystemThatTouches_IsRefusedWithNumbers()
    {
        string reason = Assert.Throws<NoSolutionException>(() => Lifted(Peaked, 320, 180, 0).SolveAll()).Reason;

        Assert.StartsWith(
            "The curve of 'pump' has a hump, and the network comes within ",
            reason,
            StringComparison.Ordinal
        );
        Assert.Contains("of the curve at 99.9999 L/h", reason, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("Source", "Definition")]
    public void SolveAll_SystemAlongTheRise_IsRefused() =>
        Assert.Equal(
            "The curve of 'pump' has a hump, and the network asks along a whole stretch for just what the curve gives, so "
                + "that there is no end of meeting points.",
            Assert.Throws<NoSolutionException>(() => Lifted(Peaked, 300, 200, 0).SolveAll()).Reason
        );

    /// <summary>900 - 400 u = 50 u is met at 2, where the data end; with 40 u a little beyond.</summary>
    [Fact]
    public void SolveAll_BeyondTheData_IsRefusedUnlessExtended()
    {
        Words.OutsideTable("'pump', 0, 200", () => Lifted(Peaked, 0, 40, 0).SolveAll());
        PlainPump extended = Straight(OutsideRange.Extend, (0, 300), (100, 500), (200, 100));
        Meets(Lifted(extended, 0, 40, 0), (90000.0 / 440, 40 * 900.0 / 440, true));
    }

    [Fact]
    public void Constructor_TwoHumpsInOneRegion_AreRefusedByName()
    {
        HumpedCurvesException error = Words.Refused<HumpedCurvesException>(
            "lines",
            "'a', 'b'",
            () =>
                Fuel(
                    Fixed("tank", 0),
                    Junction("out"),
                    Junction("further"),
                    Junction("alone"),
                    OwnLine.Pump("a", "tank", "out", Peaked),
                    OwnLine.Pump("third", "tank", "alone", Peaked),
                    Linear("line", "out", "further", 100),
                    OwnLine.Pump("b", "tank", "further", Stepped),
                    Linear("back", "further", "tank", 100),
                    Linear("alone back", "alone", "tank", 100)
                )
        );
        Assert.Equal("a, b", string.Join(", ", error.Pumps));
        Refusal refusal = Refusal.Of(error)!;
        Assert.Equal((RefusalKind.Network, "a"), (refusal.Kind, refusal.Part));
        Assert.Equal("a, b", string.Join(", ", refusal.Parts));
    }

    [Fact]
    public void Constructor_HumpBeforeARegulatorThatItsReturnOpens_IsRefused()
    {
        OwnRegulator regulator = new(Kilopascals(320), Gauge(0), Kilopascals(5), LitersPerHour(100));
        OwnRegulator pushed = regulator.WithReturnInfluence(Ratio.FromPercent(5));
        Network With(OwnRegulator settings, string to) =>
            Fuel(
                Fixed("tank", 0),
                Junction("out"),
                Junction("return"),
                OwnLine.Pump("pump", "tank", "out", Peaked),
                OwnLine.BypassRegulator("regulator", "out", to, settings),
                Linear("hose", "return", "tank", 10)
            );

        Words.Refused<HumpedCurvesException>("lines", "'pump', 'return', 'regulator'", () => With(pushed, "return"));
        Assert.NotEmpty(With(pushed, "tank").SolveAll());
        Assert.NotEmpty(With(regulator, "return").SolveAll());
    }

    [Fact]
    public void BufferAndBatch_OfAHump_AreRefused()
    {
        Network network = Lifted(Peaked, 0, 100, 0);
        const string Reason =
            "Must have one state by its laws; the curve of 'pump' has a hump. Solve such a network by itself.";

        Words.Refused<ArgumentException>("network", Reason, () => _ = new Network.Buffer(network));
        Words.Refused<ArgumentException>("network", Reason, () => _ = new NetworkBatch(network, 2));
    }

    [Fact]
    public void SetPump_ToAHump_IsRefused()
    {
        PlainPump falling = Straight(OutsideRange.Refuse, (0, 500), (100, 400), (200, 100));
        Network.Buffer buffer = new(Lifted(falling, 0, 100, 0));

        Words.Refused<ArgumentException>("pump", "'pump'", () => buffer.SetPump("pump", Peaked));
    }

    /// <summary>Without a hump there is one state and nothing to remark.</summary>
    [Fact]
    public void SolveAll_WithoutAHump_IsWhatSolveFinds()
    {
        Network network = Lifted(Straight(OutsideRange.Refuse, (0, 500), (200, 100)), 100, 100, 20);
        Network.Solution only = Assert.Single(network.SolveAll());

        Assert.True(only.IsStable);
        Assert.Empty(only.State.Remarks);
        Assert.Equal(network.Solve().FlowIn("pump"), only.State.FlowIn("pump"));
        Assert.Equal(network.Solve().FlowIn("pump"), network.Solve(PlainPump.ApproachSide.NoFlow).FlowIn("pump"));
    }

    /// <summary>A chain of two doubles the rise: twice the lift and the loss leave the flows where they were.</summary>
    [Fact]
    public void SolveAll_ChainOfTwoHumps_KeepsTheFlowsOfTwiceTheLoad()
    {
        NetworkState[] one = [.. Lifted(Stepped, 250, 150, 0).SolveAll().Select(s => s.State)];
        NetworkState[] two = [.. Lifted(Stepped.InSeries(2), 500, 300, 0).SolveAll().Select(s => s.State)];

        Assert.Equal(3, two.Length);
        foreach ((NetworkState single, NetworkState chain) in one.Zip(two))
        {
            Close.Within(Exact, single.LitersPerHourIn("pump"), chain.LitersPerHourIn("pump"));
            Close.Within(Exact, 2 * single.KilopascalsAt("out"), chain.KilopascalsAt("out"));
        }
    }

    /// <summary>Pump, then a line of linear and quadratic loss, up to a fixed pressure.</summary>
    internal static Network Lifted(PlainPump pump, double lift, double linear, double quadratic) =>
        Lifted(OwnLine.Pump("pump", "tank", "out", pump), lift, linear, quadratic);

    internal static Network Lifted(OwnLine pump, double lift, double linear, double quadratic) =>
        Fuel(
            Fixed("tank", 0),
            Junction("out"),
            Fixed("high", lift),
            pump,
            OwnLine.Filter("line", "out", "high", LitersPerHour(100), Kilopascals(linear), Kilopascals(quadratic))
        );

    private static void Meets(Network network, params (double Flow, double Pressure, bool IsStable)[] expected)
    {
        var found = network.SolveAll();
        Assert.Equal(expected.Select(e => e.IsStable), found.Select(s => s.IsStable));
        foreach ((var by, Network.Solution solution) in expected.Zip(found))
        {
            Close.WithinOf(100, Exact, by.Flow, solution.State.LitersPerHourIn("pump"));
            if (by.Flow > 0)
            {
                Close.Within(Exact, by.Pressure, solution.State.KilopascalsAt("out"));
            }

            LinkBalance.Holds(network, solution.State, "hump");
        }
    }
}

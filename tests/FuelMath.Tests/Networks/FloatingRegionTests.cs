using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>
/// Regions that nothing flows into, by hand. u is the flow in 100 L/h, pressures kPa. What flows in circles in such a
/// region keeps its differences; the level is the one to which the network fills it.
/// </summary>
[Trait("Source", "Definition")]
public sealed class FloatingRegionTests
{
    private const double Exact = 1e-8;

    /// <summary>700 - 100 u = 500 + 20 u2 through the relief valve, all of which returns to the pump's inlet.</summary>
    private static readonly double Around = (Math.Sqrt(10_000 + (4 * 20 * 200)) - 100) / 40;

    private static readonly double Lift = 700 - (100 * Around);

    [Theory]
    [InlineData(0)]
    [InlineData(-20)]
    [InlineData(60)]
    public void Rail_BehindAPumpWithARelief_HasItsLift(double tank)
    {
        NetworkState state = FootValve(tank).Solve();

        ShowsTheLift(tank, state);
        Close.Within(Exact, 100 * Around, state.LitersPerHourIn("pump"));
        Assert.Equal(Network.LineCondition.Running, state.ConditionOf("pump"));
        Assert.Equal(Network.LineCondition.Shut, state.ConditionOf("foot"));
        Assert.True(state.WorstPressureResidual.Pascals < 1e-3);
    }

    /// <summary>From another state, in a buffer and in a batch it is the same.</summary>
    [Fact]
    public void Rail_BehindAPumpWithARelief_HasItsLiftHoweverItIsSolved()
    {
        Network network = FootValve(0);
        Network.Buffer buffer = new(network);
        buffer.SetPressure("tank", Gauge(40));
        network.Solve(buffer);
        buffer.SetPressure("tank", Gauge(0));
        network.Solve(buffer);
        NetworkBatch batch = new(network, 3);

        ShowsTheLift(0, network.Solve(FootValve(60).Solve()));
        ShowsTheLift(0, buffer.ToState());
        ShowsTheLift(0, batch.StateAt(1));
        NetworkBatch.Result all = batch
            .WithPressure("tank", [Gauge(-20), Gauge(0), Gauge(60)])
            .Solve(null, CancellationToken.None);
        double[] rail = [.. Enumerable.Range(0, 3).Select(i => all.PressureAt("rail", i).AboveAmbient.Kilopascals)];
        Close.Within(Exact, Lift - 20, rail[0]);
        Close.Within(Exact, Lift, rail[1]);
        Close.Within(Exact, Lift + 60, rail[2]);
    }

    /// <summary>A reducing regulator holds the inlet of the loop at 300; the rail stands the lift above that.</summary>
    [Fact]
    public void Rail_BehindAReducingRegulatorAndAPump_HasItsLiftAboveIt()
    {
        NetworkState state = Fuel([
                Fixed("supply", 450),
                Fixed("manifold", 0),
                Junction("inlet"),
                Junction("rail"),
                OwnLine.ReducingRegulator("reducing", "supply", "inlet", Regulator(300)),
                .. Loop("inlet", "rail"),
                Injector("injectors", "rail", "manifold", 100, 0),
            ])
            .Solve();

        Close.Within(Exact, 300, state.KilopascalsAt("inlet"));
        Close.Within(Exact, 300 + Lift, state.KilopascalsAt("rail"));
    }

    /// <summary>Two ways fill the loop: 100 at its outlet lifts it less than nothing at its inlet.</summary>
    [Theory]
    [InlineData(100, 0)]
    [InlineData(800, 800 - 627.9)]
    public void Loop_FilledFromTwoPlaces_StandsAtTheGreaterLevel(double supply, double inlet)
    {
        NetworkState state = Fuel([
                Fixed("tank", 0),
                Fixed("supply", supply),
                Junction("inlet"),
                Junction("rail"),
                Check("foot", "tank", "inlet", 0),
                Check("prime", "supply", "rail", 0),
                .. Loop("inlet", "rail"),
            ])
            .Solve();

        double level = inlet == 0 ? 0 : supply - Lift;
        Close.WithinOf(Lift, Exact, level, state.KilopascalsAt("inlet"));
        Close.WithinOf(Lift, Exact, level + Lift, state.KilopascalsAt("rail"));
    }

    /// <summary>
    /// The regulator bypasses to the pump's inlet and holds the rail, so that the region has no level of its own to move by:
    /// what a boosted manifold pushes in through shut injectors must not raise it.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(350)]
    public void Inlet_OfALoopWithABypassRegulator_IsFilledFromTheTank(double manifold)
    {
        NetworkState state = Fuel(
                Fixed("tank", 10),
                Fixed("manifold", manifold),
                Junction("inlet"),
                Junction("rail"),
                Check("foot", "tank", "inlet", 0),
                OwnLine.Pump("pump", "inlet", "rail", Straight(OutsideRange.Refuse, (0, 700), (600, 100))),
                OwnLine.BypassRegulator("regulator", "rail", "inlet", Regulator(300)),
                Injector("injectors", "rail", "manifold", 100, 0)
            )
            .Solve();

        Close.Within(Exact, 300, state.KilopascalsAt("rail"));
        Close.Within(1e-6, 10, state.KilopascalsAt("inlet"));
        Close.Within(1e-6, 410, state.LitersPerHourIn("pump"));
    }

    /// <summary>A pump circulates through a reducing regulator that stands open: filled from the tank it stays so.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(350)]
    public void Inlet_OfALoopWithAReducingRegulator_IsFilledFromTheTank(double manifold)
    {
        NetworkState state = Fuel(
                Fixed("tank", 10),
                Fixed("manifold", manifold),
                Junction("inlet"),
                Junction("rail"),
                Check("foot", "tank", "inlet", 0),
                OwnLine.Pump("pump", "inlet", "rail", Straight(OutsideRange.Refuse, (0, 700), (600, 100))),
                OwnLine.ReducingRegulator("regulator", "rail", "inlet", Regulator(200)),
                Injector("injectors", "rail", "manifold", 100, 0)
            )
            .Solve();

        // 700 - 100 u = 5 u2 through the open regulator.
        double u = (Math.Sqrt(10_000 + (4 * 5 * 700)) - 100) / 10;
        Close.Within(1e-6, 10, state.KilopascalsAt("inlet"));
        Close.Within(1e-6, 10 + (5 * u * u), state.KilopascalsAt("rail"));
    }

    /// <summary>A return line between a seated regulator and a check valve keeps what it had; the rest is solved.</summary>
    [Fact]
    public void ReturnLine_BetweenASeatedRegulatorAndACheckValve_IsCutOff()
    {
        NetworkState state = Fuel(
                Fixed("tank", 0),
                Junction("rail"),
                Junction("return"),
                OwnLine.Pump("pump", "tank", "rail", Straight(OutsideRange.Refuse, (0, 200), (600, 100))),
                OwnLine.BypassRegulator("regulator", "rail", "return", Regulator(300)),
                Check("check", "return", "tank", 0)
            )
            .Solve();

        Assert.Equal("return", string.Join(", ", state.CutOffNodeNames));
        Close.Within(Exact, 200, state.KilopascalsAt("rail"));
        Assert.Equal(Network.LineCondition.DeadHeaded, state.ConditionOf("pump"));
        Assert.Equal(Network.LineCondition.Seated, state.ConditionOf("regulator"));
    }

    /// <summary>A return line that is blocked fills through the regulator to the pressure ahead of it.</summary>
    [Fact]
    public void ReturnLine_Blocked_FillsThroughTheRegulator()
    {
        NetworkState state = Fuel(
                Fixed("supply", 400),
                Junction("rail"),
                Junction("return"),
                Linear("feed", "supply", "rail", 10),
                OwnLine.BypassRegulator("regulator", "rail", "return", Regulator(300))
            )
            .Solve();

        Close.Within(Exact, 400, state.KilopascalsAt("return"));
    }

    /// <summary>At no draw it holds what it holds at the least draw, at the supply that it has.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1e-4)]
    public void ReducingRegulator_SupplyInfluence_HoldsTheSameAtAndNearNoDraw(double draw)
    {
        Line regulator = new(
            "reducing",
            "supply",
            "rail",
            new LawPart(
                new RegulatorSettings
                {
                    Setting = 250e3,
                    Influence = 0.04,
                    SquarePerDensity = 7e9,
                }
            )
        );

        NetworkState state = Fuel(Fixed("supply", 490), Drawn("rail", draw), OwnLine.Of(regulator)).Solve();

        Close.Within(1e-7, 250 - (0.04 * 490), state.KilopascalsAt("rail"));
    }

    /// <summary>Nothing leads to the pump's inlet: it would pull 300 below the tank.</summary>
    [Fact]
    public void Suction_Blind_SaysWhatThePumpLacks()
    {
        var error = Assert.Throws<NoSolutionException>(() => Blind(300).Solve());

        Assert.Equal(
            "Nothing can flow to 'inlet', where 'pump' draws: give it a way in. The pressure at 'inlet' would have to be "
                + "-300 kPa gauge; below -101.325 kPa gauge there is none.",
            error.Reason
        );
    }

    /// <summary>A weak one only pulls 50 below: a state, though its inlet may keep any lower pressure.</summary>
    [Fact]
    public void Suction_BlindButWeak_IsCutOff() =>
        Assert.Equal("inlet", string.Join(", ", Blind(50).Solve().CutOffNodeNames));

    [Fact]
    public void Suction_ThroughAStiffFootValve_SaysWhatThePumpLacks()
    {
        var error = Assert.Throws<NoSolutionException>(() =>
            Fuel(
                    Fixed("tank", 0),
                    Junction("inlet"),
                    Check("foot", "tank", "inlet", 120),
                    OwnLine.Pump("pump", "inlet", "tank", Straight(OutsideRange.Refuse, (0, 110), (600, 10)))
                )
                .Solve()
        );

        Assert.Equal(
            "Too little can flow to where these draw: pump. The pressure at 'inlet' would have to be -120 kPa gauge; below "
                + "-101.325 kPa gauge there is none.",
            error.Reason
        );
    }

    /// <summary>Check valves of 0.02 kPa each, every other one a hose where asked, into a blind end.</summary>
    [Theory]
    [InlineData(300, true)]
    [InlineData(3000, false)]
    [InlineData(10000, false)]
    public void BlindEnd_BehindManyCheckValves_IsFilledThroughAll(int parts, bool hoses)
    {
        bool IsHose(int i) => hoses && i % 2 == 1;
        IEnumerable<int> all = Enumerable.Range(1, parts);
        Network network = Fuel([
            Fixed("n0", 300),
            .. all.Select(i => Junction($"n{i}")),
            .. all.Select(i =>
                IsHose(i)
                    ? Hose($"part {i}", $"n{i - 1}", $"n{i}", 0.1, 8)
                    : Check($"part {i}", $"n{i - 1}", $"n{i}", 0.02)
            ),
        ]);

        double valves = all.Count(i => !IsHose(i));
        Close.WithinOf(300, 1e-8, 300 - (0.02 * valves), network.Solve().KilopascalsAt($"n{parts}"));
    }

    private static Network Blind(double lift) =>
        Fuel(
            Fixed("tank", 0),
            Junction("inlet"),
            OwnLine.Pump("pump", "inlet", "tank", Straight(OutsideRange.Refuse, (0, lift), (600, 10)))
        );

    private static void ShowsTheLift(double tank, NetworkState state)
    {
        Close.Within(Exact, tank + Lift, state.KilopascalsAt("rail"));
        Close.WithinOf(Lift, Exact, tank, state.KilopascalsAt("inlet"));
        Assert.Equal(Network.LineCondition.Running, state.ConditionOf("pump"));
    }

    private static OwnRegulator Regulator(double set) =>
        new(Kilopascals(set), Gauge(0), Kilopascals(5), LitersPerHour(100));

    private static OwnLine[] Loop(string inlet, string outlet) =>
        [
            OwnLine.Pump("pump", inlet, outlet, Straight(OutsideRange.Refuse, (0, 700), (600, 100))),
            OwnLine.CheckValve("relief", outlet, inlet, Kilopascals(500), Kilopascals(20), LitersPerHour(100)),
        ];

    /// <summary>Tank, foot valve, pump with a relief valve around it, hose, rail, injectors shut.</summary>
    private static Network FootValve(double tank) =>
        Fuel([
            Fixed("tank", tank),
            Fixed("manifold", 150),
            Junction("inlet"),
            Junction("outlet"),
            Junction("rail"),
            Check("foot", "tank", "inlet", 0),
            .. Loop("inlet", "outlet"),
            Hose("hose", "outlet", "rail", 1, 8),
            Injector("injectors", "rail", "manifold", 100, 0),
        ]);
}

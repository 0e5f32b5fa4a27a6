using System.Collections.Immutable;
using FsCheck.Xunit;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Pumps whose curves have humps, parted by fixed pressures: each as if its region were a network by itself.</summary>
public sealed class HumpRegionTests
{
    /// <summary>A lift circuit into a surge tank, and a feed circuit out of it: three meeting points each make nine states.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void SolveAll_TwoRegions_MultipliesTheirStates()
    {
        object[] lift = Circuit("lift", "tank", 250, Stepped, 150, 0);
        object[] feed = Circuit("feed", "surge tank", 320, Peaked, 0, 100);
        object[] fixedNodes = [Fixed("tank", 0), Fixed("surge tank", 0)];
        NetworkState[] lifts = [.. Alone("lift", "tank", 250, Stepped, 150, 0)];
        NetworkState[] feeds = [.. Alone("feed", "surge tank", 320, Peaked, 0, 100)];

        Network network = Fuel([.. fixedNodes, .. lift, .. feed]);
        ImmutableArray<Network.Solution> all = network.SolveAll();

        Assert.Equal((3, 3, 9), (lifts.Length, feeds.Length, all.Length));
        for (int i = 0; i < all.Length; i++)
        {
            NetworkState state = all[i].State;
            Close.WithinOf(100, 1e-8, lifts[i / 3].LitersPerHourIn("lift pump"), state.LitersPerHourIn("lift pump"));
            Close.WithinOf(100, 1e-8, feeds[i % 3].LitersPerHourIn("feed pump"), state.LitersPerHourIn("feed pump"));
            Assert.Equal(i / 3 != 1 && i % 3 != 1, all[i].IsStable);
            LinkBalance.Holds(network, state, $"state {i}");
        }

        Assert.Equal(
            "The curve of 'lift pump' has a hump and meets the network at 3 flows: 38.46 L/h (stable), 56.52 L/h (not stable), "
                + "118.2 L/h (stable). The curve of 'feed pump' has a hump and meets the network at 3 flows: 0 L/h (stable), "
                + "10.56 L/h (not stable), 113 L/h (stable).",
            string.Join(' ', all[0].State.Remarks)
        );
    }

    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_TwoRegions_TakesTheOuterStateOfEach()
    {
        Network network = Fuel([
            Fixed("tank", 0),
            .. Circuit("lift", "tank", 250, Stepped, 150, 0),
            .. Circuit("feed", "tank", 320, Peaked, 0, 100),
        ]);

        NetworkState low = network.Solve(PlainPump.ApproachSide.NoFlow);
        NetworkState high = network.Solve(PlainPump.ApproachSide.FreeFlow);
        NoSolutionException open = Assert.Throws<NoSolutionException>(network.Solve);

        Close.Within(1e-8, 5000.0 / 130, low.LitersPerHourIn("lift pump"));
        Assert.Equal(0, low.LitersPerHourIn("feed pump"));
        Close.Within(1e-8, 65000.0 / 550, high.LitersPerHourIn("lift pump"));
        Close.Within(1e-8, 100 * (Math.Sqrt(9.8) - 2), high.LitersPerHourIn("feed pump"));
        Assert.Contains("'lift pump' has a hump", open.Reason, StringComparison.Ordinal);
        Assert.Contains("'feed pump' has a hump", open.Reason, StringComparison.Ordinal);
        Assert.EndsWith("or say from which side the pumps come.", open.Reason, StringComparison.Ordinal);
    }

    /// <summary>One of the two with one meeting point only: its side is no question.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_OneStableState_NeedsNoSide()
    {
        Network network = Fuel([
            Fixed("tank", 0),
            .. Circuit("lift", "tank", 0, Peaked, 100, 25),
            .. Circuit("feed", "tank", 600, Peaked, 100, 0),
        ]);

        NetworkState state = network.Solve();

        Close.Within(1e-8, 100 * (Math.Sqrt(136) - 10), state.LitersPerHourIn("lift pump"));
        Assert.Equal(Network.LineCondition.Stalled, state.ConditionOf("feed pump"));
    }

    /// <summary>
    /// A return that opens its regulator keeps a hump in its own region from being searched, and one elsewhere not.
    /// </summary>
    [Fact]
    public void Constructor_RegulatorThatItsReturnOpensInAnotherRegion_IsTaken()
    {
        OwnRegulator pushed = new OwnRegulator(
            Kilopascals(320),
            Gauge(0),
            Kilopascals(5),
            LitersPerHour(100)
        ).WithReturnInfluence(FuelRatio(5));
        object[] regulated =
        [
            Fixed("tank", 0),
            Junction("rail"),
            Junction("return"),
            OwnLine.Pump("falling", "tank", "rail", Straight(OutsideRange.Refuse, (0, 700), (200, 100))),
            OwnLine.BypassRegulator("regulator", "rail", "return", pushed),
            Linear("hose", "return", "tank", 10),
        ];

        Assert.Single(Fuel([.. regulated, .. Circuit("lift", "tank", 0, Peaked, 100, 25)]).SolveAll());
    }

    /// <summary>Whatever the curves and loads: as many states as the regions have together, with their flows.</summary>
    [Property(Arbitrary = [typeof(NetworkArbitraries)], MaxTest = 40)]
    public void SolveAll_TwoRandomRegions_AreThoseOfEachAlone(HumpedCase one, HumpedCase other)
    {
        Network first = Fuel([Fixed("tank", 0), .. Circuit("one", one)]);
        Network second = Fuel([Fixed("tank", 0), .. Circuit("other", other)]);
        Network both = Fuel([Fixed("tank", 0), .. Circuit("one", one), .. Circuit("other", other)]);
        if (Solved(first) is not { } ones || Solved(second) is not { } others)
        {
            Assert.Null(Solved(both));
            return;
        }

        ImmutableArray<Network.Solution> all = both.SolveAll();
        Assert.Equal(ones.Length * others.Length, all.Length);
        for (int i = 0; i < all.Length; i++)
        {
            (Network.Solution a, Network.Solution b) = (ones[i / others.Length], others[i % others.Length]);
            Close.WithinOf(1000, 1e-7, a.State.LitersPerHourIn("one pump"), all[i].State.LitersPerHourIn("one pump"));
            Close.WithinOf(
                1000,
                1e-7,
                b.State.LitersPerHourIn("other pump"),
                all[i].State.LitersPerHourIn("other pump")
            );
            Assert.Equal(a.IsStable && b.IsStable, all[i].IsStable);
        }
    }

    private static ImmutableArray<Network.Solution>? Solved(Network network)
    {
        try
        {
            return network.SolveAll();
        }
        catch (NoSolutionException)
        {
            return null;
        }
    }

    private static PlainPump Peaked => Straight(OutsideRange.Refuse, (0, 300), (100, 500), (200, 100));

    private static PlainPump Stepped => Straight(OutsideRange.Refuse, (0, 300), (50, 310), (100, 500), (200, 100));

    private static UnitsNet.Ratio FuelRatio(double percent) => UnitsNet.Ratio.FromPercent(percent);

    private static IEnumerable<NetworkState> Alone(
        string name,
        string from,
        double height,
        PlainPump pump,
        double linear,
        double quadratic
    ) =>
        Fuel([Fixed(from, 0), .. Circuit(name, from, height, pump, linear, quadratic)]).SolveAll().Select(s => s.State);

    private static object[] Circuit(string name, HumpedCase given) =>
        Circuit(
            name,
            "tank",
            given.Lift,
            Straight(OutsideRange.Extend, [.. given.Points]),
            given.Linear,
            given.Quadratic
        );

    /// <summary>A pump out of a tank, a loss of linear u + quadratic u², a fixed pressure behind.</summary>
    private static object[] Circuit(
        string name,
        string from,
        double height,
        PlainPump pump,
        double linear,
        double quadratic
    ) =>
        [
            Junction($"{name} out"),
            Fixed($"{name} end", height),
            OwnLine.Pump($"{name} pump", from, $"{name} out", pump),
            OwnLine.Filter(
                $"{name} line",
                $"{name} out",
                $"{name} end",
                LitersPerHour(100),
                Kilopascals(linear),
                Kilopascals(quadratic)
            ),
        ];
}

using System.Collections.Immutable;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>
/// Two tanks lift into a surge tank of 2 L: 50 - 50 u = 10 u gives 83.3 L/h, 40 - 50 u = 10 u gives 66.7. Its pump of
/// 500 - 100 u draws 100 or more against a load to the engine, all by hand.
/// </summary>
[Trait("Source", "Definition")]
public sealed class SurgeTankTests
{
    private static NetworkState With(double load) =>
        Fuel(
                Fixed("left", 0),
                Fixed("right", 0),
                Surge("surge"),
                Surge("engine"),
                Junction("lifted a"),
                Junction("lifted b"),
                Junction("out"),
                Lift("lift a", "left", "lifted a", 50),
                Linear("line a", "lifted a", "surge", 10),
                Lift("lift b", "right", "lifted b", 40),
                Linear("line b", "lifted b", "surge", 10),
                OwnLine.Pump("main", "surge", "out", Straight(OutsideRange.Extend, (0, 500), (100, 400))),
                Linear("load", "out", "engine", load)
            )
            .Solve();

    private static Network.Node Surge(string name) =>
        Network.Node.SurgeTank(name, default, default, Volume.FromLiters(2));

    private static OwnLine Lift(string name, string from, string to, double shutoff) =>
        OwnLine.Pump(name, from, to, Straight(OutsideRange.Refuse, (0, shutoff), (100, shutoff - 50)));

    /// <summary>500 - 100 u = 400 u: 100 L/h go, 150 come. Without the left lift 33.3 L/h are missing: 2 L last 216 s.</summary>
    [Fact]
    public void BalanceIn_MoreComesThanGoes_OverflowsAndLastsWithoutLift()
    {
        SurgeTankBalance balance = SurgeTankBalance.FromState(With(400), "surge", ["lift a"]);

        Close.Within(1e-8, 250.0 / 3, balance.LiftFlow.LitersPerHour);
        Close.Within(1e-8, 200.0 / 3, balance.ReturnFlow.LitersPerHour);
        Close.Within(1e-8, 100, balance.DrawnFlow.LitersPerHour);
        Assert.True(balance.Overflows);
        Close.Within(1e-8, 50, balance.OverflowFlow.LitersPerHour);
        Assert.True(balance.DrainsWithoutLift);
        Close.Within(1e-7, 216, balance.LastsWithoutLift().Seconds);
        Assert.StartsWith(
            "The surge tank does not drain, so that it lasts without end.",
            Assert.Throws<InvalidOperationException>(() => balance.LastsWithLift()).Message,
            StringComparison.Ordinal
        );
    }

    /// <summary>500 - 100 u = 150 u: 200 L/h go, 150 come: 2 L last 144 s.</summary>
    [Fact]
    public void BalanceIn_LessComesThanGoes_Drains()
    {
        SurgeTankBalance balance = SurgeTankBalance.FromState(With(150), "surge", ["lift a"]);

        Assert.False(balance.Overflows);
        Assert.True(balance.DrainsWithLift);
        Assert.Equal(0, balance.OverflowFlow.LitersPerHour);
        Close.Within(1e-7, 144, balance.LastsWithLift().Seconds);
    }

    [Fact]
    public void BalanceIn_WrongPlaces_AreRefused()
    {
        NetworkState state = With(400);

        Words.Refused<ArgumentException>("node", "'out'", () => SurgeTankBalance.FromState(state, "out", ["lift a"]));
        Words.Refused<ArgumentException>(
            "liftPumps",
            "'main', 'surge', 'load'",
            () => SurgeTankBalance.FromState(state, "surge", ["load"])
        );
        Words.Refused<ArgumentException>(
            "liftPumps",
            "'lift a', 'engine'",
            () => SurgeTankBalance.FromState(state, "engine", ["lift a"])
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "usableVolume",
            () => _ = Network.Node.SurgeTank("surge", default, default, Volume.FromLiters(0))
        );
    }

    /// <summary>200 L/h go, 150 come, 144 s: a danger without end or for as long; three quarters of a full tank are 108 s.</summary>
    [Theory]
    [InlineData(150, null, Severity.Danger)]
    [InlineData(150, 200.0, Severity.Danger)]
    [InlineData(150, 120.0, Severity.Warning)]
    [InlineData(150, 100.0, Severity.Note)]
    [InlineData(400, null, null)]
    [InlineData(400, 200.0, null)]
    public void Check_ATankThatDrains_SaysHowLongItLasts(double load, double? seconds, Severity? expected)
    {
        SurgeTankBalance balance = SurgeTankBalance.FromState(With(load), "surge", ["lift a"]);

        ImmutableArray<Finding> found = seconds is { } time
            ? balance.Check(Duration.FromSeconds(time))
            : balance.Check();

        Assert.Equal(expected is null ? 0 : 1, found.Length);
        if (expected is not null)
        {
            Assert.Equal(
                (FindingCode.SurgeTankDrains, expected, "surge"),
                (found[0].Code, found[0].Severity, found[0].Part)
            );
            Close.Within(1e-7, 144, ((Duration)found[0].ValueQuantity!).Seconds);
        }
    }

    /// <summary>175 L/h drawn, 135 L/h brought: 2 L are gone in 180 s, and a verdict on it is "do not run".</summary>
    [Fact]
    public void Check_DrainingWithoutEnd_ComesToDoNotRun()
    {
        // 500 - 100 u = 185.7 u: 1.75; 81 - 50 u = 10 u: 1.35.
        var state = Fuel(
                Fixed("tank", 0),
                Surge("surge"),
                Surge("engine"),
                Junction("lifted"),
                Junction("out"),
                OwnLine.Pump("lift", "tank", "lifted", Straight(OutsideRange.Extend, (0, 81), (100, 31))),
                Linear("line", "lifted", "surge", 10),
                OwnLine.Pump("main", "surge", "out", Straight(OutsideRange.Extend, (0, 500), (100, 400))),
                Linear("load", "out", "engine", 1300.0 / 7)
            )
            .Solve();
        SurgeTankBalance balance = SurgeTankBalance.FromState(state, "surge", ["lift"]);

        Close.Within(1e-7, 135, balance.LiftFlow.LitersPerHour);
        Close.Within(1e-7, 175, balance.DrawnFlow.LitersPerHour);
        Close.Within(1e-7, 180, balance.LastsWithLift().Seconds);
        Assert.Equal(Verdict.Outcome.DoNotRun, Verdict.Of(balance.Check()).Kind);
    }
}

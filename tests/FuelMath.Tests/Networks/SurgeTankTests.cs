using FuelMath.Networks;
using FuelMath.Tables;
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
    private static readonly SurgeTank Tank = new("surge", Volume.FromLiters(2));

    private static NetworkState With(double load) =>
        Fuel(
                Fixed("left", 0),
                Fixed("right", 0),
                Fixed("surge", 0),
                Fixed("engine", 0),
                Junction("lifted a"),
                Junction("lifted b"),
                Junction("out"),
                Lift("lift a", "left", "lifted a", 50),
                Linear("line a", "lifted a", "surge", 10),
                Lift("lift b", "right", "lifted b", 40),
                Linear("line b", "lifted b", "surge", 10),
                NetworkLink.Pump("main", "surge", "out", Straight(OutsideRange.Extend, (0, 500), (100, 400))),
                Linear("load", "out", "engine", load)
            )
            .Solve();

    private static NetworkLink Lift(string name, string from, string to, double shutoff) =>
        NetworkLink.Pump(name, from, to, Straight(OutsideRange.Refuse, (0, shutoff), (100, shutoff - 50)));

    /// <summary>500 - 100 u = 400 u: 100 L/h go, 150 come. Without the left lift 33.3 L/h are missing: 2 L last 216 s.</summary>
    [Fact]
    public void BalanceIn_MoreComesThanGoes_OverflowsAndLastsWithoutLift()
    {
        SurgeTankBalance balance = Tank.BalanceIn(With(400), "lift a");

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
        SurgeTankBalance balance = Tank.BalanceIn(With(150), "lift a");

        Assert.False(balance.Overflows);
        Assert.True(balance.DrainsWithLift);
        Assert.Equal(0, balance.OverflowFlow.LitersPerHour);
        Close.Within(1e-7, 144, balance.LastsWithLift().Seconds);
    }

    [Fact]
    public void BalanceIn_WrongPlaces_AreRefused()
    {
        NetworkState state = With(400);

        Words.Refused<ArgumentException>(
            "state",
            "Surge tank 'out' must be a node of fixed pressure.",
            () => new SurgeTank("out", Volume.FromLiters(2)).BalanceIn(state, "lift a")
        );
        Words.Refused<ArgumentException>(
            "liftPump",
            "'main' draws from 'surge' and is joined to 'load'",
            () => Tank.BalanceIn(state, "load")
        );
        Words.Refused<ArgumentException>(
            "liftPump",
            "'lift a' does not lead to 'engine'.",
            () => new SurgeTank("engine", Volume.FromLiters(2)).BalanceIn(state, "lift a")
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "usableVolume",
            "Must be finite and greater than zero; it was ",
            () => _ = new SurgeTank("surge", Volume.FromLiters(0))
        );
    }
}

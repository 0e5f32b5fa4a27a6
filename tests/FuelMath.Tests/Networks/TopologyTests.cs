using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>
/// The shapes that fuel systems have, worked by hand. All losses are linear; u is the flow in 100 L/h, pressures are kPa.
/// </summary>
[Trait("Source", "Definition")]
public sealed class TopologyTests
{
    private const double Exact = 1e-8;

    private static OwnRegulator Set(double kilopascals) =>
        new(Kilopascals(kilopascals), Gauge(0), Kilopascals(5), LitersPerHour(100));

    private static OwnLine Pump(string name, string from, string to, double shutoff, double fall) =>
        OwnLine.Pump(name, from, to, Straight(OutsideRange.Extend, (0, shutoff), (100, shutoff - fall)));

    /// <summary>500 - 100 u - 20 u = 300: 166.7 L/h come, 50 are injected, the rest returns against 10 u.</summary>
    [Fact]
    public void SingleFeed_WithReturn_HoldsTheRail()
    {
        NetworkState state = Fuel(
                Fixed("tank", 0),
                Fixed("manifold", 0),
                Junction("out"),
                Junction("rail"),
                Junction("return"),
                Pump("pump", "tank", "out", 500, 100),
                Linear("feed", "out", "rail", 20),
                Injector("injectors", "rail", "manifold", 100, 50),
                OwnLine.BypassRegulator("regulator", "rail", "return", Set(300)),
                Linear("way back", "return", "tank", 10)
            )
            .Solve();

        Close.Within(Exact, 300, state.KilopascalsAt("rail"));
        Close.Within(Exact, 500.0 / 3, state.LitersPerHourIn("pump"));
        Close.Within(Exact, (500.0 / 3) - 50, state.LitersPerHourIn("way back"));
        Close.Within(Exact, 0.1 * ((500.0 / 3) - 50), state.KilopascalsAt("return"));
        Assert.Equal(Network.LineCondition.Regulating, state.ConditionOf("regulator"));
        Assert.Equal(Network.LineCondition.Commanded, state.ConditionOf("injectors"));
    }

    /// <summary>
    /// Legs of 20 u and a bridge of 5 u: x over the bridge is 4 (a - b), with a + x = 0.9 and b - x = 0.3. Draws of 60 on
    /// both sides leave the bridge still.
    /// </summary>
    [Theory]
    [InlineData(90, 30, 80.0 / 3)]
    [InlineData(60, 60, 0)]
    public void FeedSplitByAY_ToTwoRailsThatJoin_SharesByHand(double drawA, double drawB, double bridge)
    {
        NetworkState state = Fuel(
                Fixed("supply", 300),
                Junction("y"),
                Drawn("rail-a", drawA),
                Drawn("rail-b", drawB),
                Linear("feed", "supply", "y", 10),
                Linear("leg a", "y", "rail-a", 20),
                Linear("leg b", "y", "rail-b", 20),
                Linear("bridge", "rail-b", "rail-a", 5)
            )
            .Solve();

        Close.WithinOf(100, Exact, bridge, state.LitersPerHourIn("bridge"));
        Close.Within(Exact, drawA - bridge, state.LitersPerHourIn("leg a"));
        Close.Within(Exact, 288, state.KilopascalsAt("y"));
        Close.Within(Exact, 288 - (0.2 * (drawA - bridge)), state.KilopascalsAt("rail-a"));
    }

    [Fact]
    public void RailsInSeries_LoseOneAfterTheOther()
    {
        NetworkState state = Fuel(
                Fixed("supply", 300),
                Drawn("first", 60),
                Drawn("second", 40),
                Linear("feed", "supply", "first", 10),
                Linear("between", "first", "second", 10)
            )
            .Solve();

        Close.Within(Exact, 290, state.KilopascalsAt("first"));
        Close.Within(Exact, 286, state.KilopascalsAt("second"));
    }

    /// <summary>800 - 100 u against a draw of 100 L/h: the pump stands at 700, the regulator holds 400, the line loses 10.</summary>
    [Fact]
    public void WithoutReturn_ReducingRegulatorAtTheTank_HoldsTheLine()
    {
        NetworkState state = Fuel(
                Fixed("tank", 0),
                Junction("out"),
                Junction("held"),
                Drawn("rail", 100),
                Pump("pump", "tank", "out", 800, 100),
                OwnLine.ReducingRegulator("regulator", "out", "held", Set(400)),
                Linear("line", "held", "rail", 10)
            )
            .Solve();

        Close.Within(Exact, 700, state.KilopascalsAt("out"));
        Close.Within(Exact, 390, state.KilopascalsAt("rail"));
        Assert.Equal(Network.LineCondition.Regulating, state.ConditionOf("regulator"));
    }

    /// <summary>800 - 100 u = 400: 400 L/h, of which 300 go back inside the tank.</summary>
    [Fact]
    public void WithoutReturn_BypassInTheTank_HoldsTheLine()
    {
        NetworkState state = Fuel(
                Fixed("tank", 0),
                Junction("out"),
                Drawn("rail", 100),
                Pump("pump", "tank", "out", 800, 100),
                OwnLine.BypassRegulator("regulator", "out", "tank", Set(400)),
                Linear("line", "out", "rail", 10)
            )
            .Solve();

        Close.Within(Exact, 390, state.KilopascalsAt("rail"));
        Close.Within(Exact, 300, state.LitersPerHourIn("regulator"));
        Assert.Equal(Network.LineCondition.Regulating, state.ConditionOf("regulator"));
    }

    /// <summary>A ring of 10 u one way and 20 u + 30 u the other: 120 L/h split five to one.</summary>
    [Fact]
    public void Loop_SharesByItsResistances()
    {
        NetworkState state = Fuel(
                Fixed("supply", 300),
                Junction("corner"),
                Drawn("rail", 120),
                Linear("short way", "supply", "rail", 10),
                Linear("long way", "supply", "corner", 20),
                Linear("further", "corner", "rail", 30)
            )
            .Solve();

        Close.Within(Exact, 100, state.LitersPerHourIn("short way"));
        Close.Within(Exact, 20, state.LitersPerHourIn("further"));
        Close.Within(Exact, 290, state.KilopascalsAt("rail"));
    }

    /// <summary>A second feed of less pressure is held shut; a dead end and an empty branch show the rail's pressure.</summary>
    [Fact]
    public void ShutFeedDeadEndAndEmptyBranch_StandStill()
    {
        NetworkState state = Fuel(
                Fixed("supply", 300),
                Fixed("weak supply", 250),
                Drawn("rail", 100),
                Junction("end of rail"),
                Junction("empty branch"),
                Linear("feed", "supply", "rail", 10),
                Check("check", "weak supply", "rail", 0),
                Hose("stub", "rail", "end of rail", 0.2, 8),
                Linear("branch", "rail", "empty branch", 10)
            )
            .Solve();

        Close.Within(Exact, 290, state.KilopascalsAt("rail"));
        Close.Within(Exact, 290, state.KilopascalsAt("end of rail"));
        Close.Within(Exact, 290, state.KilopascalsAt("empty branch"));
        Close.WithinOf(100, Exact, 0, state.LitersPerHourIn("stub"));
        Close.WithinOf(100, Exact, 0, state.LitersPerHourIn("branch"));
        Assert.Equal(0, state.LitersPerHourIn("check"));
        Assert.Equal(Network.LineCondition.Shut, state.ConditionOf("check"));
    }
}

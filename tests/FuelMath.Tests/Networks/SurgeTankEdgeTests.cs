using System.Collections.Immutable;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>
/// A surge tank of 1 L whose flows are fed and drawn as given numbers, so that what comes, returns and goes is known to the
/// last digit: at its limits and just beside them.
/// </summary>
[Trait("Source", "Definition")]
public sealed class SurgeTankEdgeTests
{
    /// <summary>100 L/h lifted and 50 returned, 150 drawn: within a billionth of their sum of 300, as much comes as goes.</summary>
    [Theory]
    [InlineData(0, false, false)]
    [InlineData(2.7e-7, false, false)]
    [InlineData(3.3e-7, true, false)]
    [InlineData(-2.7e-7, false, false)]
    [InlineData(-3.3e-7, false, true)]
    public void Balance_WithinABillionth_NeitherDrainsNorOverflows(double more, bool drains, bool overflows)
    {
        SurgeTankBalance balance = SurgeTankBalance.FromState(Fed(100, 50, 150 + more), "surge", ["lift"]);

        Assert.Equal((drains, overflows), (balance.DrainsWithLift, balance.Overflows));
        Assert.Equal(overflows ? -more : 0, balance.OverflowFlow.LitersPerHour, 1e-11);
        Assert.Equal(drains ? 1 : 0, balance.Check().Length);
        Assert.Equal(drains ? 1 : 0, balance.Check(Duration.FromSeconds(1)).Length);
        Assert.True(balance.DrainsWithoutLift);
    }

    /// <summary>Nothing lifted, and as much returned as drawn: it lasts without its lift as well.</summary>
    [Fact]
    public void Balance_OfWhatReturns_NeedsNoLift()
    {
        SurgeTankBalance balance = SurgeTankBalance.FromState(Fed(0, 150, 150), "surge", ["lift"]);

        Assert.False(balance.DrainsWithLift || balance.DrainsWithoutLift || balance.Overflows);
        Assert.Throws<InvalidOperationException>(() => balance.LastsWithoutLift());
    }

    /// <summary>10 L/h are missing: 1 L lasts 360 s. Asked for as long it is a danger, for more than 270 s a warning.</summary>
    [Fact]
    public void Check_AtItsLimits_FollowsThem()
    {
        SurgeTankBalance balance = SurgeTankBalance.FromState(Fed(100, 50, 160), "surge", ["lift"]);
        double lasts = balance.LastsWithLift().Seconds;
        Close.Within(1e-9, 360, lasts);

        Assert.Equal(Severity.Danger, Asked(lasts));
        Assert.Equal(Severity.Warning, Asked(Math.BitDecrement(lasts)));
        Assert.Equal(Severity.Warning, Asked(Math.BitIncrement(0.75 * lasts)));
        Assert.Equal(Severity.Note, Asked(0.75 * lasts));
        Close.Within(1e-9, 1000 / (110 / 3.6), balance.LastsWithoutLift().Seconds);

        Severity Asked(double seconds) => Assert.Single(balance.Check(Duration.FromSeconds(seconds))).Severity;
    }

    /// <summary>Each line counts where it flows, whichever of its ends is at the tank.</summary>
    [Theory]
    [InlineData(100, 50, 160, 100, 50, 160)]
    [InlineData(100, -50, 160, 100, 0, 210)]
    [InlineData(100, 50, -160, 100, 210, 0)]
    [InlineData(100, 0, 0, 100, 0, 0)]
    public void FromState_SortsLinesByWhatTheyCarry(
        double lift,
        double back,
        double drawn,
        double lifted,
        double returned,
        double gone
    )
    {
        SurgeTankBalance balance = SurgeTankBalance.FromState(Fed(lift, back, drawn), "surge", ["lift"]);

        Close.WithinOf(100, 1e-12, lifted, balance.LiftFlow.LitersPerHour);
        Close.WithinOf(100, 1e-12, returned, balance.ReturnFlow.LitersPerHour);
        Close.WithinOf(100, 1e-12, gone, balance.DrawnFlow.LitersPerHour);
        Assert.Equal("lift", Assert.Single(balance.LiftPumps));
        Assert.Equal("surge", balance.Node);
    }

    /// <summary>A lift that draws from the tank is none; where it may stand still, what it takes is drawn.</summary>
    [Fact]
    public void FromState_ALiftThatTakes_IsRefusedUnlessItMayStop()
    {
        NetworkState state = Fed(-40, 50, 60);

        Assert.Equal(
            RefusalCode.JoinedByAnother,
            Refusal
                .Of(Assert.Throws<ArgumentException>(() => SurgeTankBalance.FromState(state, "surge", ["lift"])))!
                .Code
        );
        SurgeTankBalance balance = SurgeTankBalance.FromStoppable(state, "surge", ["lift"]);
        Assert.Equal(0, balance.LiftFlow.LitersPerHour);
        Close.WithinOf(100, 1e-12, 50, balance.ReturnFlow.LitersPerHour);
        Close.WithinOf(100, 1e-12, 100, balance.DrawnFlow.LitersPerHour);
    }

    /// <summary>
    /// Two lifts from one tank are two, because the tank gives each what it draws; two that meet at a junction are one: the
    /// other does not stand still alone.
    /// </summary>
    [Fact]
    public void FromState_LiftsFromOneTank_AreTwo()
    {
        // 20, 30 and 60 kPa over 10 kPa per 100 L/h; the last one over twice as much in two pieces.
        NetworkState state = Fuel(
                Fixed("tank", 20),
                Surge(0),
                Fixed("high", 60),
                Junction("between"),
                Drawn("engine", 100),
                Linear("first", "tank", "surge", 10),
                Linear("second", "tank", "surge", 20),
                Linear("third", "high", "between", 10),
                Linear("fourth", "between", "surge", 10),
                Linear("feed", "surge", "engine", 10)
            )
            .Solve();

        Flows(["first"], 200, 100 + 300);
        Flows(["second"], 100, 200 + 300);
        Flows(["third"], 300, 200 + 100);
        Flows(["fourth"], 300, 200 + 100);
        Flows(["first", "second"], 300, 300);

        void Flows(string[] pumps, double lift, double back)
        {
            SurgeTankBalance balance = SurgeTankBalance.FromState(state, "surge", pumps);
            Close.Within(1e-8, lift, balance.LiftFlow.LitersPerHour);
            Close.Within(1e-8, back, balance.ReturnFlow.LitersPerHour);
            Close.Within(1e-8, 100, balance.DrawnFlow.LitersPerHour);
            Assert.Equal(pumps, balance.LiftPumps.AsEnumerable());
        }
    }

    [Fact]
    public void FromState_NoSurgeTankOrNoWay_IsRefused()
    {
        NetworkState state = Fed(100, 50, 160);

        Code(RefusalCode.WrongKind, "node", "tank", ["lift"]);
        Code(RefusalCode.WrongKind, "node", "lifted", ["lift"]);
        Code(RefusalCode.NotThere, "liftPumps", "surge", ["aside"]);
        Code(RefusalCode.NotThere, "liftPumps", "surge", []);

        void Code(RefusalCode code, string paramName, string node, string[] pumps)
        {
            var refusal = Assert.Throws<ArgumentException>(() => SurgeTankBalance.FromState(state, node, pumps));
            Assert.Equal((code, paramName), (Refusal.Of(refusal)!.Code, refusal.ParamName));
        }
    }

    private static Network.Node Surge(double kilopascals) =>
        Network.Node.SurgeTank("surge", Gauge(kilopascals), default, Volume.FromLiters(1));

    /// <summary>So many L/h led to the surge tank, led back to it by a line in the other direction, and drawn from it.</summary>
    private static NetworkState Fed(double lift, double back, double drawn) =>
        Fuel(
                Surge(100),
                Fixed("tank", 0),
                Drawn("lifted", -lift),
                Drawn("back", -back),
                Drawn("engine", drawn),
                Junction("blind"),
                Linear("lift", "lifted", "surge", 1),
                Linear("return", "surge", "back", 1),
                Linear("feed", "surge", "engine", 1),
                Linear("aside", "tank", "blind", 1)
            )
            .Solve();
}

using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Where the search for meeting points begins and ends, what it counts, and what it says when it can't.</summary>
[Trait("Source", "Definition")]
public sealed class HumpSearchEdgeTests
{
    /// <summary>
    /// The curve hardly falls at its end, 5 kPa for each 100 L/h, and the network asks for 1: they meet at 505 / 6, forty
    /// times as far as the last point, so that the search must go on beyond it.
    /// </summary>
    [Theory]
    [InlineData(1, 505.0 / 6)]
    [InlineData(0.01, 505 / 5.01)]
    [InlineData(400, 505.0 / 405)]
    public void SolveAll_FarBeyondTheLastPoint_MeetsThere(double load, double flow)
    {
        PlainPump pump = Straight(OutsideRange.Extend, (0, 300), (100, 500), (200, 495));

        Network.Solution only = Assert.Single(HumpTests.Lifted(pump, 0, load, 0).SolveAll());

        Assert.True(only.IsStable);
        Close.Within(1e-7, 100 * flow, only.State.LitersPerHourIn("pump"));
    }

    /// <summary>
    /// A curve below nothing all over, as of a pump that hinders. 650 kPa drive the fuel against -200 - 200 (u - 1) of its
    /// fall and 300 u of the load.
    /// </summary>
    [Fact]
    public void SolveAll_ACurveBelowNothing_IsSearched()
    {
        PlainPump pump = Straight(OutsideRange.Extend, (0, -300), (100, -200), (200, -400));

        Network network = Fuel(
            Fixed("supply", 600),
            Fixed("tank", -50),
            Junction("out"),
            OwnLine.Pump("pump", "supply", "out", pump),
            Linear("load", "out", "tank", 300)
        );

        Network.Solution only = Assert.Single(network.SolveAll());

        Close.Within(1e-7, 130, only.State.LitersPerHourIn("pump"));
        Close.Within(1e-7, 340, only.State.KilopascalsAt("out"));
    }

    /// <summary>
    /// All solves of the search count: some sixty of one pump, each of an iteration or more, and twice as many for two pumps
    /// that a tank parts.
    /// </summary>
    [Fact]
    public void SolveAll_CountsTheIterationsOfTheWholeSearch()
    {
        PlainPump pump = Straight(OutsideRange.Refuse, (0, 300), (100, 500), (200, 100));
        object[] One(string at) =>
            [
                Junction($"out {at}"),
                OwnLine.Pump($"pump {at}", "tank", $"out {at}", pump),
                Linear($"load {at}", $"out {at}", "tank", 150),
            ];

        int single = Assert.Single(Fuel([Fixed("tank", 0), .. One("a")]).SolveAll()).State.Iterations;
        int both = Assert.Single(Fuel([Fixed("tank", 0), .. One("a"), .. One("b")]).SolveAll()).State.Iterations;

        Assert.InRange(single, 10, 500);
        Assert.InRange(both, 1.5 * single, 4 * single);
    }

    /// <summary>The states of two pumps: the last one's meeting points run first, and each remark belongs to its pump.</summary>
    [Fact]
    public void SolveAll_TwoPumps_RunsThroughTheLastOneFirst()
    {
        // 320 + 100 u2 is met at no flow, at 1 - sqrt(0.8) and at sqrt(9.8) - 2; the load of 150 u at 900 / 550 alone.
        Network network = Fuel(
            Fixed("tank", 0),
            Fixed("high", 320),
            Junction("lifted"),
            Junction("level"),
            OwnLine.Pump("three", "tank", "lifted", Peaked),
            OwnLine.Filter("rise", "lifted", "high", LitersPerHour(100), Pressure.Zero, Kilopascals(100)),
            OwnLine.Pump("one", "tank", "level", Peaked),
            Linear("load", "level", "tank", 400)
        );

        var all = network.SolveAll();

        // 300 + 200 u = 400 u at 1.5 is beyond the rise; 900 - 400 u = 400 u at 1.125.
        Assert.Equal([true, false, true], all.Select(s => s.IsStable));
        Assert.All(all, s => Close.Within(1e-7, 112.5, s.State.LitersPerHourIn("one")));
        Close.WithinOf(100, 1e-7, 0, all[0].State.LitersPerHourIn("three"));
        Close.Within(1e-7, 100 * (1 - Math.Sqrt(0.8)), all[1].State.LitersPerHourIn("three"));
        Close.Within(1e-7, 100 * (Math.Sqrt(9.8) - 2), all[2].State.LitersPerHourIn("three"));
        Assert.Equal("stable", all[0].ToString()[^6..]);
        Assert.Equal("not stable", all[1].ToString()[^10..]);
        Assert.Equal(all[2].State.FlowIn("three"), network.Solve(PlainPump.ApproachSide.FreeFlow).FlowIn("three"));
        Assert.Equal(0, network.Solve(PlainPump.ApproachSide.NoFlow).LitersPerHourIn("three"), 1e-6);
    }

    /// <summary>Noise is a thousandth of a pascal and a billionth of a pressure of either sign.</summary>
    [Theory]
    [InlineData(0, 1e-3)]
    [InlineData(2e6, 3e-3)]
    [InlineData(-2e6, 3e-3)]
    public void Noise_IsTheErrorThatAStateMayHave(double pressure, double expected) =>
        Assert.Equal(expected, HumpSearch.Noise(pressure), 1e-15);

    /// <summary>The error that is allowed at a pressure, which stops growing at 100 bar.</summary>
    [Theory]
    [InlineData(0, 1e-3)]
    [InlineData(2e6, 3e-3)]
    [InlineData(1e7, 11e-3)]
    [InlineData(1e9, 11e-3)]
    public void PressureLimit_GrowsUpTo100Bar(double pressure, double expected) =>
        Assert.Equal(expected, NetworkWork<Real>.PressureLimit(new(pressure)).Value, 1e-15);

    private static PlainPump Peaked => Straight(OutsideRange.Refuse, (0, 300), (100, 500), (200, 100));
}

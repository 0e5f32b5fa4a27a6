using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>A pump of 800 - 100 u (kPa, u in 100 L/h) with a relief valve of 600 kPa + 20 u2, worked by hand.</summary>
[Trait("Source", "Definition")]
public sealed class ReliefValveTests
{
    private static NetworkState WithLoad(double load, double behind) =>
        Fuel(
                Fixed("tank", behind),
                Junction("out"),
                OwnLine.Pump("pump", "tank", "out", Straight(OutsideRange.Refuse, (0, 800), (400, 400))),
                OwnLine.CheckValve("relief", "out", "tank", Kilopascals(600), Kilopascals(20), LitersPerHour(100)),
                Linear("load", "out", "tank", load)
            )
            .Solve();

    /// <summary>800 - 100 u = 300 u: 600 kPa at 2, where it just does not open.</summary>
    [Theory]
    [InlineData(100, 400)]
    [InlineData(290, 800.0 * 29 / 39)]
    public void Solve_BelowItsDifference_IsShut(double load, double rise)
    {
        NetworkState state = WithLoad(load, 0);

        Assert.Equal(Network.LineCondition.Shut, state.ConditionOf("relief"));
        Assert.Equal(0, state.LitersPerHourIn("relief"));
        Close.Within(1e-8, rise, state.KilopascalsAt("out"));
    }

    /// <summary>800 - 100 (u + (600 + 20 u2)/1000) = 600 + 20 u2: 22 u2 + 100 u = 140 for the relief's own flow u.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(50)]
    public void Solve_AboveIt_RelievesThePump(double behind)
    {
        NetworkState state = WithLoad(1000, behind);

        double u = (-100 + Math.Sqrt((100 * 100) + (4 * 22 * 140))) / (2 * 22);
        Assert.Equal(Network.LineCondition.Open, state.ConditionOf("relief"));
        Close.Within(1e-8, 100 * u, state.LitersPerHourIn("relief"));
        Close.Within(1e-8, 600 + (20 * u * u) + behind, state.KilopascalsAt("out"));
    }
}

using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>
/// Both types of regulator worked by hand. All other losses are linear, so that each state is a line or a parabola. u is the
/// flow in 100 L/h, pressures are kPa. The solver leaves a billionth; a hundred millionth is asked for.
/// </summary>
[Trait("Source", "Definition")]
public sealed class RegulatorTests
{
    private const double Exact = 1e-8;

    /// <summary>Set to 300 kPa, and 5 u2 fully open.</summary>
    private static OwnRegulator Set300 => new(Kilopascals(300), Gauge(0), Kilopascals(5), LitersPerHour(100));

    /// <summary>500 - 100 u = 300.</summary>
    [Fact]
    public void Bypass_EnoughFlow_Regulates()
    {
        NetworkState state = Bypass(500, 10, Set300);

        Assert.Equal(Network.LineCondition.Regulating, state.ConditionOf("regulator"));
        Close.Within(Exact, 300, state.KilopascalsAt("rail"));
        Close.Within(Exact, 200, state.LitersPerHourIn("regulator"));
        Close.Within(Exact, 20, state.KilopascalsAt("return"));
    }

    /// <summary>500 - 100 u = 300 + 10 u.</summary>
    [Fact]
    public void Bypass_WithSlope_HoldsMoreAtMoreFlow()
    {
        NetworkState state = Bypass(500, 10, Set300.WithSlope(Kilopascals(10), LitersPerHour(100)));

        Close.Within(Exact, 100 * 200.0 / 110, state.LitersPerHourIn("regulator"));
        Close.Within(Exact, 300 + (10 * 200.0 / 110), state.KilopascalsAt("rail"));
    }

    /// <summary>500 - 100 u = 300 - 0.05 (10 u): the return line's pressure pushes on the seat.</summary>
    [Fact]
    public void Bypass_WithReturnInfluence_HoldsLess()
    {
        NetworkState state = Bypass(500, 10, Set300.WithReturnInfluence(Ratio.FromPercent(5)));

        Close.Within(Exact, 300 - (0.5 * 200.0 / 99.5), state.KilopascalsAt("rail"));
    }

    /// <summary>The reference counts one and the influence: 300 + 1.05 x 40 - 0.05 p.</summary>
    [Fact]
    public void Bypass_WithReferenceAndInfluence_FollowsTheForceBalance()
    {
        OwnRegulator boosted = new OwnRegulator(
            Kilopascals(300),
            Gauge(40),
            Kilopascals(5),
            LitersPerHour(100)
        ).WithReturnInfluence(Ratio.FromPercent(5));

        NetworkState state = Bypass(500, 10, boosted);

        double u = (500 - 342) / 99.5;
        Close.Within(Exact, 342 - (0.5 * u), state.KilopascalsAt("rail"));
    }

    [Theory]
    [InlineData(250, 250)]
    [InlineData(299.999, 299.999)]
    public void Bypass_SupplyBelowItsSetPoint_IsSeated(double supply, double rail)
    {
        NetworkState state = Bypass(supply, 10, Set300);

        Assert.Equal(Network.LineCondition.Seated, state.ConditionOf("regulator"));
        Assert.Equal(0, state.LitersPerHourIn("regulator"));
        Close.Within(Exact, rail, state.KilopascalsAt("rail"));
    }

    /// <summary>A hundredth of a kPa above the crossover a hundredth of a L/h is bypassed: 0.01 = 100 u.</summary>
    [Fact]
    public void Bypass_SupplyJustAboveItsSetPoint_OpensByThatMuch()
    {
        NetworkState state = Bypass(300.01, 10, Set300);

        Assert.Equal(Network.LineCondition.Regulating, state.ConditionOf("regulator"));
        Close.Within(1e-6, 0.01, state.LitersPerHourIn("regulator"));
    }

    /// <summary>500 - 100 u = 200 u + 5 u2: the return line is too small.</summary>
    [Fact]
    public void Bypass_SmallReturnLine_IsFullyOpenAndLiftsTheRail()
    {
        NetworkState state = Bypass(500, 200, Set300);

        double u = (Math.Sqrt((300 * 300) + (4 * 5 * 500)) - 300) / 10;
        Assert.Equal(Network.LineCondition.FullyOpen, state.ConditionOf("regulator"));
        Close.Within(Exact, 500 - (100 * u), state.KilopascalsAt("rail"));
        Assert.True(state.KilopascalsAt("rail") > 300);
    }

    /// <summary>At u = 2 the return line r u and the open valve 5 u2 make 300 for r = 140.</summary>
    [Theory]
    [InlineData(139.999, Network.LineCondition.Regulating)]
    [InlineData(140.001, Network.LineCondition.FullyOpen)]
    public void Bypass_AtTheCrossoverToFullyOpen_IsContinuous(double returnLoss, Network.LineCondition condition)
    {
        NetworkState state = Bypass(500, returnLoss, Set300);

        Assert.Equal(condition, state.ConditionOf("regulator"));
        Close.Within(1e-5, 300, state.KilopascalsAt("rail"));
    }

    /// <summary>300 = 100 u behind it.</summary>
    [Fact]
    public void Reducing_EnoughPressure_Regulates()
    {
        NetworkState state = Reducing(500, Set300);

        Assert.Equal(Network.LineCondition.Regulating, state.ConditionOf("regulator"));
        Close.Within(Exact, 300, state.KilopascalsAt("rail"));
        Close.Within(Exact, 300, state.LitersPerHourIn("regulator"));
    }

    /// <summary>300 - 10 u = 100 u.</summary>
    [Fact]
    public void Reducing_WithSlope_HoldsLessAtMoreFlow()
    {
        NetworkState state = Reducing(500, Set300.WithSlope(Kilopascals(10), LitersPerHour(100)));

        Close.Within(Exact, 100 * 300.0 / 110, state.KilopascalsAt("rail"));
    }

    /// <summary>200 - 5 u2 = 100 u: the supply is too low, and the rail starves.</summary>
    [Fact]
    public void Reducing_LowSupply_IsFullyOpenAndStarves()
    {
        NetworkState state = Reducing(200, Set300);

        double u = (Math.Sqrt((100 * 100) + (4 * 5 * 200)) - 100) / 10;
        Assert.Equal(Network.LineCondition.FullyOpen, state.ConditionOf("regulator"));
        Close.Within(Exact, 100 * u, state.KilopascalsAt("rail"));
    }

    /// <summary>At u = 3 the open valve loses 45: the crossover is a supply of 345.</summary>
    [Theory]
    [InlineData(345.001, Network.LineCondition.Regulating)]
    [InlineData(344.999, Network.LineCondition.FullyOpen)]
    public void Reducing_AtTheCrossoverToFullyOpen_IsContinuous(double supply, Network.LineCondition condition)
    {
        NetworkState state = Reducing(supply, Set300);

        Assert.Equal(condition, state.ConditionOf("regulator"));
        Close.Within(1e-5, 300, state.KilopascalsAt("rail"));
    }

    /// <summary>Another supply holds the rail above the set point: satisfied, so nothing passes.</summary>
    [Theory]
    [InlineData(350, Network.LineCondition.Seated)]
    [InlineData(300.001, Network.LineCondition.Seated)]
    [InlineData(299.999, Network.LineCondition.Regulating)]
    public void Reducing_RailHeldByAnother_IsSeatedAboveItsSetPoint(double other, Network.LineCondition condition)
    {
        NetworkState state = Fuel(
                Fixed("supply", 500),
                Fixed("other", other),
                Junction("rail"),
                OwnLine.ReducingRegulator("regulator", "supply", "rail", Set300),
                Linear("from other", "other", "rail", 10)
            )
            .Solve();

        Assert.Equal(condition, state.ConditionOf("regulator"));
        Close.Within(1e-5, Math.Max(other, 300), state.KilopascalsAt("rail"));
    }

    private static NetworkState Bypass(double supply, double returnLoss, OwnRegulator regulator) =>
        Fuel(
                Fixed("supply", supply),
                Fixed("tank", 0),
                Junction("rail"),
                Junction("return"),
                Linear("feed", "supply", "rail", 100),
                OwnLine.BypassRegulator("regulator", "rail", "return", regulator),
                Linear("return line", "return", "tank", returnLoss)
            )
            .Solve();

    private static NetworkState Reducing(double supply, OwnRegulator regulator) =>
        Fuel(
                Fixed("supply", supply),
                Fixed("tank", 0),
                Junction("rail"),
                OwnLine.ReducingRegulator("regulator", "supply", "rail", regulator),
                Linear("load", "rail", "tank", 100)
            )
            .Solve();
}

using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Parts that let flow through one way only, and injectors, by hand. u is the flow in 100 L/h, pressures kPa.</summary>
[Trait("Source", "Definition")]
public sealed class OneWayTests
{
    private const double Exact = 1e-8;

    [Fact]
    public void CappedOrifice_PressureSuffices_DeliversTheCommand()
    {
        NetworkState state = Rail(0, Injector("injectors", "rail", "manifold", 100, 50));

        Assert.Equal(Network.LineCondition.Commanded, state.ConditionOf("injectors"));
        Close.Within(Exact, 50, state.LitersPerHourIn("injectors"));
        Close.Within(Exact, 300 - 5, state.KilopascalsAt("rail"));
    }

    /// <summary>300 - 10 u = 300 u2: held open all the time it gives less than commanded.</summary>
    [Fact]
    public void CappedOrifice_CommandBeyondItsFlow_IsHeldOpen()
    {
        NetworkState state = Rail(0, Injector("injectors", "rail", "manifold", 100, 120));

        double u = (Math.Sqrt(100 + (4 * 300 * 300)) - 10) / 600;
        Assert.Equal(Network.LineCondition.HeldOpen, state.ConditionOf("injectors"));
        Close.Within(Exact, 100 * u, state.LitersPerHourIn("injectors"));
    }

    /// <summary>Nothing commanded, or a manifold above the rail: nothing flows, neither way.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 400)]
    [InlineData(50, 400)]
    public void CappedOrifice_NothingToDeliver_IsShut(double commanded, double manifold)
    {
        NetworkState state = Rail(manifold, Injector("injectors", "rail", "manifold", 100, commanded));

        Assert.Equal(Network.LineCondition.Shut, state.ConditionOf("injectors"));
        Assert.Equal(0, state.LitersPerHourIn("injectors"));
        Close.Within(Exact, 300, state.KilopascalsAt("rail"));
    }

    /// <summary>400 - 300 u2 = 300 + 10 u backwards.</summary>
    [Fact]
    public void Orifice_BackflowAllowed_RunsBackwards()
    {
        NetworkState state = Rail(400, Jet(InjectorDraw.Backflow.Allowed));

        double u = (Math.Sqrt(100 + (4 * 300 * 100)) - 10) / 600;
        Close.Within(Exact, -100 * u, state.LitersPerHourIn("jet"));
        Assert.Equal(Network.LineCondition.Open, state.ConditionOf("jet"));
    }

    [Fact]
    public void Orifice_BackflowPrevented_Shuts()
    {
        NetworkState state = Rail(400, Jet(InjectorDraw.Backflow.Prevented));

        Assert.Equal(0, state.LitersPerHourIn("jet"));
        Assert.Equal(Network.LineCondition.Shut, state.ConditionOf("jet"));
    }

    /// <summary>An opening takes the pressure of its space as it is: air has no weight here, whatever its height.</summary>
    [Fact]
    public void Orifice_IntoASpaceAtAnotherHeight_FeelsNoColumn()
    {
        NetworkState At(double height) =>
            Fuel(
                    Fixed("supply", 300),
                    Fixed("space", 20, height),
                    Junction("rail"),
                    Linear("feed", "supply", "rail", 10),
                    OwnLine.Orifice(
                        "jet",
                        "rail",
                        "space",
                        LitersPerHour(100),
                        Kilopascals(300),
                        InjectorDraw.Backflow.Prevented
                    )
                )
                .Solve();

        Close.Within(Exact, At(0).LitersPerHourIn("jet"), At(3).LitersPerHourIn("jet"));
    }

    /// <summary>It opens at 20 and loses 5 u2 beyond: 100 - 20 - 5 u2 = 10 u.</summary>
    [Fact]
    public void CheckValve_Forward_OpensAtItsPressure()
    {
        NetworkState state = Fuel(
                Fixed("a", 100),
                Fixed("b", 0),
                Junction("behind"),
                Check("check", "a", "behind", 20),
                Linear("load", "behind", "b", 10)
            )
            .Solve();

        double u = (Math.Sqrt(100 + (4 * 5 * 80)) - 10) / 10;
        Close.Within(Exact, 100 * u, state.LitersPerHourIn("check"));
        Assert.Equal(Network.LineCondition.Open, state.ConditionOf("check"));
    }

    [Theory]
    [InlineData(100)]
    [InlineData(19.999)]
    public void CheckValve_NotEnoughForward_IsShut(double kilopascals)
    {
        bool backwards = kilopascals > 20;
        NetworkState state = Fuel(
                Fixed("a", kilopascals),
                Fixed("b", 0),
                Junction("ahead"),
                backwards ? Check("check", "ahead", "a", 20) : Check("check", "a", "ahead", 20),
                Linear("load", "ahead", "b", 10)
            )
            .Solve();

        Assert.Equal(Network.LineCondition.Shut, state.ConditionOf("check"));
        Assert.Equal(0, state.LitersPerHourIn("check"));
        Assert.Empty(state.CutOffNodeNames);
        Assert.True(Math.Abs(state.KilopascalsAt("ahead")) < 1e-6);
    }

    [Fact]
    public void CheckPipe_Backwards_IsShut()
    {
        NetworkState state = Fuel(
                Fixed("low", 0),
                Fixed("high", 100),
                Junction("between"),
                OwnLine.CheckPipe(
                    "pipe",
                    "low",
                    "between",
                    Length.FromMeters(1),
                    Length.FromMillimeters(8),
                    Length.Zero,
                    Ratio.Zero,
                    Pipe.FrictionLaw.ColebrookStraightPassage
                ),
                Linear("load", "between", "high", 10)
            )
            .Solve();

        Assert.Equal(Network.LineCondition.Shut, state.ConditionOf("pipe"));
        Close.Within(Exact, 100, state.KilopascalsAt("between"));
    }

    [Fact]
    public void Pump_AgainstMoreThanItCanGive_Stalls()
    {
        NetworkState state = Fuel(
                Fixed("tank", 0),
                Fixed("high", 300),
                Junction("out"),
                OwnLine.Pump("pump", "tank", "out", Straight(OutsideRange.Refuse, (0, 200), (100, 100))),
                Linear("load", "out", "high", 10)
            )
            .Solve();

        Assert.Equal(Network.LineCondition.Stalled, state.ConditionOf("pump"));
        Assert.Equal(0, state.LitersPerHourIn("pump"));
        Close.Within(Exact, 300, state.KilopascalsAt("out"));
    }

    /// <summary>The check valve is the tighter of the two, so that a gauge between shows the pump's own pressure.</summary>
    [Fact]
    public void Pump_HeldShutByACheckValve_ShowsItsShutoffPressure()
    {
        NetworkState state = Fuel(
                Fixed("tank", 0),
                Fixed("high", 300),
                Junction("between"),
                OwnLine.Pump("pump", "tank", "between", Straight(OutsideRange.Refuse, (0, 200), (100, 100))),
                Check("check", "between", "high", 0)
            )
            .Solve();

        Close.Within(1e-6, 200, state.KilopascalsAt("between"));
        Assert.Equal(Network.LineCondition.Shut, state.ConditionOf("check"));
    }

    /// <summary>A rail behind a shut check valve keeps its pressure: a steady state does not know which.</summary>
    [Fact]
    public void Rail_BetweenShutParts_IsCutOff()
    {
        NetworkState state = Fuel(
                Fixed("tank", 0),
                Fixed("manifold", 50),
                Junction("rail"),
                Junction("end"),
                Check("check", "rail", "tank", 0),
                Hose("rail", "rail", "end", 0.3, 12),
                Injector("injectors", "end", "manifold", 100, 0)
            )
            .Solve();

        Assert.Equal("rail, end", string.Join(", ", state.CutOffNodeNames));
        var error = Assert.Throws<InvalidOperationException>(() => state.PressureAt("rail"));
        Words.Says("'rail'", error);
        Assert.Equal(0, state.LitersPerHourIn("check"));
    }

    /// <summary>A dead end behind a check valve fills to the pressure ahead, less what the valve needs to open.</summary>
    [Fact]
    public void DeadEnd_BehindACheckValve_FillsByItself()
    {
        NetworkState state = Fuel(
                Fixed("supply", 300),
                Fixed("manifold", 50),
                Junction("rail"),
                Junction("end"),
                Check("check", "supply", "rail", 20),
                Hose("rail", "rail", "end", 0.3, 12),
                Injector("injectors", "end", "manifold", 100, 0)
            )
            .Solve();

        Assert.Empty(state.CutOffNodeNames);
        Close.Within(Exact, 280, state.KilopascalsAt("rail"));
        Close.Within(Exact, 280, state.KilopascalsAt("end"));
        Assert.Equal(0, state.LitersPerHourIn("injectors"));
    }

    [Fact]
    public void DeadEnd_BehindAReducingRegulator_FillsToItsSetPoint()
    {
        NetworkState state = Fuel(
                Fixed("supply", 300),
                Junction("rail"),
                OwnLine.ReducingRegulator(
                    "regulator",
                    "supply",
                    "rail",
                    new(Kilopascals(200), Gauge(0), Kilopascals(5), LitersPerHour(100))
                )
            )
            .Solve();

        Close.Within(Exact, 200, state.KilopascalsAt("rail"));
        Assert.Equal(0, state.LitersPerHourIn("regulator"));
    }

    [Fact]
    public void Network_WhereNothingFlows_IsSolved()
    {
        NetworkState state = Fuel(
                Fixed("a", 40),
                Junction("b"),
                Junction("c"),
                Hose("1", "a", "b", 1, 8),
                Hose("2", "b", "c", 1, 8),
                Hose("3", "c", "a", 1, 8),
                OwnLine.Fitting("4", "a", "c", Length.FromMillimeters(8), Ratio.FromDecimalFractions(2))
            )
            .Solve();

        Close.Within(Exact, 40, state.KilopascalsAt("c"));
        Assert.All(state.LineNames, l => Assert.True(Math.Abs(state.LitersPerHourIn(l)) < 1e-6));
    }

    private static OwnLine Jet(InjectorDraw.Backflow backflow) =>
        OwnLine.Orifice("jet", "rail", "manifold", LitersPerHour(100), Kilopascals(300), backflow);

    private static NetworkState Rail(double manifold, OwnLine opening) =>
        Fuel(
                Fixed("supply", 300),
                Fixed("manifold", manifold),
                Junction("rail"),
                Linear("feed", "supply", "rail", 10),
                opening
            )
            .Solve();
}

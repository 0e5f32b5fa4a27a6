using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Networks whose answer is a formula. The solver leaves a billionth; the tests ask for a hundred millionth.</summary>
public sealed class ClosedFormTests
{
    private const double Exact = 1e-8;
    private const double Rho = 740;
    private const double Nu = 0.5e-6;

    /// <summary>Hagen and Poiseuille: Q = pi D4 dp / (128 mu L), for an oil in laminar flow.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void Solve_LaminarHose_FollowsThePower()
    {
        var network = OwnLine.Network(
            Density.FromKilogramsPerCubicMeter(870),
            DynamicViscosity.FromPascalSeconds(0.1),
            [Fixed("a", 20), Fixed("b", 5)],
            [Hose("hose", "a", "b", 2, 6)]
        );

        double expected = Math.PI * Math.Pow(0.006, 4) * 15e3 / (128 * 0.1 * 2);
        Close.Within(Exact, expected, network.Solve().FlowIn("hose").CubicMetersPerSecond);
    }

    /// <summary>The loop of the room's page: 100 L/h over 10 and 40 kPa at 100 L/h, side by side.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_TwoLinearFiltersSideBySide_ShareByHand()
    {
        NetworkState state = Fuel(
                Fixed("a", 50),
                Drawn("b", 100),
                Linear("light", "a", "b", 10),
                Linear("heavy", "a", "b", 40)
            )
            .Solve();

        Close.Within(Exact, 80, state.LitersPerHourIn("light"));
        Close.Within(Exact, 20, state.LitersPerHourIn("heavy"));
        Close.Within(Exact, 42, state.KilopascalsAt("b"));
        Close.Within(Exact, 8, state.PressureDifferenceOver("heavy").Kilopascals);
    }

    /// <summary>For a given loss the transition law gives the velocity without iteration.</summary>
    [Theory]
    [InlineData(20, 2, 8)]
    [InlineData(100, 3, 6)]
    [InlineData(3, 0.5, 12)]
    [Trait("Source", "Colebrook-1939")]
    public void Solve_TurbulentHose_FollowsTheExplicitForm(double kilopascals, double meters, double bore)
    {
        Network network = Fuel(Fixed("a", kilopascals), Fixed("b", 0), Hose("hose", "a", "b", meters, bore));

        double expected = Turbulent(kilopascals * 1e3, meters, bore / 1e3);
        Close.Within(Exact, expected, network.Solve().FlowIn("hose").CubicMetersPerSecond);
    }

    [Fact]
    [Trait("Source", "Colebrook-1939")]
    public void Solve_TwoEqualBranches_CarryTwiceOne()
    {
        Network network = Fuel(
            Fixed("a", 60),
            Junction("end"),
            Fixed("b", 0),
            Hose("one", "a", "end", 2, 7),
            Hose("two", "a", "end", 2, 7),
            Linear("rest", "end", "b", 40)
        );

        NetworkState state = network.Solve();

        double loss = (60 - state.KilopascalsAt("end")) * 1e3;
        Close.Within(Exact, Turbulent(loss, 2, 0.007), state.FlowIn("one").CubicMetersPerSecond);
        Close.Within(Exact, state.LitersPerHourIn("one"), state.LitersPerHourIn("two"));
        Close.Within(Exact, 2 * state.LitersPerHourIn("one"), state.LitersPerHourIn("rest"));
    }

    /// <summary>h0 - b q2 meets K q2 at q = sqrt(h0 / (b + K)).</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_PumpOnASquareLaw_MeetsItByHand()
    {
        Network network = Fuel(
            Fixed("tank", 0),
            Junction("out"),
            OwnLine.Pump(
                "pump",
                "tank",
                "out",
                PlainPump.Power(Kilopascals(600), Point(200, 400), Ratio.FromDecimalFractions(2))
            ),
            OwnLine.Filter("load", "out", "tank", LitersPerHour(100), Pressure.Zero, Kilopascals(70))
        );

        NetworkState state = network.Solve();

        double b = 200.0 / (200 * 200);
        double k = 70.0 / (100 * 100);
        double flow = Math.Sqrt(600 / (b + k));
        Close.Within(Exact, flow, state.LitersPerHourIn("pump"));
        Close.Within(Exact, k * flow * flow, state.KilopascalsAt("out"));
        Assert.Equal(Network.LineCondition.Running, state.ConditionOf("pump"));
    }

    /// <summary>Twice the speed of a pump on a pure square law: twice the flow, four times the pressure.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void Solve_PumpAtTwiceTheSpeed_FollowsTheSimilarityRules()
    {
        PlainPump pump = Straight(OutsideRange.Refuse, (0, 500), (100, 450), (300, 100));
        NetworkState At(double speed) =>
            Fuel(
                    Fixed("tank", 0),
                    Junction("out"),
                    OwnLine.Pump("pump", "tank", "out", pump.AtSpeed(Ratio.FromDecimalFractions(speed))),
                    OwnLine.Filter("load", "out", "tank", LitersPerHour(100), Pressure.Zero, Kilopascals(70))
                )
                .Solve();

        Close.Within(Exact, 2 * At(1).LitersPerHourIn("pump"), At(2).LitersPerHourIn("pump"));
        Close.Within(Exact, 4 * At(1).KilopascalsAt("out"), At(2).KilopascalsAt("out"));
    }

    /// <summary>Still fluid: rho g z below a tank, and nothing flows.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void Solve_DeadEnd_ShowsTheWeightOfTheColumn()
    {
        Network network = Fuel(
            Fixed("tank", 10, 1),
            Junction("low", -0.5),
            Junction("lower", -2),
            Hose("down", "tank", "low", 2, 8),
            Hose("further", "low", "lower", 2, 8)
        );

        NetworkState state = network.Solve();

        Close.Within(Exact, 10 + (Rho * 9.80665 * 1.5 / 1e3), state.KilopascalsAt("low"));
        Close.Within(Exact, 10 + (Rho * 9.80665 * 3 / 1e3), state.KilopascalsAt("lower"));
        Assert.True(Math.Abs(state.LitersPerHourIn("down")) < 1e-9);
    }

    /// <summary>A siphon between two tanks moves by the difference of their levels alone.</summary>
    [Fact]
    [Trait("Source", "Colebrook-1939")]
    public void Solve_TwoTanksOfDifferentLevel_FollowTheHead()
    {
        Network network = Fuel(
            Fixed("high", 0, 1.5),
            Junction("top", 2.5),
            Fixed("low", 0, 0.25),
            Hose("up", "high", "top", 1, 8),
            Hose("down", "top", "low", 1, 8)
        );

        double expected = Turbulent(Rho * 9.80665 * 1.25, 2, 0.008);
        Close.Within(Exact, expected, network.Solve().FlowIn("down").CubicMetersPerSecond);
    }

    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_FixedDraws_AddUp()
    {
        Network network = Fuel(
            Fixed("supply", 300),
            Drawn("first", 30),
            Drawn("second", 12),
            Linear("to first", "supply", "first", 10),
            Linear("to second", "first", "second", 10)
        );

        NetworkState state = network.Solve();

        Close.Within(Exact, 42, state.LitersPerHourIn("to first"));
        Close.Within(Exact, 300 - 4.2 - 1.2, state.KilopascalsAt("second"));
    }

    /// <summary>V = -2 sqrt(2 g D h / L) log10(e/(3.7 D) + 2.51 nu / (D sqrt(2 g D h / L))), as a flow.</summary>
    private static double Turbulent(double pascals, double length, double bore)
    {
        double root = Math.Sqrt(2 * pascals / Rho * bore / length);
        double velocity = -2 * root * Math.Log10((1.5e-6 / (3.7 * bore)) + (2.51 * Nu / (bore * root)));
        Assert.True(velocity * bore / Nu > 4000);
        return velocity * Math.PI / 4 * bore * bore;
    }
}

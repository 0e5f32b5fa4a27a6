using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>What a network refuses to be, and what it refuses to answer.</summary>
public sealed class NetworkRefusalTests
{
    private static readonly OwnLine Pipe = Hose("pipe", "a", "b", 1, 8);

    [Fact]
    public void Constructor_NoNodes_IsRefused() => Words.Refused<ArgumentException>("nodes", () => Fuel(Pipe));

    [Fact]
    public void Constructor_NoLinks_IsRefused() => Words.Refused<ArgumentException>("lines", () => Fuel(Fixed("a", 0)));

    [Fact]
    public void Constructor_NoFixedPressure_IsRefused() =>
        Words.Refused<ArgumentException>("nodes", () => Fuel(Junction("a"), Junction("b"), Pipe));

    [Fact]
    public void Constructor_NodeNameTwice_IsRefused() =>
        Words.Refused<ArgumentException>("nodes", "'a'", () => Fuel(Fixed("a", 0), Junction("a"), Pipe));

    [Fact]
    public void Constructor_LinkNameTwice_IsRefused() =>
        Words.Refused<ArgumentException>("lines", "'pipe'", () => Fuel(Fixed("a", 0), Junction("b"), Pipe, Pipe));

    [Fact]
    public void Constructor_LinkToAMissingNode_IsRefused() =>
        Words.Refused<ArgumentException>("lines", "'pipe', 'b'", () => Fuel(Fixed("a", 0), Pipe));

    [Fact]
    public void Constructor_Island_IsRefusedByName() =>
        Words.Refused<ArgumentException>(
            "lines",
            "'c', 'd'",
            () => Fuel(Fixed("a", 0), Junction("b"), Junction("c"), Junction("d"), Pipe, Hose("lost", "c", "d", 1, 8))
        );

    [Fact]
    public void Constructor_OneNodeWithoutAPath_IsRefusedByName() =>
        Words.Refused<ArgumentException>(
            "lines",
            "'rail-b'",
            () => Fuel(Fixed("a", 0), Junction("b"), Junction("rail-b"), Pipe)
        );

    /// <summary>Two of 500 - 500 u (kPa, 100 L/h), 100 kPa lost at 100 L/h before the rail: 500 - 250 u = 100 u.</summary>
    [Fact]
    public void Solve_DrawBeyondTheBank_SaysWhatTheBankGives()
    {
        PlainPump pump = Straight(OutsideRange.Extend, (0, 500), (100, 0));
        Network network = Fuel(
            Fixed("tank", 0),
            Junction("out"),
            Drawn("rail", 612),
            OwnLine.Pump("first", "tank", "out", pump),
            OwnLine.Pump("second", "tank", "out", pump),
            Linear("line", "out", "rail", 100)
        );

        Words.Says("612 L/h, 142.857 L/h, 'first', 'second'", Assert.Throws<NoSolutionException>(network.Solve));
    }

    /// <summary>Where the pump's data end before that, no number is given.</summary>
    [Fact]
    public void Solve_DrawBeyondTheDataOfThePump_GivesNoGuess() =>
        Assert.StartsWith(
            "Draws need 300 L/h. The pressure at 'rail' would have to be -1000 kPa gauge;",
            Assert
                .Throws<NoSolutionException>(() =>
                    Fuel(
                            Fixed("tank", 0),
                            Drawn("rail", 300),
                            OwnLine.Pump("pump", "tank", "rail", Straight(OutsideRange.Refuse, (0, 500), (60, 200)))
                        )
                        .Solve()
                )
                .Reason,
            StringComparison.Ordinal
        );

    [Fact]
    public void Constructor_OpeningIntoAJunction_IsRefused() =>
        Words.Refused<ArgumentException>(
            "lines",
            "'jet', 'b'",
            () => Fuel(Fixed("a", 0), Junction("b"), Injector("jet", "a", "b", 100, 50))
        );

    [Fact]
    public void Constructor_NullNode_IsRefused() =>
        Words.Says(
            "1",
            Assert.Throws<ArgumentException>(() =>
                OwnLine.Network(
                    Density.FromKilogramsPerCubicMeter(740),
                    KinematicViscosity.FromCentistokes(0.5),
                    [Fixed("a", 0), null!],
                    [Pipe]
                )
            )
        );

    [Theory]
    [InlineData(0, 0.5, "density")]
    [InlineData(-740, 0.5, "density")]
    [InlineData(740, 0, "viscosity")]
    public void Constructor_ImpossibleFluid_IsRefused(double density, double viscosity, string paramName) =>
        Words.Refused<ArgumentOutOfRangeException>(
            paramName,
            "Must be finite and greater than zero; it was ",
            () =>
                _ = OwnLine.Network(
                    Density.FromKilogramsPerCubicMeter(density),
                    KinematicViscosity.FromCentistokes(viscosity),
                    [Fixed("a", 0), Junction("b")],
                    [Pipe]
                )
        );

    [Fact]
    public void FromDynamicViscosity_Zero_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "viscosity",
            "0",
            () =>
                OwnLine.Network(
                    Density.FromKilogramsPerCubicMeter(740),
                    DynamicViscosity.Zero,
                    [Fixed("a", 0), Junction("b")],
                    [Pipe]
                )
        );

    /// <summary>A pump that gives 500 - 500 u (kPa, 100 L/h) can't bring 300 L/h to anywhere above vacuum.</summary>
    [Fact]
    public void Solve_DrawBeyondThePump_SaysSoWithNumbers()
    {
        Network network = Fuel(
            Fixed("tank", 0),
            Drawn("rail", 300),
            OwnLine.Pump("pump", "tank", "rail", Straight(OutsideRange.Extend, (0, 500), (100, 0)))
        );

        var error = Assert.Throws<NoSolutionException>(network.Solve);

        Assert.Equal("the steady state of the network", error.Sought);
        Assert.Equal("rail", error.Where);
        Words.Says("300 L/h, 'pump', 100 L/h, -1000 kPa gauge, 'rail'", error);
    }

    [Fact]
    public void Solve_DrawBehindAShutPart_NamesThePart()
    {
        Network network = Fuel(Fixed("tank", 0), Drawn("rail", 20), Check("check", "rail", "tank", 0));

        var error = Assert.Throws<NoSolutionException>(network.Solve);

        Assert.Equal("check", error.Where);
        Assert.Equal(
            "Draws need 20 L/h, which could only be met by 20 L/h through 'check' that it does not let through.",
            error.Reason
        );
        Assert.True(error.Iterations > 0);
    }

    [Fact]
    public void Solve_FeedIntoShutInjectors_NamesThem()
    {
        Network network = Fuel(
            Fixed("manifold", 0),
            Drawn("rail", -20),
            Injector("injectors", "rail", "manifold", 100, 15)
        );

        var error = Assert.Throws<NoSolutionException>(network.Solve);

        Assert.Equal("injectors", error.Where);
        Assert.StartsWith(
            "Draws need -20 L/h, which could only be met by 5 L/h through",
            error.Reason,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Solve_PumpOutsideItsData_IsRefusedUnlessItMayExtend()
    {
        Network At(OutsideRange outside) =>
            Fuel(
                Fixed("tank", 0),
                Junction("out"),
                OwnLine.Pump("pump", "tank", "out", Straight(outside, (50, 300), (100, 200))),
                Linear("load", "out", "tank", 50)
            );

        Words.OutsideTable("'pump', 50, 100, 160", () => At(OutsideRange.Refuse).Solve());
        Close.Within(1e-8, 160, At(OutsideRange.Extend).Solve().LitersPerHourIn("pump"));
    }

    /// <summary>Below its first point as well: 100 L/h at most here.</summary>
    [Fact]
    public void Solve_PumpBelowItsData_IsRefused() =>
        Words.OutsideTable(
            "'pump'",
            () =>
                Fuel(
                        Fixed("tank", 0),
                        Junction("out"),
                        OwnLine.Pump("pump", "tank", "out", Straight(OutsideRange.Refuse, (50, 300), (100, 200))),
                        Linear("load", "out", "tank", 2000)
                    )
                    .Solve()
        );

    [Fact]
    public void Solve_FromAStateOfAnotherNetwork_IsRefused()
    {
        Network one = Fuel(Fixed("a", 10), Junction("b"), Pipe);
        Network other = Fuel(Fixed("a", 10), Junction("c"), Hose("pipe", "a", "c", 1, 8));

        Words.Refused<ArgumentException>("start", () => other.Solve(one.Solve()));
    }

    [Fact]
    public void State_UnknownNames_AreRefusedWithTheKnownOnes()
    {
        NetworkState state = Fuel(Fixed("a", 10), Junction("b"), Pipe).Solve();

        Words.Refused<ArgumentException>("name", "'x'", () => state.PressureAt("x"));
        Words.Refused<ArgumentException>("name", "'x'", () => state.FlowIn("x"));
        Words.Refused<ArgumentException>("name", "'x'", () => state.ConditionOf("x"));
        Words.Refused<ArgumentException>("name", "'x'", () => state.PressureDifferenceOver("x"));
    }
}

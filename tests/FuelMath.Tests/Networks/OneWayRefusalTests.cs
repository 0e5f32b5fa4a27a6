using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>What can't be: a draw that only backflow could meet, a column that would tear off, a command below zero.</summary>
public sealed class OneWayRefusalTests
{
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromMillipascalSeconds(0.4);

    private static readonly Pipe Hose = new(
        Length.FromMeters(1),
        Length.FromMillimeters(6),
        Length.Zero,
        Ratio.Zero,
        Pipe.FrictionLaw.ColebrookStraightPassage
    );

    private static readonly Dictionary<string, FlowPart> OneWay = new()
    {
        ["check valve"] = new CheckValve(Kilopascals(5), Kilopascals(10), LitersPerHour(100), Petrol),
        ["pipe with a check valve"] = Hose.WithCheckValve(),
        ["bypass regulator"] = PlainRegulator.Bypass(
            Kilopascals(300),
            Gauge(0),
            Kilopascals(10),
            LitersPerHour(100),
            Petrol
        ),
        ["reducing regulator"] = PlainRegulator.Reducing(
            Kilopascals(300),
            Gauge(0),
            Kilopascals(10),
            LitersPerHour(100),
            Petrol
        ),
        ["pump"] = Straight(OutsideRange.Extend, (0, 500), (100, 0)),
    };

    /// <summary>50 L/h are drawn behind a part that leads away from there: they would have to come back through it.</summary>
    [Theory]
    [InlineData("check valve")]
    [InlineData("pipe with a check valve")]
    [InlineData("bypass regulator")]
    [InlineData("reducing regulator")]
    [InlineData("pump")]
    public void Solve_ADrawThatOnlyBackflowMeets_NamesThePart(string part)
    {
        Network network = new Network(
            [Fixed("tank", 0), Drawn("rail", 50)],
            [new Line("part", "rail", "tank", OneWay[part])]
        ).At(new NetworkConditions(Petrol, Thin));

        NoSolutionException error = Assert.Throws<NoSolutionException>(network.Solve);
        Words.Says("50 L/h, 'part'", error);
    }

    /// <summary>Fuel of 740 kg/m³ stands at most 101.325 kPa / (740 g) = 13.96 m above a tank without pressure.</summary>
    [Theory]
    [InlineData(13.9, true)]
    [InlineData(14.1, false)]
    public void Solve_AColumnTooHighToStand_IsRefused(double meters, bool stands)
    {
        Network network = new Network(
            [Fixed("tank", 0), Junction("top", meters)],
            [new Line("hose", "tank", "top", Hose)]
        ).At(new NetworkConditions(Petrol, Thin));

        if (stands)
        {
            Close.Within(1e-9, -740 * 9.80665 * meters / 1e3, network.Solve().KilopascalsAt("top"));
        }
        else
        {
            Assert.StartsWith(
                "Nothing is drawn, but what stands in the network would tear off.",
                Assert.Throws<NoSolutionException>(network.Solve).Reason,
                StringComparison.Ordinal
            );
        }
    }

    [Fact]
    public void WithCommandedFlow_BelowZero_IsRefused()
    {
        NetworkConditions at = new(Petrol, Thin);

        Words.Refused<ArgumentOutOfRangeException>("commanded", () => at.WithCommandedFlow("jet", LitersPerHour(-1)));
        Assert.Equal(0, at.WithCommandedFlow("jet", LitersPerHour(0)).Commands["jet"].LitersPerHour);
    }

    [Fact]
    public void JunctionNames_AreThoseOfUnknownPressure()
    {
        NetworkState state = Fuel(
                Fixed("a", 10),
                Junction("b"),
                Junction("c"),
                Fixed("d", 0),
                Linear("1", "a", "b", 10),
                Linear("2", "b", "c", 10),
                Linear("3", "c", "d", 10)
            )
            .Solve();

        Assert.Equal<string>(["b", "c"], state.JunctionNames);
    }

    [Fact]
    public void Pumps_ThatAreNull_AreRefused()
    {
        Assert.Throws<ArgumentNullException>("pumps", () => PumpSet.InParallel("pumps", "a", "b", null!));
        Assert.Throws<ArgumentNullException>("part", () => new Line("line", "a", "b", null!));
        Assert.Throws<ArgumentNullException>("points", () => PlainPump.Straight(null!, OutsideRange.Refuse));
        Assert.Throws<ArgumentNullException>("nodes", () => new Network(null!, []));
        Assert.Throws<ArgumentNullException>("lines", () => new Network([Fixed("a", 0)], null!));
    }
}

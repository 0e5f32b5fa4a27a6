using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Where a network draws below vacuum: which pumps draw there, and how much it could give at most, by hand.</summary>
[Trait("Source", "Definition")]
public sealed class SuctionSideTests
{
    private static readonly PlainPump Pump = Straight(OutsideRange.Extend, (0, 500), (100, 400));

    /// <summary>
    /// Both pumps draw through one narrow way in, the second one over a hose; the third draws from the tank, and the fourth
    /// behind them: those have enough.
    /// </summary>
    [Fact]
    public void Solve_TwoPumpsDrawTooMuch_NamesThose()
    {
        Network network = Fuel(
            Fixed("tank", 0),
            Fixed("end", 0),
            Junction("inlet"),
            Junction("wide"),
            Junction("out"),
            Junction("far"),
            Linear("narrow", "tank", "inlet", 1000),
            Linear("hose", "inlet", "wide", 1),
            OwnLine.Pump("left", "inlet", "out", Pump),
            OwnLine.Pump("right", "wide", "out", Pump),
            OwnLine.Pump("direct", "tank", "far", Pump),
            OwnLine.Pump("booster", "out", "far", Pump),
            Linear("load", "far", "end", 100)
        );

        var refusal = Assert.Throws<NoSolutionException>(network.Solve);

        Assert.Equal(RefusalCode.TooLittleFlow, Refusal.Of(refusal)!.Code);
        Assert.Equal("left, right", string.Join(", ", Refusal.Of(refusal)!.Parts));
        Assert.Contains(refusal.Where, new[] { "inlet", "wide" });
    }

    /// <summary>A pump behind a check valve that is shut draws nothing from there.</summary>
    [Fact]
    public void Solve_APumpBehindAShutPart_IsNotNamed()
    {
        Network network = Fuel(
            Fixed("tank", 0),
            Fixed("high", 50),
            Junction("inlet"),
            Junction("beside"),
            Junction("out"),
            Linear("narrow", "tank", "inlet", 1000),
            Check("check", "inlet", "beside", 0),
            Linear("other way", "high", "beside", 1),
            OwnLine.Pump("main", "inlet", "out", Pump),
            OwnLine.Pump("other", "beside", "out", Straight(OutsideRange.Extend, (0, 500), (100, 400))),
            Linear("load", "out", "high", 100)
        );

        Assert.Equal("main", Assert.Single(Refusal.Of(Assert.Throws<NoSolutionException>(network.Solve))!.Parts));
    }

    /// <summary>15 m above its ends a column of 740 kg/m3 hangs at -109 kPa: it would tear, and no pump is to blame.</summary>
    [Fact]
    public void Solve_ASiphonTooHigh_TearsOff()
    {
        Network network = Fuel(
            Fixed("tank", 0, 0),
            Fixed("low", 0, -1),
            Junction("top", 15),
            Linear("up", "tank", "top", 1),
            Linear("down", "top", "low", 1)
        );

        var refusal = Assert.Throws<NoSolutionException>(network.Solve);

        Assert.Equal(("top", RefusalCode.TooLittleFlow), (refusal.Where, Refusal.Of(refusal)!.Code));
        Assert.Empty(Refusal.Of(refusal)!.Parts);
        Assert.StartsWith("Nothing is drawn", refusal.Reason, StringComparison.Ordinal);
    }

    /// <summary>
    /// The most that the rail can draw at no pressure: -20 u before the pump, where nothing is drawn, and 500 - 100 u behind:
    /// u = 500 / 120. A feed at the side of 30 L/h counts against what is drawn, 5000 - 30 in all.
    /// </summary>
    [Theory]
    [InlineData(0, "416.667 L/h")]
    [InlineData(-30, "416.667 L/h")]
    public void Solve_DrawBeyondThePump_SaysTheMost(double feed, string most)
    {
        Network network = Fuel(
            Fixed("tank", 0),
            Junction("inlet"),
            Drawn("rail", 5000),
            Drawn("side", feed),
            Linear("suction", "tank", "inlet", 20),
            OwnLine.Pump("pump", "inlet", "rail", Pump),
            Linear("beside", "rail", "side", 1)
        );

        var refusal = Assert.Throws<NoSolutionException>(network.Solve);

        Words.Says($"{5000 + feed} L/h, {most}, 'pump'", refusal);
    }

    /// <summary>Without a pump no most is said, nor where a pump's data end before.</summary>
    [Fact]
    public void Solve_DrawWithoutAPump_SaysNoMost()
    {
        Network network = Fuel(Fixed("tank", 10), Drawn("rail", 500), Linear("line", "tank", "rail", 100));

        var refusal = Assert.Throws<NoSolutionException>(network.Solve);

        Assert.Empty(Refusal.Of(refusal)!.Parts);
        Assert.DoesNotContain("most", refusal.Reason, StringComparison.Ordinal);
    }
}

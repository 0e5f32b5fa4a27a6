using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>Placement from flows alone.</summary>
public sealed class FlowPlacementTests
{
    private static readonly Ratio[] Equal = [.. Enumerable.Repeat(Ratio.FromPercent(25), 4)];

    /// <summary>By hand: 100 to 107 make four pairs of 207, so that nothing need be left.</summary>
    [Fact]
    public void At_EightFlowsThatPairEvenly_LeaveNothing()
    {
        var placement = new FlowPlacement(Flows(100, 101, 102, 103, 104, 105, 106, 107), Equal, 2);

        Assert.Equal(0, placement.Imbalance.DecimalFractions, 1e-9);
        Assert.True(placement.IsProvenBest);
        Assert.All(
            Enumerable.Range(1, 4),
            chamber => Assert.Equal(207, placement.At(chamber).Sum(name => int.Parse(name[1..], null)))
        );
    }

    [Fact]
    public void At_OneStageAndEqualAir_HasNoBetterOrder() =>
        Assert.True(new FlowPlacement(Flows(500, 510, 490, 505), Equal, 1).EveryOrderIsEqual);

    /// <summary>A chamber with a tenth more air gets the injector that flows a tenth more.</summary>
    [Fact]
    public void At_UnequalAir_GivesTheMostToTheMost()
    {
        var placement = new FlowPlacement(
            Flows(550, 500, 500, 500),
            [Ratio.FromPercent(100), Ratio.FromPercent(100), Ratio.FromPercent(110), Ratio.FromPercent(100)],
            1
        );

        Assert.Equal("f550", Assert.Single(placement.At(3)));
        Assert.Equal(0, placement.Imbalance.DecimalFractions, 1e-9);
    }

    /// <summary>By hand: four injectors of 550 on average; the third chamber breathes half as much again as the others.</summary>
    [Fact]
    public void TrimFor_EachChamber_MakesFuelPerAirEven()
    {
        var equal = new FlowPlacement(Flows(560, 532, 553, 555), Equal, 1);
        var unequal = new FlowPlacement(
            Flows(500, 600, 600, 600),
            [Ratio.FromPercent(100), Ratio.FromPercent(100), Ratio.FromPercent(150), Ratio.FromPercent(100)],
            1
        );

        Assert.Equal(550 / 532.0, equal.TrimFor(2).DecimalFractions, 1e-9);
        double[] flows = [.. Enumerable.Range(1, 4).Select(c => double.Parse(unequal.At(c)[0][1..4], null))];
        Assert.Equal(2300 / 4.5 * 1.5 / flows[2], unequal.TrimFor(3).DecimalFractions, 1e-9);
        Assert.Equal(2300 / 4.5 / flows[0], unequal.TrimFor(1).DecimalFractions, 1e-9);
    }

    /// <summary>By hand: two chambers with two injectors each; whichever go together, both of a chamber count.</summary>
    [Fact]
    public void TrimFor_TwoStages_CountsBothInjectors()
    {
        var placement = new FlowPlacement(Flows(500, 520, 540, 590), [Ratio.FromPercent(50), Ratio.FromPercent(50)], 2);

        // Best is 500 with 590 against 520 with 540: 1090 and 1060, mean 1075.
        int chamber = placement.At(1).Contains("f500") ? 1 : 2;
        Assert.Equal(1075 / 1090.0, placement.TrimFor(chamber).DecimalFractions, 1e-9);
        Assert.Equal(1075 / 1060.0, placement.TrimFor(3 - chamber).DecimalFractions, 1e-9);
    }

    [Fact]
    public void New_OneNameTwice_IsRefused() =>
        Words.Refused<RefusedArgumentException>(
            "flows",
            "'a'",
            () =>
                _ = new FlowPlacement(
                    [
                        KeyValuePair.Create("a", VolumeFlow.FromCubicCentimetersPerMinute(500)),
                        KeyValuePair.Create("a", VolumeFlow.FromCubicCentimetersPerMinute(510)),
                    ],
                    Equal[..2],
                    1
                )
        );

    [Fact]
    public void TrimFor_NoSuchChamber_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "chamber",
            "Must be from 1 to 4; it was 5.",
            () => new FlowPlacement(Flows(500, 500, 500, 501), Equal, 1).TrimFor(5)
        );

    [Fact]
    public void New_NoStage_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "stages",
            "1, 8, 0",
            () => _ = new FlowPlacement(Flows(500, 500, 500, 501), Equal, 0)
        );

    private static IEnumerable<KeyValuePair<string, VolumeFlow>> Flows(params int[] flows) =>
        flows.Select(
            (f, i) =>
                KeyValuePair.Create(
                    flows.Take(i).Contains(f) ? $"f{f}, number {i + 1}" : $"f{f}",
                    VolumeFlow.FromCubicCentimetersPerMinute(f)
                )
        );
}

using FuelMath.Bench;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>What a placement refuses, and what lies just within.</summary>
public sealed class PlacementRefusalTests
{
    private static readonly Injector One = Workshop.Injector("one", 500);
    private static readonly Injector Other = Workshop.Injector("other", 510);

    [Fact]
    public void Candidate_WithoutAStage_IsRefused() =>
        Words.Refused<RefusedArgumentException>("stages", "1, 0", () => _ = new Placement.Candidate(One, []));

    [Fact]
    public void Candidate_BelowTheFirstStage_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("stages", () => _ = new Placement.Candidate(One, [1, 0]));

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    [InlineData(1_000_000_000, true)]
    [InlineData(1_000_000_001, false)]
    public void Steps_AreBounded(int mostSteps, bool isTaken)
    {
        Placement Of() => Placement.FromCandidates([new(One, [1]), new(Other, [1])], Air(1, 1), [Point(5)], mostSteps);

        if (isTaken)
        {
            Assert.Equal(2, Of().Chambers);
        }
        else
        {
            Words.Refused<ArgumentOutOfRangeException>(nameof(mostSteps), () => Of());
        }
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    public void Chambers_AreTwoOrMore(int chambers, int least)
    {
        Placement Of() => new([One, Other], Air([.. Enumerable.Repeat(1.0, chambers)]), [Point(5)]);

        if (chambers > 1)
        {
            Assert.Equal(least, Of().Chambers);
        }
        else
        {
            Words.Refused<RefusedArgumentException>("air", "2, 1", () => Of());
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Air_OfNothing_IsRefused(double air) =>
        Words.Refused<ArgumentOutOfRangeException>(
            nameof(air),
            () => _ = new Placement([One, Other], Air(1, air), [Point(5)])
        );

    [Theory]
    [InlineData(0, 1, "chamber")]
    [InlineData(3, 1, "chamber")]
    [InlineData(1, 0, "stage")]
    [InlineData(1, 2, "stage")]
    public void At_NoSuchSeat_IsRefused(int chamber, int stage, string name) =>
        Words.Refused<ArgumentOutOfRangeException>(
            name,
            () => new Placement([One, Other], Air(1, 1), [Point(5)]).At(chamber, stage)
        );

    /// <summary>Who must deliver in the first stage at every point are those that may go there; a secondary may rest.</summary>
    [Theory]
    [InlineData(new[] { 5.0, 0.0 }, true)]
    [InlineData(new[] { 0.0, 5.0 }, false)]
    public void FirstStage_MustDeliver(double[] widths, bool isTaken)
    {
        Placement Of() =>
            Placement.FromCandidates(
                [new(One, [1]), new(Other, [1]), new(One, [2]), new(Other, [2])],
                Air(1, 1),
                [Point(5, 5), Point(widths)],
                1000
            );

        if (isTaken)
        {
            Assert.True(Of().IsProvenBest);
        }
        else
        {
            Assert.Equal(RefusalCode.NoFuel, Refusal.Of(Assert.Throws<RefusedArgumentException>(Of))!.Code);
        }
    }

    /// <summary>Air that differs by rounding counts as equal, so that every order is; by a hundred-thousandth it does not.</summary>
    [Theory]
    [InlineData(1e-12, true)]
    [InlineData(1e-5, false)]
    public void Air_WithinRounding_IsEqual(double off, bool isEqual) =>
        Assert.Equal(isEqual, new Placement([One, Other], Air(1, 1 + off), [Point(5)]).EveryOrderIsEqual);

    /// <summary>Also where shares are small, and where one of them is the mean.</summary>
    [Theory]
    [InlineData(0.001, 0.0010001, 0.001)]
    [InlineData(0.9, 1, 1.1)]
    public void Air_OfAnySize_IsNotEqualWhereItDiffers(double first, double second, double third)
    {
        double[] air = [first, second, third];
        Injector[] all = [.. air.Select(a => Workshop.Injector($"for {a}", 500 * a / air.Average()))];

        var placement = new Placement(all.Reverse(), Air(air), [Point(9)]);

        Assert.False(placement.EveryOrderIsEqual);
        Close.WithinOf(1, 1e-9, 0, placement.Imbalance.DecimalFractions);
        Assert.Equal(all.Select(i => i.Name), Enumerable.Range(1, 3).Select(c => placement.At(c, 1).Name));
    }

    /// <summary>A search of one step proves nothing: what it leaves open is all the imbalance down to its bound, and nothing once proven.</summary>
    [Theory]
    [InlineData(1, false)]
    [InlineData(100_000, true)]
    public void Gap_IsWhatLiesAboveTheBound(int mostSteps, bool isProven)
    {
        double[] flows = [500, 507, 511, 518, 523, 530, 532, 541];
        var placement = Placement.FromCandidates(
            flows.Select((f, i) => new Placement.Candidate(Workshop.Injector($"{i}", f), [1, 2])),
            Air(1, 1.02, 0.97, 1.01),
            [Point(5, 4), Point(3, 0), Point(9, 9)],
            mostSteps
        );

        Assert.Equal(isProven, placement.IsProvenBest);
        Assert.Equal(isProven, placement.Gap.DecimalFractions == 0);
        Close.WithinOf(
            1,
            1e-15,
            placement.Imbalance.DecimalFractions - placement.LowerBound.DecimalFractions,
            placement.Gap.DecimalFractions
        );
    }

    /// <summary>Each value of a point is above zero, but a width may be zero: an inactive stage.</summary>
    [Theory]
    [InlineData(-1, 20, 300, 745, 13, "pulseWidths")]
    [InlineData(0, 20, 300, 745, 13, null)]
    [InlineData(5, 0, 300, 745, 13, "period")]
    [InlineData(5, 20, 0, 745, 13, "differentialPressure")]
    [InlineData(5, 20, 300, 0, 13, "density")]
    [InlineData(5, 20, 300, 745, 0, "atInjector")]
    public void Point_OfNothing_IsRefused(
        double width,
        double period,
        double kilopascals,
        double density,
        double volts,
        string? name
    )
    {
        Placement.Point Of() =>
            new(
                "point",
                [Duration.FromMilliseconds(width)],
                Duration.FromMilliseconds(period),
                Pressure.FromKilopascals(kilopascals),
                Density.FromKilogramsPerCubicMeter(density),
                ElectricPotential.FromVolts(volts)
            );

        if (name is null)
        {
            Assert.Equal(width, Of().PulseWidths[0].Milliseconds);
        }
        else
        {
            Words.Refused<ArgumentOutOfRangeException>(name, () => Of());
        }
    }

    private static Ratio[] Air(params double[] shares) => [.. shares.Select(s => Ratio.FromDecimalFractions(s))];

    private static Placement.Point Point(params double[] milliseconds) =>
        new(
            "point",
            milliseconds.Select(w => Duration.FromMilliseconds(w)),
            Duration.FromMilliseconds(20),
            Pressure.FromBars(3),
            Density.FromKilogramsPerCubicMeter(745),
            ElectricPotential.FromVolts(13)
        );
}

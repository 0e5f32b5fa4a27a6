using FsCheck.Xunit;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Filters;

public sealed class FiltrationRatingTests
{
    private static readonly DataSource Source = new("Workshop-class", "filter of the time-trial car");

    /// <summary>
    /// The pairs that handbooks and filter pages print: efficiency in percent as printed, so half of its last digit.
    /// </summary>
    [Theory]
    [Trait("Source", "ISO-16889")]
    [InlineData(1, 0, 1e-9)]
    [InlineData(1.4, 28.6, 0.05)]
    [InlineData(1.5, 33.33, 0.005)]
    [InlineData(5, 80, 1e-9)]
    [InlineData(10, 90, 1e-9)]
    [InlineData(20, 95, 1e-9)]
    [InlineData(50, 98, 1e-9)]
    [InlineData(60, 98.33, 0.005)]
    [InlineData(75, 98.67, 0.005)]
    [InlineData(125, 99.2, 1e-9)]
    [InlineData(200, 99.5, 1e-9)]
    [InlineData(300, 99.67, 0.005)]
    [InlineData(1000, 99.9, 1e-9)]
    [InlineData(2000, 99.95, 1e-9)]
    [InlineData(5000, 99.98, 1e-9)]
    public void Efficiency_OfABetaRatio_IsThePrintedOne(double beta, double percent, double half) =>
        Assert.Equal(percent, At(10, beta).Efficiency.Percent, half);

    /// <summary>Particles counted: 1000 upstream and 50 downstream are a ratio of 20.</summary>
    [Fact]
    [Trait("Source", "ISO-16889")]
    public void BetaRatio_OfCountedParticles_IsTheirRatio() =>
        Assert.Equal(20, Filtration.BetaRatio(new Real(1 - (50 / 1000.0))).Value, 1e-12);

    /// <summary>Counting: of a million a first filter lets 1/a through, and a second 1/b of those.</summary>
    [Property]
    public void InSeries_LetsThroughTheShareOfTheShare(ushort a, ushort b)
    {
        (double first, double second) = (1 + (a / 100.0), 1 + (b / 100.0));
        FiltrationRating both = FiltrationRating.FromSeries(
            "both",
            Rating(At(10, first)),
            Rating(At(10, second)),
            Source
        );

        double left =
            (1 - At(10, first).Efficiency.DecimalFractions) * (1 - At(10, second).Efficiency.DecimalFractions);

        Close.WithinOf(1, 1e-15, left, 1 - both.Points[0].Efficiency.DecimalFractions);
    }

    [Fact]
    public void InSeries_TakesSharedSizesOnly()
    {
        FiltrationRating both = FiltrationRating.FromSeries(
            "both",
            Rating(At(10, 2), At(20, 10), At(30, 75)),
            Rating(At(20, 5), At(30, 20), At(40, 100)),
            Source
        );

        Assert.Equal([20, 30], both.Points.Select(p => Math.Round(p.Size.Micrometers, 6)));
        Assert.Equal(1500, both.BetaRatioAt(Length.FromMicrometers(30)).DecimalFractions, 1e-9);
    }

    [Fact]
    public void InSeries_WithoutASharedSize_IsRefused()
    {
        var refused = Assert.Throws<ArgumentException>(() =>
            FiltrationRating.FromSeries("both", Rating(At(10, 20)), Rating(At(25, 75)), Source)
        );

        Words.Says("'filter', 10 µm, 25 µm", refused);
    }

    [Fact]
    public void BetaRatioAt_BetweenSizes_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Rating(At(10, 20), At(20, 75)).BetaRatioAt(Length.FromMicrometers(15))
        );

        Words.Says("'filter', 10 µm, 20 µm, 15 µm", refused);
    }

    [Theory]
    [InlineData(25, 98, null)]
    [InlineData(25, 99, "holds back too little of what clogs the passage behind it")]
    [InlineData(20, 96, "holds back too little of what clogs the passage behind it")]
    [InlineData(5, 50, "was not tested at particles as fine as the passage behind it")]
    public void Check_AgainstAPassage_TakesTheCoarsestTestedSizeItLetsThrough(
        double passage,
        double percent,
        string? expected
    )
    {
        var found = Rating(At(10, 20), At(25, 75)).Check(Length.FromMicrometers(passage), Ratio.FromPercent(percent));

        Assert.Equal(expected is null ? [] : [$"Filter 'filter' {expected}"], found.Select(f => f.What));
    }

    [Theory]
    [InlineData(10, Severity.Note, "has a nominal rating, which promises no efficiency")]
    [InlineData(40, Severity.Warning, "is coarser than the passage behind it")]
    public void Check_OfANominalRating_SaysWhatItIs(double nominal, Severity severity, string what)
    {
        Finding found = Assert.Single(
            FiltrationRating
                .FromNominal("filter", Length.FromMicrometers(nominal), Source)
                .Check(Length.FromMicrometers(25), Ratio.FromPercent(95))
        );

        Assert.Equal(severity, found.Severity);
        Assert.Equal($"Filter 'filter' {what}", found.What);
    }

    [Fact]
    public void Rating_ThatHoldsBackCoarseOnesWorse_IsRefused()
    {
        var refused = Assert.Throws<ArgumentException>(() => Rating(At(10, 75), At(20, 20)));

        Words.Says("20 µm", refused);
    }

    [Fact]
    public void BetaPoint_BelowOne_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => At(10, 0.9));

        Words.Says("1, 0.9", refused);
    }

    [Fact]
    public void Check_ForAll_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Rating(At(10, 20)).Check(Length.FromMicrometers(10), Ratio.FromPercent(100))
        );

        Words.Says("100 %", refused);
    }

    private static FiltrationRating Rating(params FiltrationRating.Point[] points) => new("filter", points, Source);

    private static FiltrationRating.Point At(double micrometers, double beta) =>
        new(Length.FromMicrometers(micrometers), Ratio.FromDecimalFractions(beta));
}

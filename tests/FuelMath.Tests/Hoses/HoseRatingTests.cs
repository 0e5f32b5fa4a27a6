using UnitsNet;

namespace FuelMath.Tests.Hoses;

public sealed class HoseRatingTests
{
    private static readonly DataSource Source = new("Workshop-class", "supply hose of the time-trial car");

    private static readonly HoseRating Rating = new(
        "lined hose, size 8",
        [At(20, 100), At(80, 100), At(120, 60)],
        Length.FromMillimeters(100),
        Source
    );

    [Theory]
    [InlineData(20, 100)]
    [InlineData(50, 100)]
    [InlineData(100, 80)]
    [InlineData(120, 60)]
    public void WorkingPressureAt_ATemperature_IsStraightBetweenPoints(double celsius, double bar) =>
        Close.Within(1e-12, bar, Rating.WorkingPressureAt(Temperature.FromDegreesCelsius(celsius)).AboveAmbient.Bars);

    [Fact]
    public void WorkingPressureAt_HotterThanRated_IsRefused()
    {
        var refused = Assert.Throws<OutsideTableException>(() =>
            Rating.WorkingPressureAt(Temperature.FromDegreesCelsius(150))
        );

        Words.Says("8", refused);
        Assert.Equal(150, refused.Value, 1e-9);
        Assert.Equal(120, refused.Maximum, 1e-9);
    }

    [Fact]
    public void Check_WithinTheRating_FindsNothing() =>
        Assert.Empty(Rating.Check(Bent(300), Bar(75), Temperature.FromDegreesCelsius(100)));

    [Fact]
    public void Check_HotAndOverPressure_IsDanger()
    {
        Finding finding = Assert.Single(Rating.Check(Bent(300), Bar(75), Temperature.FromDegreesCelsius(115)));

        Assert.Equal(Severity.Danger, finding.Severity);
        Assert.Equal("Hose 'supply' is above its working pressure at this temperature", finding.What);
        Assert.Equal("75.00 bar", finding.Value);
        Assert.Equal("65.00 bar", finding.Limit);
    }

    [Fact]
    public void Check_BentTooTight_IsAWarning()
    {
        Finding finding = Assert.Single(Rating.Check(Bent(180), Bar(5), Temperature.FromDegreesCelsius(20)));

        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Equal("90 mm", finding.Value);
        Assert.Equal("100 mm", finding.Limit);
    }

    [Fact]
    public void Check_AtTheVeryRadius_FindsNothing() =>
        Assert.Empty(Rating.Check(Bent(200), Bar(5), Temperature.FromDegreesCelsius(20)));

    [Fact]
    public void Rating_ThatRisesWithHeat_IsRefused()
    {
        var refused = Assert.Throws<ArgumentException>(() =>
            new HoseRating("hose", [At(20, 60), At(80, 70)], Length.FromMillimeters(100), Source)
        );

        Words.Says("60.00 bar, 70.00 bar", refused);
    }

    [Fact]
    public void Rating_AtOneTemperature_IsRefused()
    {
        var refused = Assert.Throws<ArgumentException>(() =>
            new HoseRating("hose", [At(20, 60)], Length.FromMillimeters(100), Source)
        );

        Words.Says("2, 1", refused);
    }

    private static HoseRating.Point At(double celsius, double bar) =>
        new(Temperature.FromDegreesCelsius(celsius), Bar(bar));

    private static GaugePressure Bar(double bar) => new(Pressure.FromBars(bar));

    private static Hose Bent(double coilMillimeters) =>
        new Hose(
            "supply",
            Length.FromMeters(2),
            Length.FromMillimeters(10.32),
            Length.Zero,
            Ratio.Zero,
            Source
        ).WithCoil(Length.FromMillimeters(coilMillimeters));
}

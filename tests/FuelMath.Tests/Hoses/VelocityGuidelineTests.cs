using UnitsNet;

namespace FuelMath.Tests.Hoses;

public sealed class VelocityGuidelineTests
{
    private static readonly DataSource Source = new("Workshop-class", "lines of the time-trial car");

    /// <summary>
    /// Example 10-1: 30 gal/min at 20 ft/s asks for a bore of 0.783 in; example 10-2: 0.002 m3/s at 6.1 m/s for 20.4 mm.
    /// Printed to three digits: half the last is 0.25 %.
    /// </summary>
    [Fact]
    [Trait("Source", "Esposito-2009")]
    public void LeastBore_OfTheTextbookFlows_IsThePrintedOne()
    {
        var feet = new VelocityGuideline(Speed.FromFeetPerSecond(4), Speed.FromFeetPerSecond(20), Source);

        Close.Within(
            0.0025,
            0.783,
            feet.LeastBore(VolumeFlow.FromUsGallonsPerMinute(30), VelocityGuideline.LineSide.Delivery).Inches
        );
        Close.Within(
            0.0025,
            20.4,
            VelocityGuideline
                .OilHydraulics.LeastBore(
                    VolumeFlow.FromCubicMetersPerSecond(0.002),
                    VelocityGuideline.LineSide.Delivery
                )
                .Millimeters
        );
    }

    [Theory]
    [InlineData(VelocityGuideline.LineSide.Suction)]
    [InlineData(VelocityGuideline.LineSide.Delivery)]
    public void Check_AtTheLeastBore_FindsNothing(VelocityGuideline.LineSide side)
    {
        var flow = VolumeFlow.FromLitersPerHour(260);
        Length bore = VelocityGuideline.CommonPractice.LeastBore(flow, side);

        Assert.Empty(VelocityGuideline.CommonPractice.Check(Of(bore), flow, side));
        Assert.Single(VelocityGuideline.CommonPractice.Check(Of(bore * 0.99), flow, side));
    }

    [Fact]
    public void Check_TooFast_SaysWhichGuideline()
    {
        Finding finding = Assert.Single(
            VelocityGuideline.CommonPractice.Check(
                Of(Length.FromMillimeters(6)),
                VolumeFlow.FromLitersPerHour(260),
                VelocityGuideline.LineSide.Suction
            )
        );

        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Equal("2.55 m/s", finding.Value);
        Assert.Equal("1.20 m/s", finding.Limit);
        Assert.Equal("Common-practice", finding.LimitSource.Key);
    }

    [Fact]
    public void Guideline_SlowerBehindThePump_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new VelocityGuideline(Speed.FromMetersPerSecond(2), Speed.FromMetersPerSecond(1), Source)
        );

        Words.Says("2 m, 1 m", refused);
    }

    private static Hose Of(Length bore) => new("line", Length.FromMeters(1), bore, Length.Zero, Ratio.Zero, Source);
}

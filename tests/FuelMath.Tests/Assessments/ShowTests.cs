namespace FuelMath.Tests.Assessments;

/// <summary>SI numbers in customary units: how many places each has, and further ones where they are asked for.</summary>
public sealed class ShowTests
{
    /// <summary>Two places, four below 0.1 bar to either side of nothing.</summary>
    [Theory]
    [InlineData(0, 0, "0.00 bar")]
    [InlineData(2340, 0, "0.0234 bar")]
    [InlineData(-2340, 0, "-0.0234 bar")]
    [InlineData(9990, 0, "0.0999 bar")]
    [InlineData(10_000, 0, "0.10 bar")]
    [InlineData(-10_000, 0, "-0.10 bar")]
    [InlineData(301_200, 0, "3.01 bar")]
    [InlineData(301_200, 1, "3.012 bar")]
    [InlineData(2340, 2, "0.023400 bar")]
    public void Bar_HasTwoPlaces_AndFourWhereItIsSmall(double pascals, int further, string expected) =>
        Assert.Equal(expected, Show.Bar(pascals, further));

    /// <summary>Each unit by hand, with its usual places and with two more.</summary>
    [Fact]
    public void EachUnit_WithFurtherPlaces_IsAsByHand()
    {
        Assert.Equal(["36.0 L/h", "36.000 L/h"], Both(n => Show.LitersPerHour(1e-5, n), Show.LitersPerHour(1e-5)));
        Assert.Equal(["12.5 %", "12.500 %"], Both(n => Show.Percent(0.125, n), Show.Percent(0.125)));
        Assert.Equal(["13.25 V", "13.2500 V"], Both(n => Show.Volts(13.25, n), Show.Volts(13.25)));
        Assert.Equal(["7.50 A", "7.5000 A"], Both(n => Show.Amperes(7.5, n), Show.Amperes(7.5)));
        Assert.Equal(["2.500 ms", "2.50000 ms"], Both(n => Show.Milliseconds(0.0025, n), Show.Milliseconds(0.0025)));
        Assert.Equal(["3.50 m/s", "3.5000 m/s"], Both(n => Show.MetersPerSecond(3.5, n), Show.MetersPerSecond(3.5)));
        Assert.Equal(["20.0 °C", "20.000 °C"], Both(n => Show.Celsius(293.15, n), Show.Celsius(293.15)));
        Assert.Equal(["90 s", "90.00 s"], Both(n => Show.Seconds(90, n), Show.Seconds(90)));
        Assert.Equal("0.950", Show.Lambda(0.95));
    }

    private static string[] Both(Func<int, string> further, string usual)
    {
        Assert.Equal(usual, further(0));
        return [usual, further(2)];
    }

    /// <summary>A value and its limit have as many digits as tell them apart, at most eight further ones, and none where they are equal.</summary>
    [Theory]
    [InlineData(1, 2, 0)]
    [InlineData(1.001, 1.004, 1)]
    [InlineData(1.0001, 1.0004, 2)]
    [InlineData(-1, 1, 0)]
    [InlineData(1, 1, 0)]
    [InlineData(1, 1 + 4e-10, 8)]
    [InlineData(1, 1 + 4e-11, 0)]
    public void FurtherDigits_TellValueAndLimitApart(double value, double limit, int expected) =>
        Assert.Equal(expected, Shown.FurtherDigits(Shown.Volts(value), Shown.Volts(limit)));

    /// <summary>A text has no digits to add; words around a number carry it without its sign.</summary>
    [Fact]
    public void Text_OfWordsAndNumbers()
    {
        Shown below = Shown.Percent(-0.125).As(n => $"{n} below");

        Assert.Equal(0, Shown.FurtherDigits("unknown", Shown.Volts(1)));
        Assert.Equal(0, Shown.FurtherDigits(Shown.Volts(1), "unknown"));
        Assert.Equal("unknown", ((Shown)"unknown").Text(3));
        Assert.Null(((Shown)"unknown").Quantity);
        Assert.Equal(("12.5 % below", "12.500 % below"), (below.Text(0), below.Text(2)));
        Assert.Equal("-12.5 %", Shown.Percent(-0.125).Text(0));
        Assert.Equal(-0.125, ((UnitsNet.Ratio)below.Quantity!).DecimalFractions);
    }
}

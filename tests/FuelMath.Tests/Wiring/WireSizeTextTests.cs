namespace FuelMath.Tests.Wiring;

public sealed class WireSizeTextTests
{
    [Theory]
    [InlineData("AWG 14", "14 AWG")]
    [InlineData("14 AWG", "14 AWG")]
    [InlineData("14awg", "14 AWG")]
    [InlineData("awg14", "14 AWG")]
    [InlineData("#12", "12 AWG")]
    [InlineData("10 ga", "10 AWG")]
    [InlineData("10 gauge", "10 AWG")]
    [InlineData("4/0", "4/0 AWG")]
    [InlineData("2/0 AWG", "2/0 AWG")]
    public void AGauge_IsReadInEveryManner(string text, string name) =>
        Assert.Equal(name, WireSize.ParseLenient(text, null).Name);

    [Theory]
    [InlineData("2.5 mm2")]
    [InlineData("2,5 mm²")]
    [InlineData("2.5 sq. mm")]
    public void AnArea_IsReadInEveryManner(string text) =>
        Assert.Equal(2.5, WireSize.ParseLenient(text, null).Area.SquareMillimeters, 1e-12);

    [Fact]
    public void EveryGauge_ReadsBackAsItPrints() =>
        Assert.All(
            Enumerable.Range(-3, 44),
            g =>
                Assert.Equal(WireSize.FromAwg(g).Area, WireSize.ParseLenient(WireSize.FromAwg(g).ToString(), null).Area)
        );

    [Fact]
    public void EveryArea_ReadsBackAsItPrints() =>
        Assert.Equal(
            2.5,
            WireSize.ParseLenient(WireSize.ParseLenient("2.5 mm2", null).ToString(), null).Area.SquareMillimeters,
            1e-12
        );

    [Fact]
    public void ANumberAlone_IsRefused() =>
        Assert.Equal(
            QuantityTextException.TextProblem.MissingUnit,
            Assert.Throws<QuantityTextException>(() => WireSize.ParseLenient("14", null)).Problem
        );

    [Fact]
    public void AGaugeThatDoesNotExist_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WireSize.ParseLenient("AWG 50", null));
}

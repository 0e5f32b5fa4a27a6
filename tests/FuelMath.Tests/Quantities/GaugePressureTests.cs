using System.Globalization;
using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Quantities;

[Properties(Arbitrary = [typeof(QuantityArbitraries)])]
public sealed class GaugePressureTests
{
    /// <summary>A sum and a difference of numbers below 4e6 Pa round to 1e-9 Pa at most.</summary>
    private const double RoundingInPascals = 2e-9;

    // ISO 2533 table 1: 101 325 Pa at sea level. 3 bar above it is 401.325 kPa by the definition of gauge pressure.
    [Fact]
    [Trait("Source", "ISO-2533")]
    public void ToAbsolute_AtTheStandardAtmosphere_AddsIt() =>
        Close.Within(1e-15, 401_325, FromBars(3).ToAbsolute(AbsolutePressure.StandardAtmosphere).AboveVacuum.Pascals);

    [Property]
    public void ToAbsolute_ThenToGauge_GivesThePressureBack(GaugePressure gauge, Ambient ambient)
    {
        GaugePressure back = gauge.ToAbsolute(ambient.Pressure).ToGauge(ambient.Pressure);

        Assert.Equal(gauge.AboveAmbient.Pascals, back.AboveAmbient.Pascals, RoundingInPascals);
    }

    [Property]
    public void Difference_IsTheSameInGaugeAndInAbsolute(GaugePressure a, GaugePressure b, Ambient ambient)
    {
        Pressure gauge = a - b;
        Pressure absolute = a.ToAbsolute(ambient.Pressure) - b.ToAbsolute(ambient.Pressure);

        Assert.Equal(gauge.Pascals, absolute.Pascals, RoundingInPascals);
    }

    [Property]
    public void Sum_WithADifference_IsUndoneByTheDifference(GaugePressure a, GaugePressure b)
    {
        GaugePressure moved = b + (a - b);

        Assert.Equal(a.AboveAmbient.Pascals, moved.AboveAmbient.Pascals, RoundingInPascals);
    }

    [Property]
    public void NamedTwins_EqualTheOperators(GaugePressure a, GaugePressure b)
    {
        Assert.Equal((a - b).Pascals, GaugePressure.Subtract(a, b).Pascals);
        Assert.Equal(a + (a - b), GaugePressure.Add(a, a - b));
    }

    [Property]
    public void Order_IsTheOrderOfPascals(GaugePressure a, GaugePressure b)
    {
        double difference = a.AboveAmbient.Pascals - b.AboveAmbient.Pascals;

        Assert.Equal(difference < 0, a < b);
        Assert.Equal(difference > 0, a > b);
        Assert.Equal(difference <= 0, a <= b);
        Assert.Equal(difference >= 0, a >= b);
        Assert.Equal(difference == 0, a == b);
        Assert.Equal(difference != 0, a != b);
        Assert.Equal(Math.Sign(difference), Math.Sign(a.CompareTo(b)));
        Assert.Equal(difference == 0, a.Equals((object)b));
    }

    [Property]
    public void Equal_InAnyUnit_HasTheSameHash(GaugePressure a)
    {
        var again = new GaugePressure(Pressure.FromPascals(a.AboveAmbient.Pascals));

        Assert.Equal(a, again);
        Assert.Equal(a.GetHashCode(), again.GetHashCode());
    }

    [Fact]
    public void Default_IsAmbient() => Assert.Equal(0, default(GaugePressure).AboveAmbient.Pascals);

    [Fact]
    public void Equals_AnotherType_IsFalse() =>
        Assert.False(FromBars(3).Equals((object)AbsolutePressure.StandardAtmosphere));

    [Fact]
    public void Sum_BeyondAllNumbers_IsRefused()
    {
        var largest = new GaugePressure(double.MaxValue);

        var error = Assert.Throws<ArgumentOutOfRangeException>(() => largest + Pressure.FromPascals(double.MaxValue));
        Assert.Equal("right", error.ParamName);
        Assert.StartsWith("Must be finite; it was Infinity.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ToAbsolute_BelowVacuum_SaysTheLeastAmbientPressure()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            FromBars(-0.8).ToAbsolute(new AbsolutePressure(Pressure.FromKilopascals(70)))
        );

        Assert.Equal("ambient", error.ParamName);
        Words.Says("80 kPa, -80 kPa, 70 kPa", error);
    }

    [Theory]
    [InlineData(null, "1234.5 kPa gauge")]
    [InlineData("0.000", "1234.500 kPa gauge")]
    [InlineData("#,0", "1,235 kPa gauge")]
    public void ToString_NoCulture_IsInvariant(string? format, string text) =>
        Assert.Equal(text, FromBars(12.345).ToString(format, null));

    [Fact]
    public void ToString_Culture_WritesItsDecimalSign() =>
        Assert.Equal(
            "1234,5 kPa gauge",
            FromBars(12.345).ToString(null, new NumberFormatInfo { NumberDecimalSeparator = "," })
        );

    [Fact]
    public void ToString_InAText_TakesTheTextsFormat() =>
        Assert.Equal("300.0 kPa gauge", string.Create(CultureInfo.InvariantCulture, $"{FromBars(3):0.0}"));

    private static GaugePressure FromBars(double bar) => new(Pressure.FromBars(bar));
}

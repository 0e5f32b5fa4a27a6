using System.Globalization;
using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Quantities;

[Properties(Arbitrary = [typeof(QuantityArbitraries)])]
public sealed class AbsolutePressureTests
{
    // ISO 2533 table 1, sea level; exact by definition.
    [Fact]
    [Trait("Source", "ISO-2533")]
    public void StandardAtmosphere_IsTheStandards() =>
        Assert.Equal(101_325, AbsolutePressure.StandardAtmosphere.AboveVacuum.Pascals);

    // NIST SP 811 appendix B: exact factors, except psi and torr, which are printed to seven digits. The unit library's
    // torr is 1.8e-6 larger than 101 325 / 760 Pa, which is its own rounding and far below what a gauge shows.
    [Theory]
    [Trait("Source", "NIST-SP-811")]
    [InlineData("atm", 101_325, 1e-15)]
    [InlineData("bar", 1e5, 1e-15)]
    [InlineData("psi", 6.894757e3, 1e-7)]
    [InlineData("torr", 1.333224e2, 3e-6)]
    public void Constructor_OneOfAUnit_IsThatManyPascals(string unit, double pascals, double tolerance)
    {
        Pressure one = unit switch
        {
            "atm" => Pressure.FromAtmospheres(1),
            "bar" => Pressure.FromBars(1),
            "psi" => Pressure.FromPoundsForcePerSquareInch(1),
            _ => Pressure.FromTorrs(1),
        };

        Close.Within(tolerance, pascals, new AbsolutePressure(one).AboveVacuum.Pascals);
    }

    [Property]
    public void ToGauge_ThenToAbsolute_GivesThePressureBack(AbsolutePressure absolute, Ambient ambient)
    {
        AbsolutePressure back = absolute.ToGauge(ambient.Pressure).ToAbsolute(ambient.Pressure);

        // A difference and a sum of numbers below 4e6 Pa round to 1e-9 Pa at most.
        Assert.Equal(absolute.AboveVacuum.Pascals, back.AboveVacuum.Pascals, 2e-9);
    }

    [Property]
    public void ToGauge_OfTheAmbientPressure_IsZero(Ambient ambient) =>
        Assert.Equal(default, ambient.Pressure.ToGauge(ambient.Pressure));

    [Property]
    public void Difference_TurnedRound_ChangesItsSign(AbsolutePressure a, AbsolutePressure b)
    {
        Assert.Equal((a - b).Pascals, -(b - a).Pascals);
        Assert.Equal((a - b).Pascals, AbsolutePressure.Subtract(a, b).Pascals);
    }

    [Property]
    public void Order_IsTheOrderOfPascals(AbsolutePressure a, AbsolutePressure b)
    {
        double difference = a.AboveVacuum.Pascals - b.AboveVacuum.Pascals;

        Assert.Equal(difference < 0, a < b);
        Assert.Equal(difference > 0, a > b);
        Assert.Equal(difference <= 0, a <= b);
        Assert.Equal(difference >= 0, a >= b);
        Assert.Equal(difference == 0, a == b);
        Assert.Equal(difference != 0, a != b);
        Assert.Equal(Math.Sign(difference), Math.Sign(a.CompareTo(b)));
        Assert.Equal(difference == 0, a.Equals((object)b));
    }

    [Fact]
    public void Default_IsVacuum() => Assert.Equal(0, default(AbsolutePressure).AboveVacuum.Pascals);

    [Fact]
    public void Equal_HasTheSameHash() =>
        Assert.Equal(
            AbsolutePressure.StandardAtmosphere.GetHashCode(),
            new AbsolutePressure(Pressure.FromPascals(101_325)).GetHashCode()
        );

    [Fact]
    public void Constructor_BelowVacuum_SaysWhatIsAllowedInTheCallersUnit()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new AbsolutePressure(Pressure.FromBars(-0.2)));

        Assert.Equal("aboveVacuum", error.ParamName);
        Words.Says("-0.2 bar", error);
    }

    [Theory]
    [InlineData(null, "101.33 kPa absolute")]
    [InlineData("0.000", "101.325 kPa absolute")]
    public void ToString_NoCulture_IsInvariant(string? format, string text) =>
        Assert.Equal(text, AbsolutePressure.StandardAtmosphere.ToString(format, null));

    [Fact]
    public void ToString_Culture_WritesItsDecimalSign() =>
        Assert.Equal(
            "101,33 kPa absolute",
            AbsolutePressure.StandardAtmosphere.ToString(null, new NumberFormatInfo { NumberDecimalSeparator = "," })
        );

    [Fact]
    public void ToString_Alone_IsInvariant() =>
        Assert.Equal("101.33 kPa absolute", AbsolutePressure.StandardAtmosphere.ToString());
}

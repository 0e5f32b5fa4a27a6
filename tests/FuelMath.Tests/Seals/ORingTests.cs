using FuelMath.Joints;
using UnitsNet;

namespace FuelMath.Tests.Seals;

public sealed class ORingTests
{
    /// <summary>Inside diameter and cross-section in mm, rounded to 0.01, of two public tables of sizes.</summary>
    [Theory]
    [Trait("Source", "SAE-AS568")]
    [InlineData(4, 1.78, 1.78)]
    [InlineData(5, 2.57, 1.78)]
    [InlineData(6, 2.90, 1.78)]
    [InlineData(7, 3.68, 1.78)]
    [InlineData(10, 6.07, 1.78)]
    [InlineData(11, 7.65, 1.78)]
    [InlineData(12, 9.25, 1.78)]
    [InlineData(13, 10.82, 1.78)]
    [InlineData(14, 12.42, 1.78)]
    [InlineData(15, 14.00, 1.78)]
    [InlineData(16, 15.60, 1.78)]
    [InlineData(17, 17.17, 1.78)]
    [InlineData(18, 18.77, 1.78)]
    [InlineData(20, 21.95, 1.78)]
    [InlineData(110, 9.19, 2.62)]
    [InlineData(111, 10.77, 2.62)]
    [InlineData(112, 12.37, 2.62)]
    [InlineData(113, 13.95, 2.62)]
    [InlineData(114, 15.54, 2.62)]
    [InlineData(115, 17.12, 2.62)]
    [InlineData(116, 18.72, 2.62)]
    [InlineData(120, 25.07, 2.62)]
    [InlineData(210, 18.64, 3.53)]
    [InlineData(211, 20.22, 3.53)]
    [InlineData(212, 21.82, 3.53)]
    [InlineData(213, 23.39, 3.53)]
    [InlineData(214, 24.99, 3.53)]
    [InlineData(215, 26.57, 3.53)]
    [InlineData(216, 28.17, 3.53)]
    [InlineData(217, 29.74, 3.53)]
    [InlineData(218, 31.34, 3.53)]
    [InlineData(220, 34.52, 3.53)]
    [InlineData(222, 37.69, 3.53)]
    public void FromAs568_Dash_HasItsMeasures(int dash, double inside, double section)
    {
        ORing ring = ORing.FromAs568(dash);

        Close.WithinOf(1, 0.0055, inside, ring.InsideDiameter.Nominal.Millimeters);
        Close.WithinOf(1, 0.0055, section, ring.CrossSection.Nominal.Millimeters);
    }

    /// <summary>Inside diameters in inches of a third public table.</summary>
    [Theory]
    [Trait("Source", "SAE-AS568")]
    [InlineData(8, 0.176)]
    [InlineData(118, 0.862)]
    [InlineData(14, 0.489)]
    [InlineData(216, 1.109)]
    public void FromAs568_Dash_HasItsInches(int dash, double inches) =>
        Close.Within(1e-12, inches, ORing.FromAs568(dash).InsideDiameter.Nominal.Inches);

    /// <summary>Within a series the inside diameter rises with the dash number by 1/16 inch or less, and tolerances do not fall.</summary>
    [Fact]
    public void As568_Series_RiseEvenly() =>
        Assert.All(
            ORing.As568Dashes.Zip(ORing.As568Dashes.Skip(1)).Where(p => p.Second == p.First + 1),
            p =>
            {
                (ORing a, ORing b) = (ORing.FromAs568(p.First), ORing.FromAs568(p.Second));
                Assert.InRange((b.InsideDiameter.Nominal - a.InsideDiameter.Nominal).Inches, 0.012, 0.0636);
                Assert.True(b.InsideDiameter.Tolerance >= a.InsideDiameter.Tolerance);
                Assert.Equal(a.CrossSection.Nominal.Meters, b.CrossSection.Nominal.Meters);
            }
        );

    [Fact]
    public void ToString_GivesTheMeasures() =>
        Assert.Equal("AS568-014, 12.421 ± 0.127 mm by 1.778 ± 0.076 mm", ORing.FromAs568(14).ToString());

    [Fact]
    public void FromAs568_UnknownDash_SaysWhatThereIs() =>
        Words.Refused<ArgumentOutOfRangeException>("dash", "4, 5, 6, 7, 8", () => ORing.FromAs568(325));

    [Fact]
    public void TolerancedLength_BadMeasures_AreRefused()
    {
        Words.Refused<ArgumentOutOfRangeException>("nominal", "0 mm", () => FitMeasures.Mm(0, 0));
        Words.Refused<ArgumentOutOfRangeException>("tolerance", "-0.1 mm", () => FitMeasures.Mm(2, -0.1));
        Words.Refused<ArgumentOutOfRangeException>("tolerance", "2 mm", () => FitMeasures.Mm(2, 2));
        Words.Refused<ArgumentOutOfRangeException>(
            "greatest",
            "2 mm, 1 mm",
            () => TolerancedLength.FromLimits(Length.FromMillimeters(2), Length.FromMillimeters(1))
        );
    }

    [Fact]
    public void FromLimits_TakesTheMiddle()
    {
        TolerancedLength length = TolerancedLength.FromLimits(Length.FromMillimeters(10), Length.FromMillimeters(10.2));

        Close.Within(1e-12, 10.1, length.Nominal.Millimeters);
        Close.Within(1e-12, 10.2, length.Greatest.Millimeters);
        Close.Within(1e-12, 10, length.Least.Millimeters);
    }
}

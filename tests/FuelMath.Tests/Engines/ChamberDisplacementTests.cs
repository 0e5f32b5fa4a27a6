using UnitsNet;

namespace FuelMath.Tests.Engines;

public sealed class ChamberDisplacementTests
{
    // By hand: 3 root 3 times eccentricity 14 mm, generating radius 100 mm and width 70 mm are 509.2 cm³.
    [Fact]
    [Trait("Source", "Yamamoto-1981")]
    public void OfRotor_ByHand_IsThreeRootThreeOfItsMeasures()
    {
        double chamber = ChamberDisplacement
            .OfRotor(Length.FromMillimeters(14), Length.FromMillimeters(100), Length.FromMillimeters(70))
            .CubicCentimeters;

        Close.Within(1e-12, 98 * 3 * Math.Sqrt(3), chamber);
    }

    // The definition: a square cylinder of 80 mm sweeps pi/4 x 8³ = 402.12 cm³.
    [Fact]
    [Trait("Source", "Definition")]
    public void OfCylinder_Square_IsAQuarterOfPiTimesItsCube() =>
        Close.Within(
            1e-12,
            Math.PI / 4 * 8 * 8 * 8,
            ChamberDisplacement.OfCylinder(Length.FromMillimeters(80), Length.FromMillimeters(80)).CubicCentimeters
        );

    [Theory]
    [InlineData(0, 86, "bore")]
    [InlineData(86, -1, "stroke")]
    public void OfCylinder_NotPositive_Refuses(double bore, double stroke, string name)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            ChamberDisplacement.OfCylinder(Length.FromMillimeters(bore), Length.FromMillimeters(stroke))
        );

        Assert.Equal(name, error.ParamName);
    }

    [Fact]
    public void OfRotor_NotPositive_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            ChamberDisplacement.OfRotor(
                Length.FromMillimeters(15),
                Length.FromMillimeters(105),
                Length.FromMillimeters(0)
            )
        );

        Words.Says("0 mm", error);
    }
}

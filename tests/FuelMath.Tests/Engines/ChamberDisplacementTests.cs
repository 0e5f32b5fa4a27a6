using FuelMath.Engines;
using UnitsNet;

namespace FuelMath.Tests.Engines;

public sealed class ChamberDisplacementTests
{
    // The worked chamber: eccentricity 15 mm, generating radius 105 mm, width 80 mm give 654.7 cm³, two rotors 1309 cm³.
    // Half a unit of the last digit.
    [Fact]
    [Trait("Source", "Yamamoto-1981")]
    public void OfRotor_TheWorkedChamber_IsThePrintedVolume()
    {
        double chamber = ChamberDisplacement
            .OfRotor(Length.FromMillimeters(15), Length.FromMillimeters(105), Length.FromMillimeters(80))
            .CubicCentimeters;

        Assert.Equal(654.7, chamber, 0.05);
        Assert.Equal(1309, 2 * chamber, 0.5);
    }

    // The definition: a square cylinder of 86 mm sweeps pi/4 x 8.6³ = 499.56 cm³, four of them a two-liter engine.
    [Fact]
    [Trait("Source", "Definition")]
    public void OfCylinder_SquareTwoLiter_IsHalfALiter() =>
        Close.Within(
            1e-12,
            Math.PI / 4 * 8.6 * 8.6 * 8.6,
            ChamberDisplacement.OfCylinder(Length.FromMillimeters(86), Length.FromMillimeters(86)).CubicCentimeters
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

        Assert.StartsWith("Must be finite and greater than zero; it was 0 mm.", error.Message);
    }
}

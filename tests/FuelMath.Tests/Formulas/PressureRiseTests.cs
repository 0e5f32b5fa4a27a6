using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>Closed volumes that are pressed up slowly or quickly.</summary>
public sealed class PressureRiseTests
{
    // Air from 100 kPa to 400 kPa: kept at its temperature a quarter of its volume is left; without loss of heat 4^(-1/1.4),
    // 0.3715. By hand.
    [Theory]
    [InlineData(1, 0.25)]
    [InlineData(PressureRise.AdiabaticExponentOfAir, 0.37150)]
    public void PressedInVolume_OfAir_IsWhatItShrinksBy(double exponent, double left) =>
        Assert.Equal(
            1 - left,
            PressureRise
                .PressedInVolume(Real(1e-6), Real(1e9), Real(0), Real(1), Real(1e5), Real(4e5), Real(exponent))
                .Value,
            1e-5
        );

    /// <summary>The compliance is the slope of what is pressed in, and at exponent one that of the slow change.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(1.2)]
    [InlineData(1.4)]
    public void Compliance_IsTheSlopeOfWhatIsPressedIn(double exponent)
    {
        var end = Dual<Real>.Variable(Real(3.3e5));
        Dual<Real> D(double x) => Dual<Real>.Of(x);
        Dual<Real> pressed = PressureRise.PressedInVolume(D(4e-4), D(8e8), D(2e-9), D(2e-6), D(1e5), end, D(exponent));
        double compliance = PressureRise
            .Compliance(Real(4e-4), Real(8e8), Real(2e-9), Real(2e-6), Real(1e5), Real(3.3e5), Real(exponent))
            .Value;

        Close.Within(1e-12, pressed.Slope.Value, compliance);
        if (exponent == 1)
        {
            Close.Within(
                1e-12,
                PressureDecay.Compliance(Real(4e-4), Real(8e8), Real(2e-9), Real(2e-6 / 3.3), Real(3.3e5)).Value,
                compliance
            );
        }
    }

    private static Real Real(double value) => new(value);
}

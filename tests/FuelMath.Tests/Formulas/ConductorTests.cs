using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class ConductorTests
{
    private const double Inch = 0.0254;

    /// <summary>Nominal diameters in inches, printed with the digits shown: half a unit of the last.</summary>
    [Theory]
    [Trait("Source", "ASTM-B258")]
    [InlineData(-3, 0.4600, 5e-5)]
    [InlineData(-2, 0.4096, 5e-5)]
    [InlineData(0, 0.3249, 5e-5)]
    [InlineData(4, 0.2043, 5e-5)]
    [InlineData(10, 0.1019, 5e-5)]
    [InlineData(12, 0.0808, 5e-5)]
    [InlineData(16, 0.0508, 5e-5)]
    [InlineData(18, 0.0403, 5e-5)]
    [InlineData(22, 0.0253, 5e-5)]
    [InlineData(24, 0.0201, 5e-5)]
    [InlineData(30, 0.0100, 5e-5)]
    [InlineData(36, 0.00500, 1e-12)]
    [InlineData(40, 0.00314, 5.1e-6)]
    public void AwgDiameter_NominalDiameters_Agrees(int gauge, double inches, double half) =>
        Assert.Equal(inches, WireResistance.AwgDiameter(new Real(gauge)).Value / Inch, half);

    /// <summary>
    /// Ohm per 1000 ft of copper at 20 degrees Celsius, from unrounded diameters, four digits; the resistivity has five.
    /// </summary>
    [Theory]
    [Trait("Source", "NBS-Handbook-100")]
    [InlineData(-3, 0.04901)]
    [InlineData(-2, 0.0618)]
    [InlineData(0, 0.09827)]
    [InlineData(1, 0.1239)]
    [InlineData(10, 0.9989)]
    [InlineData(12, 1.588)]
    [InlineData(14, 2.525)]
    [InlineData(16, 4.016)]
    [InlineData(18, 6.385)]
    [InlineData(20, 10.15)]
    [InlineData(22, 16.14)]
    [InlineData(24, 25.67)]
    public void Resistance_OneThousandFeetOfCopper_Agrees(int gauge, double expected) =>
        Close.Within(6e-4, expected, Copper(gauge, 304.8, 20));

    /// <summary>1 + 0.00393 x 55.</summary>
    [Fact]
    [Trait("Source", "NBS-Handbook-100")]
    public void Resistance_AtSeventyFiveDegrees_HasItsRatio() =>
        Close.Within(1e-14, 1.21615, Copper(12, 3, 75) / Copper(12, 3, 20));

    /// <summary>
    /// Windings that got hot. A coefficient of 1/234.5 from 0 degrees Celsius is 1/254.5 from 20: 80 ohm to 100 ohm are 83.63
    /// degrees (printed to 0.01, from a coefficient of four digits); 50 to 58 ohm with 0.0043 from 20 are 57.2, printed 57.
    /// </summary>
    [Theory]
    [Trait("Source", "Winding-temperature-exercises")]
    [InlineData(80, 100, 1 / 254.5, 83.63, 0.01)]
    [InlineData(50, 58, 0.0043, 57, 0.5)]
    public void TemperatureFromResistance_HotWindings_Agrees(
        double cold,
        double hot,
        double coefficient,
        double celsius,
        double half
    )
    {
        double told = WireResistance
            .TemperatureFromResistance(new Real(cold), new Real(coefficient), new Real(20), new Real(hot))
            .Value;

        Assert.Equal(celsius, told, half);
        Close.Within(
            1e-14,
            hot,
            WireResistance.CarriedResistance(new Real(cold), new Real(coefficient), new Real(20), new Real(told)).Value
        );
    }

    /// <summary>There and back is the gauge; the exponential and the logarithm are each off by a few units.</summary>
    [Fact]
    public void AwgFromArea_OfAGauge_IsTheGauge() =>
        FormulaArbitraries.ForAll(
            1,
            u =>
            {
                Real gauge = new(-3 + (43 * u[0]));
                Real back = WireResistance.AwgFromArea(WireResistance.Area(WireResistance.AwgDiameter(gauge)));
                Close.WithinOf(40, 1e-14, gauge.Value, back.Value);
            }
        );

    /// <summary>Six gauges halve the diameter, nearly: 92^(6/39) is 2.005.</summary>
    [Fact]
    public void AwgDiameter_SixGaugesThinner_IsHalfNearly() =>
        FormulaArbitraries.ForAll(
            1,
            u =>
            {
                double gauge = -3 + (37 * u[0]);
                double ratio =
                    WireResistance.AwgDiameter(new Real(gauge)).Value
                    / WireResistance.AwgDiameter(new Real(gauge + 6)).Value;
                Close.Within(1e-13, Math.Pow(92, 6 / 39.0), ratio);
            }
        );

    private static double Copper(double gauge, double meters, double celsius) =>
        WireResistance
            .Resistance(
                new Real(WireResistance.CopperResistivity),
                new Real(WireResistance.CopperCoefficient),
                new Real(meters),
                WireResistance.Area(WireResistance.AwgDiameter(new Real(gauge))),
                new Real(celsius)
            )
            .Value;
}

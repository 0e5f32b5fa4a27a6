using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class VaporPressureTests
{
    private const double Psi = 6894.757293168361;

    /// <summary>
    /// Table 7.1-2, gasolines, psi absolute. The printed table is rounded and of another edition than the equation:
    /// within 4 %.
    /// </summary>
    [Theory]
    [Trait("Source", "EPA-AP42")]
    [InlineData(13, 40, 4.7)]
    [InlineData(13, 50, 5.7)]
    [InlineData(13, 60, 6.9)]
    [InlineData(13, 70, 8.3)]
    [InlineData(13, 80, 9.9)]
    [InlineData(13, 90, 11.7)]
    [InlineData(13, 100, 13.8)]
    [InlineData(10, 40, 3.4)]
    [InlineData(10, 50, 4.2)]
    [InlineData(10, 60, 5.2)]
    [InlineData(10, 70, 6.2)]
    [InlineData(10, 80, 7.4)]
    [InlineData(10, 90, 8.8)]
    [InlineData(10, 100, 10.5)]
    [InlineData(7, 40, 2.3)]
    [InlineData(7, 100, 7.4)]
    public void FromReid_PrintedTable_Agrees(double reid, double fahrenheit, double expected) =>
        Close.Within(0.04, expected, FromReid(reid, fahrenheit));

    /// <summary>The tabulated constants A and B for Reid pressures of 13, 10 and 7 psi, at 60 degrees: five digits.</summary>
    [Theory]
    [Trait("Source", "EPA-AP42")]
    [InlineData(13, 11.644, 5043.6)]
    [InlineData(10, 11.724, 5237.3)]
    [InlineData(7, 11.833, 5500.6)]
    public void FromReid_TabulatedConstants_Agrees(double reid, double a, double b) =>
        Close.Within(1e-3, Math.Exp(a - (b / (60 + 459.67))), FromReid(reid, 60));

    /// <summary>
    /// Table of fuel properties: pressure at 100 degrees Fahrenheit in psi, two digits; coefficients from another work.
    /// </summary>
    [Theory]
    [Trait("Source", "DOE-AFDC")]
    [InlineData(10.33675, 1648.22, -42.232, 2.3)]
    [InlineData(10.20277, 1580.08, -33.65, 4.6)]
    public void Antoine_EthanolAndMethanol_AgreeWithTheTable(double a, double b, double c, double psi) =>
        Assert.Equal(psi, Antoine(a, b, c, 310.928) / Psi, 0.05);

    /// <summary>
    /// Iso-octane, n-heptane and toluene at 37.78 degrees Celsius in kPa after three other works: their spread is one
    /// percent.
    /// </summary>
    [Theory]
    [Trait("Source", "Perry-2008")]
    [InlineData(8.93646, 1257.85, -52.383, 11.8)]
    [InlineData(9.02023, 1263.909, -56.718, 11.15)]
    [InlineData(9.05043, 1327.62, -55.525, 7.115)]
    public void Antoine_Hydrocarbons_AgreeWithAnotherWork(double a, double b, double c, double kilopascals) =>
        Close.Within(0.01, kilopascals * 1e3, Antoine(a, b, c, 310.93));

    /// <summary>A Reid pressure is measured with vapor above the fuel: the true one at 100 degrees Fahrenheit is higher.</summary>
    [Fact]
    public void FromReid_AtOneHundredDegreesFahrenheit_IsAboveTheReidPressure() =>
        FormulaArbitraries.ForAll(1, u => Assert.True(FromReid(6 + (9 * u[0]), 100) > 6 + (9 * u[0])));

    [Fact]
    public void FromReid_WarmerOrMoreVolatile_Rises() =>
        FormulaArbitraries.ForAll(
            2,
            u =>
            {
                (double reid, double fahrenheit) = (6 + (8 * u[0]), 40 + (59 * u[1]));
                Assert.True(FromReid(reid + 1, fahrenheit) > FromReid(reid, fahrenheit));
                Assert.True(FromReid(reid, fahrenheit + 1) > FromReid(reid, fahrenheit));
            }
        );

    private static double FromReid(double reidPsi, double fahrenheit) =>
        VaporPressure.FromReid(new Real(reidPsi * Psi), new Real((fahrenheit + 459.67) / 1.8)).Value / Psi;

    private static double Antoine(double a, double b, double c, double kelvin) =>
        VaporPressure.Antoine(new Real(a), new Real(b), new Real(c), new Real(kelvin)).Value;
}

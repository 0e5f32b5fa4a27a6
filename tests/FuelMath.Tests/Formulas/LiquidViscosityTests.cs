using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>The formulas of viscosity against published points.</summary>
public sealed class LiquidViscosityTests
{
    // Worked examples of a public page. The second gives its answer to two digits.
    [Theory]
    [InlineData(40, 404, 100, 28, 60, 132.126, 1e-5)]
    [InlineData(40, 68, 80, 14.85, 100, 8.8, 0.01)]
    [Trait("Source", "ASTM-D341")]
    public void Kinematic_FromTwoPoints_IsTheWorkedExample(
        double first,
        double firstViscosity,
        double second,
        double secondViscosity,
        double celsius,
        double worked,
        double relative
    ) =>
        Close.Within(
            relative,
            worked,
            PetroleumViscosity
                .Kinematic(
                    first + 273.15,
                    firstViscosity * 1e-6,
                    second + 273.15,
                    secondViscosity * 1e-6,
                    new Real(celsius + 273.15)
                )
                .Value * 1e6
        );

    // Evaluated by an open library from the same printed coefficients, six digits.
    [Theory]
    [InlineData(-12.928, 1137.5, 0.25725, -3.6929e-28, 10, 20, 0.506438)]
    [InlineData(-9.4622, 877.07, -0.23445, 1.4022e22, -10, 20, 0.410078)]
    [InlineData(-226.08, 6805.7, 37.542, -0.060853, 1, 20, 0.587848)]
    [InlineData(7.875, 781.98, -3.0418, 0, 0, 50, 0.688491)]
    [InlineData(-25.317, 1789.2, 2.069, 0, 0, 0, 0.77735)]
    [Trait("Source", "Perry-2008")]
    public void Viscosity_OfAPureLiquid_IsTheEvaluatedPoint(
        double c1,
        double c2,
        double c3,
        double c4,
        double c5,
        double celsius,
        double milli
    ) =>
        Close.Within(
            1e-5,
            milli,
            SaturatedLiquid.Viscosity(c1, c2, c3, c4, c5, new Real(celsius + 273.15)).Value * 1000
        );

    // The law of the table's footnote at its own base is one, and at 0 °C with a parameter of 4.6 it is
    // exp(4.6 x 20/273.15) = 1.4005.
    [Fact]
    [Trait("Source", "White-1999")]
    public void Relative_FromTheBase_IsTheFootnote()
    {
        Assert.Equal(1, PetroleumViscosity.Relative(4.6, new Real(293.15)).Value);
        Close.Within(1e-4, 1.4005, PetroleumViscosity.Relative(4.6, new Real(273.15)).Value);
    }
}

using FuelMath.Formulas;
using FuelMath.Tests.Formulas;

namespace FuelMath.Tests.Scalars;

/// <summary>Slopes in closed form. Every formula is checked against central differences in <see cref="ReadingsTests"/>.</summary>
public sealed class DualTests
{
    /// <summary>Derivatives of elementary functions: closed forms of any textbook, to rounding.</summary>
    [Fact]
    [Trait("Source", "Griewank-2008")]
    public void Operations_AnyNumber_HaveTheirDerivatives() =>
        FormulaArbitraries.ForAll(
            1,
            u =>
            {
                double x = 0.1 + (5 * u[0]);
                Dual<Real> v = Dual<Real>.Variable(new Real(x));

                Slope(2 * x, v * v);
                Slope(3 * x * x, v * v * v);
                Slope(-1 / (x * x), 1 / v);
                Slope(0.5 / Math.Sqrt(x), Dual<Real>.Sqrt(v));
                Slope(Math.Exp(x), Dual<Real>.Exp(v));
                Slope(1 / x, Dual<Real>.Log(v));
                Slope(1.75 * Math.Pow(x, 0.75), Dual<Real>.Pow(v, 1.75));
                Slope(1 / ((1 + x) * (1 + x)), v / (1 + v));
                Slope(-1, 7 - v);
                Slope(-0.5, -v / 2);
                Slope(-1, Dual<Real>.Abs(-3 - v + (2 * Dual<Real>.Of(x)) - Dual<Real>.Of(x)) - (2 * v));
            }
        );

    [Fact]
    public void MinMaxSelect_EitherSide_CarryTheSlopeOfTheSideTaken()
    {
        Dual<Real> v = Dual<Real>.Variable(new Real(2));

        Slope(1, Dual<Real>.Max(v, Dual<Real>.Of(1)));
        Slope(0, Dual<Real>.Max(v, Dual<Real>.Of(3)));
        Slope(0, Dual<Real>.Min(v, Dual<Real>.Of(1)));
        Slope(4, Dual<Real>.Select(Dual<Real>.Less(v, Dual<Real>.Of(3)), v * v, v));
        Slope(1, Dual<Real>.Select(Dual<Real>.Less(v, Dual<Real>.Of(1)), v * v, v));
    }

    /// <summary>A dual of duals has the second derivative: (x^3)'' = 6 x, and that of a root.</summary>
    [Fact]
    public void DualOfDual_Cube_HasItsSecondDerivative()
    {
        var x = new Dual<Dual<Real>>(Dual<Real>.Variable(new Real(1.5)), Dual<Real>.Of(1));

        Assert.Equal(9, (x * x * x).Slope.Slope.Value, 1e-14);
        Assert.Equal(-0.25 / Math.Pow(1.5, 1.5), Dual<Dual<Real>>.Sqrt(x).Slope.Slope.Value, 1e-15);
    }

    [Fact]
    public void Default_IsTheConstantZero()
    {
        Assert.Equal(0, default(Dual<Real>).Value.Value);
        Assert.Equal(0, default(Dual<Real>).Slope.Value);
        Assert.False(Dual<Real>.All(default));
    }

    private static void Slope(double expected, Dual<Real> of) =>
        Close.WithinOf(1 + Math.Abs(expected), 1e-14, expected, of.Slope.Value);
}

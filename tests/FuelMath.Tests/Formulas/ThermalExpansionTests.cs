using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class ThermalExpansionTests
{
    public static TheoryData<double, double, double, double> Table54B()
    {
        var table = new TheoryData<double, double, double, double>();
        foreach (Dictionary<string, string> row in CsvRows.Read("Formulas/Data/d1250.csv"))
        {
            table.Add(
                row.Number("density15"),
                row.Number("temperature"),
                row.Number("coefficient15"),
                row.Number("factor")
            );
        }

        return table;
    }

    /// <summary>The data have seven and six digits after the point.</summary>
    [Theory]
    [Trait("Source", "ASTM-D1250")]
    [MemberData(nameof(Table54B))]
    public void ProductCoefficient_Table54B_Agrees(
        double density15,
        double temperature,
        double coefficient,
        double factor
    )
    {
        Real alpha = ThermalExpansion.ProductCoefficient(new Real(density15));

        Assert.Equal(coefficient, alpha.Value, 5.1e-8);
        Assert.Equal(factor, ThermalExpansion.VolumeCorrection(alpha, new Real(temperature)).Value, 5.1e-7);
    }

    /// <summary>Three more points of gasolines, evaluated apart from the library.</summary>
    [Theory]
    [Trait("Source", "ASTM-D1250")]
    [InlineData(730, 20, 0.993733)]
    [InlineData(745, 20, 0.993923)]
    [InlineData(745, 40, 0.969413)]
    public void GasolineVolumeCorrection_IndependentPoints_Agrees(
        double density15,
        double temperature,
        double factor
    ) =>
        Assert.Equal(
            factor,
            ThermalExpansion.GasolineVolumeCorrection(new Real(density15), new Real(temperature)).Value,
            5.1e-7
        );

    /// <summary>
    /// The constant of lubricating oils at 60 degrees Fahrenheit, 0.34878 per degree, as the 2004 edition has it: 1.8
    /// times that, and the reference 0.56 K away.
    /// </summary>
    [Fact]
    [Trait("Source", "ASTM-D1250")]
    public void LubricantCoefficient_AgainstTheFahrenheitConstant_Agrees() =>
        Close.Within(1e-4, 0.34878 * 1.8 / 880, ThermalExpansion.LubricantCoefficient(new Real(880)).Value);

    /// <summary>Tables of pure ethanol, three digits after the point.</summary>
    [Theory]
    [Trait("Source", "OIML-R22")]
    [InlineData(0, 806.215)]
    [InlineData(15, 793.506)]
    [InlineData(20, 789.239)]
    [InlineData(25, 784.954)]
    [InlineData(30, 780.648)]
    [InlineData(40, 771.932)]
    public void EthanolDensity_PublishedFormula_Agrees(double temperature, double density) =>
        Assert.Equal(density, ThermalExpansion.EthanolDensity(new Real(temperature)).Value, 6e-4);

    [Fact]
    public void VolumeCorrection_AtFifteenDegrees_IsOne() =>
        FormulaArbitraries.ForAll(
            1,
            u =>
                Assert.Equal(
                    1,
                    ThermalExpansion.GasolineVolumeCorrection(new Real(653 + (117 * u[0])), new Real(15)).Value
                )
        );

    [Fact]
    public void GasolineVolumeCorrection_Warmer_IsLess() =>
        FormulaArbitraries.ForAll(
            2,
            u =>
            {
                double cold = -18 + (108 * Math.Min(u[0], u[1]));
                double warm = -18 + (108 * Math.Max(u[0], u[1]));
                Assert.True(warm <= cold || Correction(warm) <= Correction(cold));
            }
        );

    /// <summary>For small differences the exponential is the straight line of the coefficient.</summary>
    [Fact]
    public void VolumeCorrection_SmallDifference_IsTheInverseOfTheLinearVolume() =>
        Close.Within(
            1e-9,
            1 / ThermalExpansion.LinearVolume(new Real(1.2e-3), new Real(0.01)).Value,
            ThermalExpansion.VolumeCorrection(new Real(1.2e-3), new Real(15.01)).Value
        );

    private static double Correction(double temperature) =>
        ThermalExpansion.GasolineVolumeCorrection(new Real(745), new Real(temperature)).Value;
}

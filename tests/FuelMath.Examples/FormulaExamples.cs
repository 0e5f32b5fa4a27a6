using FuelMath.Columns;
using FuelMath.Formulas;
using FuelMath.Scalars;

namespace FuelMath.Examples;

public sealed class FormulaExamples
{
    [Fact]
    public void RatingCarriedToAnotherPressure()
    {
        #region Formula
        // 6.3 g/s at 300 kPa with a fluid of 690 kg/m3; now 400 kPa and 755 kg/m3. Everything in SI units.
        Real flow = Orifice.CarriedMassFlow(
            referenceMassFlow: new Real(6.3e-3),
            referenceDifferentialPressure: new Real(300e3),
            referenceDensity: new Real(690),
            differentialPressure: new Real(400e3),
            density: new Real(755)
        );
        #endregion

        // sqrt(4/3 x 755/690) by hand.
        Assert.Equal(6.3e-3 * 1.20786, flow.Value, 1e-7);
    }

    [Fact]
    public void WholeColumns()
    {
        #region Columns
        double[] differentialPressure = [300e3, 310e3, 405e3];
        double[] density = [742, 741, 738];
        double[] massFlow = new double[3];

        OrificeColumns.CarriedMassFlow(6.3e-3, 300e3, 690, differentialPressure, density, massFlow);
        #endregion

        // sqrt(742/690) by hand.
        Assert.Equal(6.3e-3 * 1.036996, massFlow[0], 1e-8);
    }
}

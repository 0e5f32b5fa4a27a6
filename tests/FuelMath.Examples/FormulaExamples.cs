using FuelMath.Formulas;

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
        ); // 0.00761 kg/s
        #endregion

        // sqrt(4/3 x 755/690) by hand.
        Assert.Equal(6.3e-3 * 1.20786, flow.Value, 1e-7);
    }

    [Fact]
    public void WholeColumns()
    {
        #region Columns
        double[] differentialPressure = [300e3, 310e3, 405e3]; // Pa
        double[] density = [742, 741, 738]; // kg/m3
        double[] massFlow = new double[3]; // kg/s

        FormulaColumns.Run(
            FormulaCatalog.Named("Orifice.CarriedMassFlow"),
            [
                FormulaColumns.Input.FromNumber(6.3e-3), // 6.3 g/s at 3 bar with 690 kg/m3
                FormulaColumns.Input.FromNumber(300e3),
                FormulaColumns.Input.FromNumber(690),
                FormulaColumns.Input.FromColumn(differentialPressure),
                FormulaColumns.Input.FromColumn(density),
            ],
            massFlow
        );
        double first = massFlow[0]; // 0.006533 kg/s
        #endregion

        // sqrt(742/690) by hand.
        Assert.Equal(6.3e-3 * 1.036996, first, 1e-8);
    }

    [Fact]
    public void FormulaByName()
    {
        #region Catalog
        FormulaInfo formula = FormulaCatalog.Named("Orifice.CarriedVolumeFlow");

        // 800 cm3/min at 300 kPa; now 400 kPa. The same fluid: 740 kg/m3.
        double flow = formula.Calculate(FormulaInfo.CallUnits.Customary, 800, 300, 740, 400, 740); // 923.76

        // A rating at no pressure is refused, with what is allowed.
        FormulaRefusal? refusal = formula.Check(FormulaInfo.CallUnits.Customary, 800, 0, 740, 400, 740);
        string? refused = refusal?.Argument?.Name; // "referenceDifferentialPressure"
        #endregion

        // 800 times the root of 4/3, by hand.
        Assert.Equal(923.760, flow, 1e-3);
        Assert.Equal("referenceDifferentialPressure", refused);
    }

    [Fact]
    public void FormulaOfYourOwn()
    {
        #region OwnFormula
        var length = new Symbol("L", "m", "length of hose");
        var volume = new Symbol("Vh", "m3", "volume of fuel in the hose");
        FormulaInfo formula = FormulaInfo.Of(
            new HoseVolume(),
            "Workshop.HoseVolume",
            "The fuel that a hose of 8 mm holds",
            FormulaInfo.FormulaTopic.Tightness,
            [new("length", FormulaQuantity.Of(length, QuantityKinds.Length, "m"), 0, 100, 0, 10)],
            [],
            [],
            FormulaQuantity.Of(volume, QuantityKinds.Volume, "mL"),
            [new DataSource("Definition", "volume of a cylinder")],
            new FormulaInfo.CheckedExample([1], 5.0265e-5, 1e-4, new DataSource("Definition", "by hand"))
        );

        double milliliters = formula.Calculate(FormulaInfo.CallUnits.Customary, 2.5); // 125.66
        #endregion

        Assert.Equal(125.66, milliliters, 0.01);
    }

    #region OwnFormulaType
    private readonly struct HoseVolume : IFormula
    {
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => WireResistance.Area(T.Of(0.008)) * a[0];
    }
    #endregion
}

using FuelMath.Formulas;

namespace FuelMath.Examples;

/// <summary>Rows of a log, and what injectors delivered in each. The data are invented.</summary>
public sealed class ColumnExamples
{
    [Fact]
    public void Run()
    {
        #region Run
        double[] width = [0.0030, 0.0042, double.NaN, 0.0051]; // s; one gap
        double[] voltage = [13.8, 13.6, 13.6, 12.9]; // V
        double[] pressure = [300e3, 305e3, 306e3, 290e3]; // Pa across the injector
        double[] mass = new double[width.Length]; // kg

        var deadTime = new Grid(
            "dead time",
            new Grid.Axis("voltage (V)", [10, 12, 14, 16]),
            new Grid.Axis("differential pressure (Pa)", [250e3, 400e3]),
            new[,]
            {
                { 1.50e-3, 1.58e-3 },
                { 1.10e-3, 1.16e-3 },
                { 0.90e-3, 0.95e-3 },
                { 0.78e-3, 0.83e-3 },
            },
            OutsideRange.Refuse
        );
        ColumnReport report = FormulaColumns.Run(
            InjectorFormulas.DeliveredMass(deadTime),
            [
                FormulaColumns.Input.FromNumber(6e-3), // 6 g/s at 3 bar with 740 kg/m3
                FormulaColumns.Input.FromNumber(300e3),
                FormulaColumns.Input.FromNumber(740),
                FormulaColumns.Input.FromColumn(width),
                FormulaColumns.Input.FromColumn(voltage),
                FormulaColumns.Input.FromColumn(pressure),
                FormulaColumns.Input.FromNumber(740),
            ],
            mass
        );

        double first = mass[0] * 1e6; // 12.38 mg
        int gaps = report.BadRows; // 1 of four rows has no result
        int? gap = report.FirstBadRow; // 2, counted from zero
        #endregion

        Assert.Equal((4, 1, 2), (report.Rows, gaps, gap));
        // 13.8 V and 3 bar: a third of the way from 2.5 to 4 bar, a tenth from 14 V to 12 V: 0.9367 ms dead, by hand.
        double dead = (0.9 * (0.9 + (0.05 / 3))) + (0.1 * (1.1 + (0.06 / 3)));
        Assert.Equal(6e-3 * (3.0 - dead) * 1e-3, first * 1e-6, 12);
        Assert.True(double.IsNaN(mass[2]));
    }
}

using FuelMath.Formulas;

namespace FuelMath.Examples;

public sealed class TableExamples
{
    [Fact]
    public void CurveAndGrid()
    {
        #region Tables
        // Flow in L/h over pressure in kPa, read smoothly and backwards.
        var flow = new Curve("pump", "pressure (kPa)", [200, 300, 400, 500], [270, 235, 190, 120], OutsideRange.Refuse);
        double litersPerHour = flow.At(350);
        double kilopascals = flow.Inverse(200);

        // Dead time in ms over voltage in V and pressure in kPa.
        double[,] milliseconds =
        {
            { 1.9, 2.1 },
            { 1.0, 1.1 },
            { 0.8, 0.9 },
        };
        var deadTime = new Grid(
            "dead time",
            new Grid.Axis("voltage (V)", [8, 12, 14]),
            new Grid.Axis("pressure (kPa)", [300, 500]),
            milliseconds,
            OutsideRange.Refuse
        );
        double at13Volts = deadTime.At(13, 400);

        // Outside the data a table refuses, unless its owner chose to hold the ends or to extend.
        string said = "";
        try
        {
            flow.At(510);
        }
        catch (OutsideTableException refusal)
        {
            said = refusal.Message; // "pump: pressure must be from 200 kPa to 500 kPa; it was 510 kPa."
        }
        #endregion

        Assert.InRange(litersPerHour, 190, 235);
        Assert.Equal(200, flow.At(kilopascals), 1e-9);
        Assert.Equal(0.95, at13Volts, 1e-12);
        Assert.StartsWith("pump: pressure must be from 200 kPa to 500 kPa; it was 510 kPa.", said);
        Assert.Equal(litersPerHour, flow.Read(new Real(350)).Value);
    }
}

using UnitsNet;

namespace FuelMath.Examples;

public sealed class QuantityExamples
{
    [Fact]
    public void DifferentialPressure()
    {
        #region DifferentialPressure
        var ambient = new AbsolutePressure(Pressure.FromKilopascals(98));
        var rail = new GaugePressure(Pressure.FromBars(3));
        var manifold = new AbsolutePressure(Pressure.FromKilopascals(180));

        Pressure differentialPressure = rail.ToAbsolute(ambient) - manifold; // 218 kPa
        GaugePressure boost = manifold.ToGauge(ambient); // 82 kPa gauge
        #endregion

        Assert.Equal(218, differentialPressure.Kilopascals, 1e-9);
        Assert.Equal("82 kPa gauge", boost.ToString());
    }
}

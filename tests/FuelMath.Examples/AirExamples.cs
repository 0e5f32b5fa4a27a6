using UnitsNet;

namespace FuelMath.Examples;

public sealed class AirExamples
{
    [Fact]
    public void HillClimb()
    {
        #region HillClimb
        // Tuned at home on a dry spring day, driven on a hot and humid day at 1500 m.
        var home = new AirState(
            new AbsolutePressure(Pressure.FromKilopascals(100.8)),
            Temperature.FromDegreesCelsius(15),
            Ratio.FromPercent(40)
        );
        AirState standard = StandardAtmosphere.AtHeight(Length.FromMeters(1500));
        var hill = new AirState(standard.Pressure, Temperature.FromDegreesCelsius(28), Ratio.FromPercent(70));

        Ratio fuel = hill.FuelRatioTo(home); // 0.78 of the fuel at the same lambda
        string working = hill.DryAirWorking().ToString();
        #endregion

        Assert.Equal(0.78, fuel.DecimalFractions, 0.005);
        Assert.Contains("rhod", working, StringComparison.Ordinal);
    }
}

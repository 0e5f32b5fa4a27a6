using FuelMath.Filters;
using FuelMath.Fuels;
using FuelMath.Sources;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class FilterExamples
{
    [Fact]
    public void CarriedToAnotherFluid()
    {
        #region Filter
        Filter filter = Filter.Fit(
            "main filter",
            [
                new(Pressure.FromKilopascals(4), VolumeFlow.FromLitersPerHour(100)),
                new(Pressure.FromKilopascals(10), VolumeFlow.FromLitersPerHour(200)),
                new(Pressure.FromKilopascals(18), VolumeFlow.FromLitersPerHour(300)),
            ],
            Density.FromKilogramsPerCubicMeter(825),
            DynamicViscosity.FromMillipascalSeconds(2.1),
            new DataSource("Workshop-class", "filter of the time-trial car")
        );

        Temperature warm = Temperature.FromDegreesCelsius(40);
        Fuel fuel = StandardFuels.PumpGasoline;
        Pressure loss = filter.LossAt(VolumeFlow.FromLitersPerHour(200), fuel.DensityAt(warm), fuel.ViscosityAt(warm));
        #endregion

        // The points lie on 0.03 x + 0.0001 x2 (kPa, L/h): the thin fuel keeps the second term in the ratio of densities.
        double quadratic = 0.0001 * 200 * 200 * fuel.DensityAt(warm).KilogramsPerCubicMeter / 825;
        double linear = 0.03 * 200 * fuel.ViscosityAt(warm).MillipascalSeconds / 2.1;
        Assert.Equal(quadratic + linear, loss.Kilopascals, 1e-9);
    }
}

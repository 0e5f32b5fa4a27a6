using System.Collections.Immutable;
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
        Pressure loss = filter.LossAt(VolumeFlow.FromLitersPerHour(200), fuel.DensityAt(warm), fuel.ViscosityAt(warm)); // 4.92 kPa
        #endregion

        // The points lie on 0.03 x + 0.0001 x2 (kPa, L/h): the thin fuel keeps the second term in the ratio of densities.
        double quadratic = 0.0001 * 200 * 200 * fuel.DensityAt(warm).KilogramsPerCubicMeter / 825;
        double linear = 0.03 * 200 * fuel.ViscosityAt(warm).MillipascalSeconds / 2.1;
        Assert.Equal(quadratic + linear, loss.Kilopascals, 1e-9);
    }

    [Fact]
    public void StrainerByItsWire()
    {
        #region Strainer
        Strainer sock = new(
            "pick-up strainer",
            Length.FromMillimeters(0.25),
            Length.FromMillimeters(0.16),
            Area.FromSquareMillimeters(1200),
            new DataSource("Workshop-class", "strainer of the training stand")
        );
        Pressure loss = sock.LossAt(
            VolumeFlow.FromLitersPerHour(300),
            Density.FromKilogramsPerCubicMeter(740),
            DynamicViscosity.FromMillipascalSeconds(0.5)
        ); // 19.65 Pa
        #endregion

        // 5236 m of wire in a square meter of mesh; the Reynolds number is 6.08. Worked out apart.
        Assert.Equal(19.65, loss.Pascals, 0.01);
    }

    [Fact]
    public void LoadedAndRated()
    {
        #region Rating
        var workshop = new DataSource("Workshop-class", "filter of the time-trial car");
        Density density = Density.FromKilogramsPerCubicMeter(740);
        DynamicViscosity viscosity = DynamicViscosity.FromMillipascalSeconds(0.5);
        Filter clean = Filter.Fit(
            "main filter",
            [
                new(Pressure.FromKilopascals(4), VolumeFlow.FromLitersPerHour(100)),
                new(Pressure.FromKilopascals(10), VolumeFlow.FromLitersPerHour(200)),
            ],
            density,
            viscosity,
            workshop
        );
        var loading = new FilterLoading(
            VolumeFlow.FromLitersPerHour(200),
            viscosity,
            [
                new(Mass.Zero, Pressure.FromKilopascals(10)),
                new(Mass.FromGrams(4), Pressure.FromKilopascals(14)),
                new(Mass.FromGrams(8), Pressure.FromKilopascals(40)),
            ],
            workshop
        );

        VolumeFlow flow = VolumeFlow.FromLitersPerHour(180);
        Pressure tired = clean.Loaded(loading, Mass.FromGrams(4)).LossAt(flow, density, viscosity); // 12.24 kPa
        Mass until = loading.MassUntil(clean, Pressure.FromKilopascals(30), flow, density, viscosity); // 7.31 g
        FilterLoading.ServiceInterval lasts = new FilterLoading.DirtRate(
            MassFlow.FromGramsPerHour(0.02),
            MassFlow.FromGramsPerHour(0.1),
            workshop
        ).TimeFor(until);

        var rating = new FiltrationRating(
            "main filter",
            [
                new(Length.FromMicrometers(10), Ratio.FromDecimalFractions(20)),
                new(Length.FromMicrometers(25), Ratio.FromDecimalFractions(200)),
            ],
            workshop
        );
        ImmutableArray<Finding> findings = rating.Check(Length.FromMicrometers(20), Ratio.FromPercent(99));
        string retained = findings[0].Value; // 95.0 % at 10 µm
        #endregion

        // The dirt adds 4 kPa at 200 L/h to the term that goes with flow.
        double atFlow = clean.LossAt(flow, density, viscosity).Kilopascals;
        Assert.Equal(atFlow + (4 * 0.9), tired.Kilopascals, 1e-9);
        Assert.InRange(until.Grams, 4, 8);
        Assert.Equal(5, lasts.Longest!.Value.Hours / lasts.Shortest.Hours, 1e-9);

        // At 10 micrometers, the coarsest tested that the passage lets through, 95 %.
        Assert.Equal("95.0 % at 10 µm", retained);
    }
}

using UnitsNet;

namespace FuelMath.Tests.Fuels;

/// <summary>Fuels and parts of blends that the tests build.</summary>
internal static class TestFuels
{
    internal static readonly DataSource Invented = new("Workshop-class", "test fuel");

    internal static FuelBlend.Part Part(Fuel fuel, double percent) => new(fuel, Ratio.FromPercent(percent));

    internal static IReadOnlyList<FuelBlend.Part> Two(Fuel first, double percent, Fuel second) =>
        [Part(first, percent), Part(second, 100 - percent)];

    /// <summary>Gasoline with 10 % of methanol by mass, whose vapor pressure is not known.</summary>
    internal static Fuel MethanolBlend { get; } =
        FuelBlend.ByMass("M10", Two(StandardFuels.Methanol, 10, StandardFuels.PumpGasoline));

    /// <summary>A fluid whose heating value nobody stated.</summary>
    internal static Fuel WithoutHeatingValue(string name, Fuel like) =>
        new(name, like.Composition, like.Density, like.Viscosity, like.VaporPressure, null, Invented, [], []);

    internal static Fuel WithDensity(Fuel like, double at20) =>
        Custom(like.Name, like, Line(0, at20 + 20, 40, at20 - 20), like.Viscosity);

    internal static Fuel WithDensityBetween(Fuel like, double low, double high) =>
        Custom(like.Name, like, Line(low, 720, high, 700), like.Viscosity);

    internal static Fuel WithViscosity(string name, Fuel like, double millipascalSeconds) =>
        Custom(
            name,
            like,
            like.Density,
            LiquidViscosity.FromPoints(
                [Celsius.Of(0), Celsius.Of(50)],
                [
                    DynamicViscosity.FromMillipascalSeconds(millipascalSeconds * 1.1),
                    DynamicViscosity.FromMillipascalSeconds(millipascalSeconds * 0.9),
                ],
                Invented
            )
        );

    internal static Fuel Oil(double centistokesAt40)
    {
        LiquidDensity density = LiquidDensity.FromLubricantAt15Celsius(Density.FromKilogramsPerCubicMeter(870));
        return Custom(
            "oil",
            StandardFuels.TwoStrokeOil,
            density,
            LiquidViscosity.FromOil(
                KinematicViscosity.FromCentistokes(centistokesAt40),
                KinematicViscosity.FromCentistokes(2),
                density,
                Invented
            )
        );
    }

    internal static Fuel Custom(string name, Fuel like, LiquidDensity density, LiquidViscosity viscosity) =>
        new(name, like.Composition, density, viscosity, like.VaporPressure, null, Invented, [], []);

    internal static LiquidDensity Line(double low, double atLow, double high, double atHigh) =>
        LiquidDensity.FromPoints(
            [Celsius.Of(low), Celsius.Of(high)],
            [Density.FromKilogramsPerCubicMeter(atLow), Density.FromKilogramsPerCubicMeter(atHigh)],
            Invented
        );
}

using UnitsNet;

namespace FuelMath;

/// <summary>Fuels that the library provides: by name, or by the figures of a data sheet.</summary>
internal static class StandardFuelShapes
{
    /// <summary>The fuels that a document refers to by name alone.</summary>
    internal static ChoiceShape<Fuel> Words { get; } =
        new(
            ("pump gasoline", StandardFuels.PumpGasoline),
            ("ethanol", StandardFuels.Ethanol),
            ("methanol", StandardFuels.Methanol),
            ("iso-octane", StandardFuels.IsoOctane),
            ("n-heptane", StandardFuels.NHeptane),
            ("toluene", StandardFuels.Toluene),
            ("two-stroke oil", StandardFuels.TwoStrokeOil)
        );

    internal static ObjectShape<Fuel> Gasoline { get; } =
        new(o =>
        {
            o.Is("gasoline", "A gasoline without alcohol, known by its density and Reid vapor pressure.");
            o.Kind("gasoline", "That it is a gasoline.", f => f.Recipe is GasolineRecipe);
            var name = o.Named(f => f.Name);
            var gasolineDensity = o.Required(
                    "at15Celsius",
                    QuantityShapes.Density.Positive,
                    f => ((GasolineRecipe)f.Recipe!).At15Celsius
                )
                .Says("Density at 15 degC, from 653 kg/m3 to 770 kg/m3.");
            var reid = o.Required(
                    "reidVaporPressure",
                    QuantityShapes.AbsolutePressure.Positive,
                    f => ((GasolineRecipe)f.Recipe!).ReidVaporPressure
                )
                .Says("Reid vapor pressure, from 6 psi to 15 psi.");
            return f => StandardFuels.Gasoline(f.Of(gasolineDensity), f.Of(reid)).WithName(f.Of(name));
        });

    internal static ObjectShape<Fuel> TwoStrokeOil { get; } =
        new(o =>
        {
            o.Is("oil", "An oil for premix, from its data sheet.");
            o.Kind("oil", "That it is an oil for premix.", f => f.Recipe is OilRecipe);
            var oilName = o.Named(f => f.Name);
            var oilDensity = o.Required("at15Celsius", QuantityShapes.Density.Positive, f => Oil(f).At15Celsius)
                .Says("Density at 15 degC, from 800 kg/m3 to 1000 kg/m3.");
            var oilAt40 = o.Required("at40Celsius", QuantityShapes.KinematicViscosity.Positive, f => Oil(f).At40Celsius)
                .Says("Kinematic viscosity at 40 degC.");
            var oilAt100 = o.Required(
                    "at100Celsius",
                    QuantityShapes.KinematicViscosity.Positive,
                    f => Oil(f).At100Celsius
                )
                .Says("Kinematic viscosity at 100 degC.");
            var oilSource = o.Source(f => Oil(f).Source);
            return f =>
                StandardFuels.TwoStrokeOilOf(
                    f.Of(oilName),
                    f.Of(oilDensity),
                    f.Of(oilAt40),
                    f.Of(oilAt100),
                    f.Of(oilSource)
                );
        });

    private static OilRecipe Oil(Fuel fuel) => (OilRecipe)fuel.Recipe!;
}

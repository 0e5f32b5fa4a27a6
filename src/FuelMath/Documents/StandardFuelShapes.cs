using UnitsNet;

namespace FuelMath;

/// <summary>Fuels that the library knows: by name, or by the figures of a data sheet.</summary>
internal static class StandardFuelShapes
{
    /// <summary>The fuels that a name is enough for.</summary>
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

    private static readonly ValueProperty<Fuel, Density> GasolineDensity = new(
        "at15Celsius",
        "Density at 15 degC, from 653 kg/m3 to 770 kg/m3.",
        QuantityShapes.Density,
        f => ((GasolineRecipe)f.Recipe!).At15Celsius
    );

    private static readonly ValueProperty<Fuel, AbsolutePressure> Reid = new(
        "reidVaporPressure",
        "Reid vapor pressure, from 6 psi to 15 psi.",
        QuantityShapes.AbsolutePressure,
        f => ((GasolineRecipe)f.Recipe!).ReidVaporPressure
    );

    private static readonly ValueProperty<Fuel, string> OilName = new("name", "Its name.", TextShape.Name, f => f.Name);

    private static readonly ValueProperty<Fuel, Density> OilDensity = new(
        "at15Celsius",
        "Density at 15 degC, from 800 kg/m3 to 1000 kg/m3.",
        QuantityShapes.Density,
        f => Oil(f).At15Celsius
    );

    private static readonly ValueProperty<Fuel, KinematicViscosity> OilAt40 = new(
        "at40Celsius",
        "Kinematic viscosity at 40 degC.",
        QuantityShapes.KinematicViscosity,
        f => Oil(f).At40Celsius
    );

    private static readonly ValueProperty<Fuel, KinematicViscosity> OilAt100 = new(
        "at100Celsius",
        "Kinematic viscosity at 100 degC.",
        QuantityShapes.KinematicViscosity,
        f => Oil(f).At100Celsius
    );

    private static readonly ValueProperty<Fuel, DataSource> OilSource = SourceShape.Of<Fuel>(f => Oil(f).Source);

    internal static UnionCase<Fuel> Gasoline { get; } =
        UnionCase<Fuel>.Of(
            new ObjectShape<Fuel>(
                "gasoline",
                "A gasoline without alcohol, known by its density and Reid vapor pressure.",
                [
                    new WordProperty<Fuel>("kind", "That it is a gasoline.", "gasoline"),
                    new WordProperty<Fuel>("name", "Its name.", "gasoline"),
                    GasolineDensity,
                    Reid,
                ],
                f => StandardFuels.Gasoline(f.Of(GasolineDensity), f.Of(Reid))
            ),
            f => f.Recipe is GasolineRecipe
        );

    internal static UnionCase<Fuel> TwoStrokeOil { get; } =
        UnionCase<Fuel>.Of(
            new ObjectShape<Fuel>(
                "oil",
                "An oil for premix, from its data sheet.",
                [
                    new WordProperty<Fuel>("kind", "That it is an oil for premix.", "oil"),
                    OilName,
                    OilDensity,
                    OilAt40,
                    OilAt100,
                    OilSource,
                ],
                f =>
                    StandardFuels.TwoStrokeOilOf(
                        f.Of(OilName),
                        f.Of(OilDensity),
                        f.Of(OilAt40),
                        f.Of(OilAt100),
                        f.Of(OilSource)
                    )
            ),
            f => f.Recipe is OilRecipe
        );

    private static OilRecipe Oil(Fuel fuel) => (OilRecipe)fuel.Recipe!;
}

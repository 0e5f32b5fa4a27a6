using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Fuels that come with the library, each with its sources.</summary>
/// <remarks>
/// Pure substances are known to about 0.1 % in density (n-heptane and ethanol 0.2 %) and 5 % in viscosity. Pump
/// gasolines differ: use the density on the delivery note or from a hydrometer. All of these ignite easily.
/// </remarks>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public static partial class StandardFuels
{
    /// <summary>Lowest temperature of the viscosity of gasoline, in °C.</summary>
    internal const double LowestGasolineViscosityCelsius = -18;

    private const string Ignites =
        "Ignites easily and its vapor spreads along the ground: ventilate, no sparks, extinguisher at hand.";

    private static readonly DataSource Combustibles = new("Heywood-1988", "table D.4, from memory");
    private static readonly DataSource Energies = new("DOE-AFDC", "property table");

    /// <summary>A gasoline of 745 kg/m³ at 15 °C and 60 kPa Reid vapor pressure, invented. Source: [Workshop-class].</summary>
    public static Fuel PumpGasoline { get; } =
        Gasoline(SiUnits.Density(745), new AbsolutePressure(SiUnits.Pressure(60_000)));

    /// <summary>
    /// Ethanol without water. Density to 40 °C: Source: [OIML-R22] formula at 100 %; above, the curve of [Perry-2008]
    /// table 2-32 joined to it. Heating value: Source: [DOE-AFDC] property table.
    /// </summary>
    public static Fuel Ethanol { get; } =
        new(
            "ethanol",
            PureComponents.Ethanol.Composition,
            PureComponents.EthanolDensity(),
            PureComponents.Ethanol.Viscosity(),
            PureComponents.Ethanol.VaporPressure(),
            SiUnits.SpecificEnergy(11_585 * 2326.0),
            Energies,
            [],
            [Ignites, "Takes up water from the air; corrodes some light alloys and swells some seals."]
        )
        {
            HeatCapacity = PureComponents.Ethanol.HeatCapacity(),
            BulkModulus = BulkModuli.Ethanol,
            Volatiles = [VaporPart.Ethanol],
        };

    /// <summary>Methanol. Heating value: Source: [DOE-AFDC] property table.</summary>
    public static Fuel Methanol { get; } =
        Pure(
            "methanol",
            PureComponents.Methanol,
            8_637 * 2326.0,
            Energies,
            BulkModuli.Methanol,
            [
                Ignites,
                "Burns with a flame that can't be seen by day.",
                "Poisonous, also through the skin and as vapor: gloves, ventilation.",
                "Corrodes light alloys and attacks many seals and hoses: flush the system after use.",
            ]
        );

    /// <summary>Iso-octane, 2,2,4-trimethylpentane. Heating value: Source: [Heywood-1988] table D.4, from memory.</summary>
    public static Fuel IsoOctane { get; } =
        Pure("iso-octane", PureComponents.IsoOctane, 44.3e6, Combustibles, BulkModuli.IsoOctane, [Ignites]);

    /// <summary>n-Heptane, a usual test fluid for injectors. Heating value: Source: [Heywood-1988] table D.4, from memory.</summary>
    public static Fuel NHeptane { get; } =
        Pure("n-heptane", PureComponents.NHeptane, 44.6e6, Combustibles, BulkModuli.NHeptane, [Ignites]);

    /// <summary>Toluene. Heating value: Source: [Heywood-1988] table D.4, from memory.</summary>
    public static Fuel Toluene { get; } =
        Pure(
            "toluene",
            PureComponents.Toluene,
            40.6e6,
            Combustibles,
            BulkModuli.Toluene,
            [Ignites, "Harms when breathed in: ventilation."]
        );

    /// <summary>
    /// A mineral oil for premix, invented: 870 kg/m³ at 15 °C, 50 mm²/s at 40 °C, 8 mm²/s at 100 °C (the trade's standard
    /// asks for 6.5 or more). Source: [Workshop-class]; [JASO-M345] table of requirements. Composition CH1.9, a guess.
    /// </summary>
    public static Fuel TwoStrokeOil { get; } =
        TwoStrokeOilOf(
            "two-stroke oil",
            SiUnits.Density(870),
            SiUnits.KinematicViscosity(50e-6),
            SiUnits.KinematicViscosity(8e-6),
            new DataSource("Workshop-class", "two-stroke oil")
        );

    /// <summary>
    /// <see cref="PumpGasoline"/> with 10 % of ethanol by volume, mixed at 15 °C. Its vapor pressure is an estimate
    /// from its parts. Source: [Workshop-class]; [OIML-R22] density of the ethanol.
    /// </summary>
    public static Fuel PumpGasolineWithEthanol { get; } =
        FuelBlend.ByVolume(
            "E10",
            SiUnits.Temperature(SiUnits.KelvinsFromCelsius(15)),
            [new(Ethanol, SiUnits.Ratio(0.1)), new(PumpGasoline, SiUnits.Ratio(0.9))]
        );

    /// <summary>
    /// An oxygenated racing blend, invented and described by its composition alone: 45 % of iso-octane, 25 % of
    /// toluene, 10 % of n-heptane and 20 % of ethanol, by mass. Source: [Workshop-class].
    /// </summary>
    public static Fuel OxygenatedRaceBlend { get; } =
        FuelBlend.ByMass(
            "oxygenated race blend",
            [
                new(IsoOctane, SiUnits.Ratio(0.45)),
                new(Toluene, SiUnits.Ratio(0.25)),
                new(NHeptane, SiUnits.Ratio(0.10)),
                new(Ethanol, SiUnits.Ratio(0.20)),
            ]
        );

    /// <summary>A gasoline without alcohol.</summary>
    /// <param name="at15Celsius">Density at 15 °C, from 653 kg/m³ to 770 kg/m³.</param>
    /// <param name="reidVaporPressure">Reid vapor pressure, from 6 psi to 15 psi, absolute.</param>
    /// <returns>
    /// The gasoline: CH1.87 (Source: [Heywood-1988] table D.4, from memory), 43.4 MJ/kg (Source: [DOE-AFDC] property table) and a
    /// viscosity read from a chart by its density (Source: [HI-EDB] figure "Kinematic Viscosity").
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The density or the Reid vapor pressure is outside its range.
    /// </exception>
    public static Fuel Gasoline(Density at15Celsius, AbsolutePressure reidVaporPressure)
    {
        LiquidDensity density = LiquidDensity.FromGasolineAt15Celsius(at15Celsius);
        double at15 = at15Celsius.InSi();
        LiquidVaporPressure vapor = LiquidVaporPressure.FromReidCarriedOn(reidVaporPressure);
        LiquidViscosity viscosity = new(
            new TemperatureLaw(
                "Viscosity",
                SiUnits.KelvinsFromCelsius(LowestGasolineViscosityCelsius),
                density.Law.Highest,
                new PetroleumLaws.GasolineViscosity(at15, density.Law),
                [new DataSource("HI-EDB", "figure Kinematic Viscosity")],
                [
                    "Viscosity of gasoline: read from a chart by density, within 8 %, and held beyond its gasolines of 679 kg/m³ to "
                        + "747 kg/m³. Another source has 0.5 mm²/s to 0.6 mm²/s at 20 °C for all, up to 35 % less, which would lose less pressure.",
                ]
            )
        );
        return new(
            "gasoline",
            ElementalComposition.FromAtomRatios(SiUnits.Ratio(1.87), SiUnits.Ratio(0)),
            density,
            viscosity,
            vapor,
            SiUnits.SpecificEnergy(18_676 * 2326.0),
            [Combustibles, Energies],
            [
                "Composition of gasoline: CH1.87, an average; that of a given gasoline moves the stoichiometric ratio by 2 %.",
            ],
            [Ignites, "Harms when breathed in or swallowed; some of it causes cancer: ventilation, no skin contact."]
        )
        {
            Recipe = new GasolineRecipe(at15Celsius, reidVaporPressure),
            HeatCapacity = new(
                new TemperatureLaw(
                    "Heat capacity",
                    SiUnits.KelvinsFromCelsius(LowestGasolineViscosityCelsius),
                    density.Law.Highest,
                    new PetroleumLaws.HeatCapacity(at15),
                    [new DataSource("NBS-MP97", "specific heat of liquid petroleum products")],
                    ["Heat capacity of gasoline: from its density, by a formula for petroleum liquids, within 5 %."]
                )
            ),
            BulkModulus = BulkModuli.Gasoline(at15),
            Volatiles = [VaporPart.OfGasoline(vapor)],
        };
    }

    /// <summary>An oil for premix, from its data sheet.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="at15Celsius">Density at 15 °C, from 800 kg/m³ to 1000 kg/m³.</param>
    /// <param name="at40Celsius">Kinematic viscosity at 40 °C.</param>
    /// <param name="at100Celsius">Kinematic viscosity at 100 °C, 2 mm²/s or more.</param>
    /// <param name="source">Where the figures come from.</param>
    /// <returns>The oil: CH1.9, an estimate, without heating value and vapor pressure.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The density or a viscosity is outside its range.</exception>
    public static Fuel TwoStrokeOilOf(
        string name,
        Density at15Celsius,
        KinematicViscosity at40Celsius,
        KinematicViscosity at100Celsius,
        DataSource source
    )
    {
        LiquidDensity density = LiquidDensity.FromLubricantAt15Celsius(at15Celsius);
        var composition = ElementalComposition.FromAtomRatios(SiUnits.Ratio(1.9), SiUnits.Ratio(0));
        return new Fuel(
            name,
            composition,
            density,
            LiquidViscosity.FromOil(at40Celsius, at100Celsius, density, source),
            LiquidVaporPressure.Negligible(
                "an oil gives off next to no vapor, and its data sheet does not say how little."
            ),
            EstimatedHeatingValue(composition),
            source,
            [
                "Composition of the oil: CH1.9, a guess for mineral oil; an ester holds oxygen as well.",
                "Heating value of the oil: estimated from that composition, within a few percent.",
            ],
            [
                "Too little premix oil seizes a two-stroke; more oil makes the mixture leaner by as much of it as does not burn.",
            ]
        )
        {
            Recipe = new OilRecipe(at15Celsius, at40Celsius, at100Celsius, source),
        }.AsOil();
    }

    private static SpecificEnergy EstimatedHeatingValue(ElementalComposition composition)
    {
        var hydrogen = new Real(composition.HydrogenFraction);
        Real higher = HeatingValue.Higher(
            new Real(composition.CarbonFraction),
            hydrogen,
            new Real(composition.OxygenFraction),
            new Real(composition.NitrogenFraction),
            new Real(composition.SulfurFraction)
        );
        return SiUnits.SpecificEnergy(HeatingValue.Lower(higher, hydrogen).Value);
    }

    private static Fuel Pure(
        string name,
        PureComponent component,
        double heatingValue,
        DataSource source,
        LiquidBulkModulus bulkModulus,
        IEnumerable<string> cautions
    ) =>
        new(
            name,
            component.Composition,
            component.Density(),
            component.Viscosity(),
            component.VaporPressure(),
            SiUnits.SpecificEnergy(heatingValue),
            source,
            [],
            cautions
        )
        {
            HeatCapacity = component.HeatCapacity(),
            BulkModulus = bulkModulus,
        };
}

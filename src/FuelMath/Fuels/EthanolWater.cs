using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// Ethanol with water in it, by the alcohol tables: the volume of the mixture is less than the sum of the parts'
/// volumes.
/// </summary>
/// <remarks>
/// The contraction reaches 3.5 % of the volume near equal parts. Source: [OIML-R22] general formula, 0 °C to 40 °C,
/// which is the range here.
/// </remarks>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public sealed class EthanolWater
{
    /// <summary>The temperature of alcoholic strength, in °C. Source: [OIML-R22] definition of strength by volume.</summary>
    internal const double StrengthCelsius = 20;

    internal const double LowestCelsius = 0;
    internal const double HighestCelsius = 40;

    /// <summary>Below this mass fraction the mixture does not count as fuel.</summary>
    internal const double LeastFuelMassFraction = 0.8;

    /// <summary>
    /// Heat of evaporation of water at 25 °C, in J/kg. Source: [Cengel-Boles-2015] table A-4, from memory.
    /// </summary>
    internal const double HeatOfEvaporation = 2_441.7e3;

    private readonly double massFraction;

    private EthanolWater(double massFraction) => this.massFraction = massFraction;

    /// <summary>Mass of ethanol in a mass of the mixture.</summary>
    public Ratio MassFraction => SiUnits.Ratio(massFraction);

    /// <summary>Alcoholic strength by volume: volume of the ethanol by itself over that of the mixture, both at 20 °C.</summary>
    public Ratio Strength => SiUnits.Ratio(StrengthOf(massFraction));

    /// <summary>A mixture by its mass fraction.</summary>
    /// <param name="ethanol">Mass of ethanol in a mass of the mixture, from 0 % to 100 %.</param>
    /// <returns>The mixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The fraction is not from 0 % to 100 %.</exception>
    public static EthanolWater FromMassFraction(Ratio ethanol) =>
        new(Guard.InRange(ethanol, ethanol.InSi(), 0, 1, SiUnits.Ratio));

    /// <summary>A mixture by its alcoholic strength, as on a label.</summary>
    /// <param name="strength">Volume of ethanol over volume of mixture at 20 °C, from 0 % to 100 %.</param>
    /// <returns>The mixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The strength is not from 0 % to 100 %.</exception>
    public static EthanolWater FromStrength(Ratio strength)
    {
        double wanted = Guard.InRange(strength, strength.InSi(), 0, 1, SiUnits.Ratio);

        // Strength increases with the mass fraction, so bisection finds the only root.
        return new(Rising.Root(StrengthOf, wanted, 0, 1));
    }

    /// <summary>A mixture of two volumes that were measured separately at one temperature.</summary>
    /// <param name="ethanol">Volume of ethanol; not negative.</param>
    /// <param name="water">Volume of water; not negative.</param>
    /// <param name="measuredAt">From 0 °C to 40 °C.</param>
    /// <returns>The mixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A volume is negative, both are zero, or the temperature is not from 0 °C to 40 °C.
    /// </exception>
    public static EthanolWater FromVolumes(Volume ethanol, Volume water, Temperature measuredAt)
    {
        double celsius = Celsius(measuredAt);
        double alcohol = Guard.NotNegative(ethanol, ethanol.InSi()) * DensityOf(1, celsius);
        double rest = Guard.NotNegative(water, water.InSi()) * DensityOf(0, celsius);
        return alcohol + rest > 0
            ? new(alcohol / (alcohol + rest))
            : throw Guard.OutOfRange(ethanol, $"more than {SiUnits.Volume(0):above} where there is no water");
    }

    /// <summary>Density of the mixture.</summary>
    /// <param name="temperature">From 0 °C to 40 °C.</param>
    /// <returns>The density, in kg/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not from 0 °C to 40 °C.</exception>
    public Density DensityAt(Temperature temperature) => SiUnits.Density(DensityOf(massFraction, Celsius(temperature)));

    /// <summary>The contraction on mixing, as a fraction of the sum of the parts' volumes.</summary>
    /// <param name="temperature">From 0 °C to 40 °C.</param>
    /// <returns>The fraction; not negative.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not from 0 °C to 40 °C.</exception>
    public Ratio ContractionAt(Temperature temperature)
    {
        double celsius = Celsius(temperature);
        double apart = (massFraction / DensityOf(1, celsius)) + ((1 - massFraction) / DensityOf(0, celsius));
        return SiUnits.Ratio(1 - (1 / DensityOf(massFraction, celsius) / apart));
    }

    /// <summary>The working of the density: formula, inserted values, result, source.</summary>
    /// <param name="temperature">From 0 °C to 40 °C.</param>
    /// <returns>The working.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not from 0 °C to 40 °C.</exception>
    public Working DensityWorkingAt(Temperature temperature) =>
        AlcoholTable
            .Density(
                Traced.Input(FuelSymbols.EthanolMass, massFraction),
                Traced.Input(Symbols.Temperature, Celsius(temperature))
            )
            .ToWorking();

    /// <summary>The mixture as a fuel, for blends and tanks.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <returns>
    /// The fuel, from 0 °C to 40 °C; viscosity and vapor pressure are not known. The heat of evaporation of the water
    /// is subtracted from the lower heating value.
    /// </returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="InvalidOperationException">It holds less than 80 % of ethanol by mass.</exception>
    public Fuel ToFuel(string name)
    {
        if (!(massFraction >= LeastFuelMassFraction))
        {
            throw new RefusedOperationException(
                RefusalCode.TooLittleEthanol,
                $"Must hold {Amount.Percent(0.8):least} of ethanol or more by mass to count as a fuel; it holds {MassFraction.ToUnit(UnitsNet.Units.RatioUnit.Percent):value}."
            );
        }

        ElementalComposition dry = StandardFuels.Ethanol.Composition;
        double water = 1 - massFraction;
        double hydrogen = 2 * ElementalComposition.HydrogenMass;
        double inWater = hydrogen / (hydrogen + ElementalComposition.OxygenMass);
        return new(
            name,
            new ElementalComposition(
                massFraction * dry.CarbonFraction,
                (massFraction * dry.HydrogenFraction) + (water * inWater),
                (massFraction * dry.OxygenFraction) + (water * (1 - inWater)),
                0,
                0
            ),
            new LiquidDensity(
                new TemperatureLaw(
                    "Density",
                    SiUnits.KelvinsFromCelsius(LowestCelsius),
                    SiUnits.KelvinsFromCelsius(HighestCelsius),
                    new AlcoholTableLaw(massFraction),
                    [new DataSource("OIML-R22", "general formula")],
                    []
                )
            ),
            LiquidViscosity.Unknown("ethanol with water is thicker than either, and no rule with a source is at hand."),
            LiquidVaporPressure.Unknown("that of ethanol with water does not follow from the parts. Measure it."),
            SiUnits.SpecificEnergy((massFraction * StandardFuels.Ethanol.HeatSi) - (water * HeatOfEvaporation)),
            [.. StandardFuels.Ethanol.OwnSources, new DataSource("Cengel-Boles-2015", "table A-4")],
            [],
            [.. StandardFuels.Ethanol.Cautions, "Water in ethanol lets a blend with gasoline fall apart in the cold."]
        );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Strength} ethanol by volume");

    private static double Celsius(
        Temperature temperature,
        [CallerArgumentExpression(nameof(temperature))] string paramName = ""
    ) =>
        SiUnits.CelsiusFromKelvins(
            Guard.InRange(
                temperature,
                temperature.InSi(),
                SiUnits.KelvinsFromCelsius(LowestCelsius),
                SiUnits.KelvinsFromCelsius(HighestCelsius),
                SiUnits.Temperature,
                paramName
            )
        );

    private static double DensityOf(double massFraction, double celsius) =>
        AlcoholTable.Density(new Real(massFraction), new Real(celsius)).Value;

    private static double StrengthOf(double massFraction) =>
        massFraction * DensityOf(massFraction, StrengthCelsius) / DensityOf(1, StrengthCelsius);
}

using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

/// <summary>A fluid with which benches test injectors, described by the ranges of its standard.</summary>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public sealed class CalibrationFluid
{
    private const string Mist =
        "A test bench sprays it as a mist that ignites far below its flash point and harms when breathed in: closed bench, "
        + "extraction, no sparks.";

    private readonly double leastDensity;
    private readonly double mostDensity;
    private readonly double leastViscosity;
    private readonly double mostViscosity;
    private readonly double viscosityKelvins;

    private CalibrationFluid(
        string name,
        (double Least, double Most) density,
        (double Least, double Most) viscosity,
        double viscosityCelsius,
        DataSource source
    )
    {
        Name = name;
        (leastDensity, mostDensity) = density;
        (leastViscosity, mostViscosity) = viscosity;
        viscosityKelvins = SiUnits.KelvinsFromCelsius(viscosityCelsius);
        Source = source;
    }

    /// <summary>
    /// The fluid of benches for diesel injection: 820 kg/m³ to 830 kg/m³ at 15 °C, 2.45 mm²/s to 2.75 mm²/s at 40 °C.
    /// Source: [ISO-4113] table of properties.
    /// </summary>
    public static CalibrationFluid DieselBench { get; } =
        new(
            "calibration fluid to ISO 4113",
            (820, 830),
            (2.45e-6, 2.75e-6),
            40,
            new DataSource("ISO-4113", "table of properties")
        );

    /// <summary>
    /// Mineral spirits, used on benches in place of gasoline: 750 kg/m³ to 800 kg/m³ at 15 °C, 0.9 mm²/s to 1.3 mm²/s
    /// at 25 °C. Source: [ASTM-D235] typical values, from memory.
    /// </summary>
    public static CalibrationFluid MineralSpirits { get; } =
        new(
            "mineral spirits to ASTM D235",
            (750, 800),
            (0.9e-6, 1.3e-6),
            25,
            new DataSource("ASTM-D235", "typical values, from memory")
        );

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Where the ranges come from.</summary>
    public DataSource Source { get; }

    /// <summary>The lowest density at 15 °C.</summary>
    public Density LowestDensity => SiUnits.Density(leastDensity);

    /// <summary>The highest density at 15 °C.</summary>
    public Density HighestDensity => SiUnits.Density(mostDensity);

    /// <summary>The lowest kinematic viscosity.</summary>
    public KinematicViscosity LowestViscosity => SiUnits.KinematicViscosity(leastViscosity);

    /// <summary>The highest kinematic viscosity.</summary>
    public KinematicViscosity HighestViscosity => SiUnits.KinematicViscosity(mostViscosity);

    /// <summary>The temperature of the two viscosities.</summary>
    public Temperature ViscosityTemperature => SiUnits.Temperature(viscosityKelvins);

    /// <summary>The fluid of one drum by its certificate, checked against the standard.</summary>
    /// <param name="at15Celsius">Its density at 15 °C, in the range of the standard.</param>
    /// <param name="viscosity">
    /// Its viscosity against temperature, in the range of the standard at <see cref="ViscosityTemperature"/>.
    /// </param>
    /// <param name="certificate">Where the two come from.</param>
    /// <returns>The fluid; its composition is a guess and its heating value unknown.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Density or viscosity is outside the range of the standard.</exception>
    /// <exception cref="OutsideTableException">
    /// The viscosity is not known at <see cref="ViscosityTemperature"/>.
    /// </exception>
    /// <exception cref="UnknownPropertyException">The viscosity is not known at all.</exception>
    public Fuel ToFuel(Density at15Celsius, LiquidViscosity viscosity, DataSource certificate)
    {
        ArgumentNullException.ThrowIfNull(viscosity);
        ArgumentNullException.ThrowIfNull(certificate);
        Guard.InRange(at15Celsius, at15Celsius.InSi(), leastDensity, mostDensity, SiUnits.Density, part: Name);
        LiquidDensity density = LiquidDensity.FromProductAt15Celsius(at15Celsius);
        double kinematic = viscosity.Law.At(ViscosityTemperature) / density.Law.At(ViscosityTemperature);
        double slack = Guard.EdgeTolerance * mostViscosity;
        if (!(kinematic >= leastViscosity - slack && kinematic <= mostViscosity + slack))
        {
            KinematicViscosityUnit unit = KinematicViscosityUnit.Centistokes;
            throw Guard.Outside(
                viscosity,
                RefusalCode.OutOfRange,
                $"Must be from {LowestViscosity.ToUnit(unit):least} to {HighestViscosity.ToUnit(unit):most} at {ViscosityTemperature.ToUnit(TemperatureUnit.DegreeCelsius):temperature}; it was {SiUnits.KinematicViscosity(Math.Round(kinematic, 12)).ToUnit(unit):value}.",
                part: Name
            );
        }

        return new(
            Name,
            ElementalComposition.FromAtomRatios(SiUnits.Ratio(1.9), SiUnits.Ratio(0)),
            density,
            viscosity,
            LiquidVaporPressure.Negligible(
                "a bench fluid gives off little vapor at room temperature, how little is not said."
            ),
            null,
            [Source, certificate],
            ["Composition of the fluid: CH1.9, a guess; no engine burns it."],
            [Mist]
        );
    }

    /// <inheritdoc />
    public override string ToString() => Name;
}

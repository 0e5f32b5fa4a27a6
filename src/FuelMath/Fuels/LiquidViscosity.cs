using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Dynamic viscosity of a liquid against temperature, inside a stated range and refused outside it.</summary>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public sealed class LiquidViscosity : LiquidProperty
{
    /// <summary>
    /// The lowest viscosity for the equation for oils, in m²/s: below it, terms that are left out matter.
    /// </summary>
    internal const double LeastOil = 2e-6;

    internal const double LowestOilCelsius = -10;
    internal const double HighestOilCelsius = 90;

    private const string Called = "The viscosity";

    internal LiquidViscosity(TemperatureLaw law)
        : base(Called, law) { }

    private LiquidViscosity(string reason)
        : base(Called, reason) { }

    /// <summary>The points it goes through; null when it was not made from points.</summary>
    internal GivenPoints<DynamicViscosity>? Points { get; init; }

    /// <summary>A viscosity that is not known, and why.</summary>
    /// <param name="reason">A sentence; not blank.</param>
    /// <returns>A viscosity that refuses every temperature with the reason.</returns>
    /// <exception cref="ArgumentException">The reason is blank.</exception>
    public static LiquidViscosity Unknown(string reason) => new(Guard.Name(reason));

    /// <summary>
    /// Viscosity through measured points: a monotone curve of ln mu over 1/T, which two points make a straight line.
    /// </summary>
    /// <param name="temperatures">Two or more, rising.</param>
    /// <param name="viscosities">One for each temperature, falling.</param>
    /// <param name="source">Where they come from.</param>
    /// <returns>The viscosity against temperature, between the first and the last point.</returns>
    /// <exception cref="ArgumentException">The points do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A viscosity is not greater than zero.</exception>
    public static LiquidViscosity FromPoints(
        IEnumerable<Temperature> temperatures,
        IEnumerable<DynamicViscosity> viscosities,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(temperatures);
        ArgumentNullException.ThrowIfNull(viscosities);
        ArgumentNullException.ThrowIfNull(source);
        GivenPoints<DynamicViscosity> points = new(temperatures, viscosities, source);
        (double[] kelvins, double[] values) = PropertyPoints.Read(
            "A viscosity against temperature",
            points.Temperatures,
            points.Values,
            v => Guard.Positive(v, v.InSi(), nameof(viscosities)),
            nameof(viscosities)
        );
        Guard.StrictlyFalling(values, "Viscosity", nameof(viscosities));
        return new(TemperatureLaw.Through("Viscosity", kelvins, values, true, source)) { Points = points };
    }

    /// <summary>
    /// Viscosity of an oil from the two kinematic viscosities on its data sheet, from -10 °C to 90 °C; below 40 °C the
    /// line is extrapolated and the result is labeled as an estimate. Source: [ASTM-D341] equation 1.
    /// </summary>
    /// <param name="at40Celsius">Kinematic viscosity at 40 °C; greater than that at 100 °C.</param>
    /// <param name="at100Celsius">Kinematic viscosity at 100 °C, 2 mm²/s or more.</param>
    /// <param name="density">The oil's density.</param>
    /// <param name="source">Where the two viscosities come from.</param>
    /// <returns>The dynamic viscosity against temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A viscosity is too low, or they are the wrong way round.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static LiquidViscosity FromOil(
        KinematicViscosity at40Celsius,
        KinematicViscosity at100Celsius,
        LiquidDensity density,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(density);
        ArgumentNullException.ThrowIfNull(source);
        double hot = at100Celsius.InSi();
        if (!(hot >= LeastOil && double.IsFinite(hot)))
        {
            throw Guard.OutOfRange(at100Celsius, $"at least {SiUnits.KinematicViscosity(LeastOil):least}");
        }

        double cold = at40Celsius.InSi();
        if (!(cold > hot && double.IsFinite(cold)))
        {
            throw Guard.OutOfRange(at40Celsius, $"above that at 100 °C, {at100Celsius:above}");
        }

        double first = SiUnits.KelvinsFromCelsius(40);
        double second = SiUnits.KelvinsFromCelsius(100);
        return new(
            new TemperatureLaw(
                "Viscosity",
                Math.Max(SiUnits.KelvinsFromCelsius(LowestOilCelsius), density.Law.Lowest),
                Math.Min(SiUnits.KelvinsFromCelsius(HighestOilCelsius), density.Law.Highest),
                new PetroleumLaws.OilViscosity(first, cold, second, hot, density.Law),
                [source, new DataSource("ASTM-D341", "equation 1")],
                ["Viscosity of the oil below 40 °C: a line through its viscosities at 40 °C and 100 °C, carried on."]
            )
        );
    }

    /// <summary>The viscosity at a temperature.</summary>
    /// <param name="temperature">Inside the range.</param>
    /// <returns>The dynamic viscosity, in Pa s.</returns>
    /// <exception cref="OutsideTableException">The temperature is outside the range.</exception>
    /// <exception cref="UnknownPropertyException">The viscosity is not known.</exception>
    public DynamicViscosity At(Temperature temperature) => SiUnits.DynamicViscosity(Law.At(temperature));
}

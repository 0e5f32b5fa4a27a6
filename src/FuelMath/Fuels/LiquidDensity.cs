using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Density of a liquid against temperature, inside a stated range and refused outside it.</summary>
/// <remarks>
/// At atmospheric pressure: at 5 bar a fuel is denser by less than 0.1 % (bulk modulus about 1 GPa); the difference is
/// neglected.
/// </remarks>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public sealed class LiquidDensity : LiquidProperty
{
    /// <summary>Lowest temperature of the correction for petroleum liquids, in °C.</summary>
    internal const double LowestPetroleumCelsius = -18;

    /// <summary>Highest temperature of the correction for petroleum liquids, in °C.</summary>
    internal const double HighestPetroleumCelsius = 90;

    internal const double LeastGasoline = 653;
    internal const double MostGasoline = 770;
    internal const double MostProduct = 1075;
    internal const double LeastLubricant = 800;
    internal const double MostLubricant = 1000;

    private const string Called = "The density";

    internal LiquidDensity(TemperatureLaw law)
        : base(Called, law) { }

    /// <summary>The points it goes through; null when it was not made from points.</summary>
    internal GivenPoints<Density>? Points { get; init; }

    /// <summary>
    /// Density of a gasoline from that at 15 °C, by the volume correction for petroleum products, from -18 °C to 90 °C.
    /// Source: [ASTM-D1250] table 54B, gasoline band.
    /// </summary>
    /// <param name="at15Celsius">Density at 15 °C, from 653 kg/m³ to 770 kg/m³.</param>
    /// <returns>The density against temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is outside the gasoline band.</exception>
    public static LiquidDensity FromGasolineAt15Celsius(Density at15Celsius)
    {
        double density = Guard.InRange(at15Celsius, at15Celsius.InSi(), LeastGasoline, MostGasoline, SiUnits.Density);
        return Petroleum("table 54B", new PetroleumLaws.Gasoline(density));
    }

    /// <summary>
    /// Density of any petroleum product from that at 15 °C, by the volume correction for petroleum products, from -18 °C
    /// to 90 °C: gasolines, jet fuels, solvents, diesel fuels. Source: [ASTM-D1250] table 54B, four bands.
    /// </summary>
    /// <param name="at15Celsius">Density at 15 °C, from 653 kg/m³ to 1075 kg/m³.</param>
    /// <returns>The density against temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is outside the bands.</exception>
    public static LiquidDensity FromProductAt15Celsius(Density at15Celsius) =>
        Petroleum(
            "table 54B",
            new PetroleumLaws.Product(
                Guard.InRange(at15Celsius, at15Celsius.InSi(), LeastGasoline, MostProduct, SiUnits.Density)
            )
        );

    /// <summary>
    /// Density of a lubricating oil from that at 15 °C, by the volume correction for petroleum products, from -18 °C to
    /// 90 °C. Source: [ASTM-D1250] table 54D.
    /// </summary>
    /// <param name="at15Celsius">Density at 15 °C, from 800 kg/m³ to 1000 kg/m³.</param>
    /// <returns>The density against temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is outside the range of oils.</exception>
    public static LiquidDensity FromLubricantAt15Celsius(Density at15Celsius)
    {
        double density = Guard.InRange(at15Celsius, at15Celsius.InSi(), LeastLubricant, MostLubricant, SiUnits.Density);
        return Petroleum("table 54D", new PetroleumLaws.Lubricant(density));
    }

    /// <summary>Density through measured points: a monotone curve that falls with temperature.</summary>
    /// <param name="temperatures">Two or more, rising.</param>
    /// <param name="densities">One for each temperature, falling.</param>
    /// <param name="source">Where they come from.</param>
    /// <returns>The density against temperature, between the first and the last point.</returns>
    /// <exception cref="ArgumentException">The points do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A density is not greater than zero.</exception>
    public static LiquidDensity FromPoints(
        IEnumerable<Temperature> temperatures,
        IEnumerable<Density> densities,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(temperatures);
        ArgumentNullException.ThrowIfNull(densities);
        ArgumentNullException.ThrowIfNull(source);
        GivenPoints<Density> points = new(temperatures, densities, source);
        (double[] kelvins, double[] values) = PropertyPoints.Read(
            "A density against temperature",
            points.Temperatures,
            points.Values,
            d => Guard.Positive(d, d.InSi(), nameof(densities)),
            nameof(densities)
        );
        Guard.StrictlyFalling(values, "Density", nameof(densities));
        return new(TemperatureLaw.Through("Density", kelvins, values, false, source)) { Points = points };
    }

    /// <summary>The density at a temperature.</summary>
    /// <param name="temperature">Inside the range.</param>
    /// <returns>The density, in kg/m³.</returns>
    /// <exception cref="OutsideTableException">The temperature is outside the range.</exception>
    public Density At(Temperature temperature) => SiUnits.Density(Law.At(temperature));

    private static LiquidDensity Petroleum(string table, PropertyLaw law) =>
        new(
            new TemperatureLaw(
                "Density",
                SiUnits.KelvinsFromCelsius(LowestPetroleumCelsius),
                SiUnits.KelvinsFromCelsius(HighestPetroleumCelsius),
                law,
                [new DataSource("ASTM-D1250", table)],
                []
            )
        );
}

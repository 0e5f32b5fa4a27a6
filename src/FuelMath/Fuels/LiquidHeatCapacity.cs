using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Heat capacity of a liquid against temperature, inside a stated range, or the reason why it is not known.</summary>
/// <remarks>Isobaric, by mass: the heat that warms a kilogram by a kelvin at constant pressure.</remarks>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public sealed class LiquidHeatCapacity : LiquidProperty
{
    private const string Called = "The heat capacity";

    internal LiquidHeatCapacity(TemperatureLaw law)
        : base(Called, law) { }

    private LiquidHeatCapacity(string reason)
        : base(Called, reason) { }

    /// <summary>A heat capacity that is not known, and why.</summary>
    /// <param name="reason">A sentence; not blank.</param>
    /// <returns>A heat capacity that refuses every temperature with the reason.</returns>
    /// <exception cref="ArgumentException">The reason is blank.</exception>
    public static LiquidHeatCapacity Unknown(string reason) => new(Guard.Name(reason));

    /// <summary>A heat capacity through measured points: a monotone curve.</summary>
    /// <param name="temperatures">Two or more, rising.</param>
    /// <param name="heatCapacities">One for each temperature, each greater than zero.</param>
    /// <param name="source">Where they come from.</param>
    /// <returns>The heat capacity against temperature, between the first and the last point.</returns>
    /// <exception cref="ArgumentException">The points do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not greater than zero.</exception>
    public static LiquidHeatCapacity FromPoints(
        IEnumerable<Temperature> temperatures,
        IEnumerable<SpecificEntropy> heatCapacities,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(source);
        (double[] kelvins, double[] values) = PropertyPoints.Read(
            "A heat capacity against temperature",
            temperatures,
            heatCapacities,
            v => Guard.Positive(v, v.InSi(), nameof(heatCapacities)),
            nameof(heatCapacities)
        );
        return new(TemperatureLaw.Through("Heat capacity", kelvins, values, false, source));
    }

    /// <summary>The heat capacity at a temperature.</summary>
    /// <param name="temperature">Inside the range.</param>
    /// <returns>The isobaric heat capacity, in J/(kg K).</returns>
    /// <exception cref="OutsideTableException">The temperature is outside the range.</exception>
    /// <exception cref="UnknownPropertyException">It is not known.</exception>
    public SpecificEntropy At(Temperature temperature) => SiUnits.SpecificEntropy(Law.At(temperature));
}

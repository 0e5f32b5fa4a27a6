using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Heat capacity of a liquid against temperature, inside a stated range, or the reason why it is not known.</summary>
/// <remarks>Isobaric, by mass: the heat that warms a kilogram by a kelvin at constant pressure.</remarks>
public sealed class LiquidHeatCapacity
{
    private readonly TemperatureLaw? law;

    internal LiquidHeatCapacity(TemperatureLaw law)
    {
        this.law = law;
        ReasonUnknown = "";
    }

    private LiquidHeatCapacity(string reason) => ReasonUnknown = reason;

    /// <summary>Whether it is known.</summary>
    public bool IsKnown => law is not null;

    /// <summary>Why it is not known, a sentence; empty when it is.</summary>
    public string ReasonUnknown { get; }

    /// <summary>Where the figures come from.</summary>
    public ImmutableArray<DataSource> Sources => law is null ? [] : [.. law.Sources];

    /// <summary>Sentences that say what about them is an estimate; empty when nothing is.</summary>
    public ImmutableArray<string> Estimates => law is null ? [] : [.. law.Estimates];

    /// <summary>The lowest temperature inside the range.</summary>
    /// <exception cref="UnknownPropertyException">It is not known.</exception>
    public Temperature LowestTemperature => SiUnits.Temperature(Known.Lowest);

    /// <summary>The highest temperature inside the range.</summary>
    /// <exception cref="UnknownPropertyException">It is not known.</exception>
    public Temperature HighestTemperature => SiUnits.Temperature(Known.Highest);

    internal TemperatureLaw Known => law ?? throw new UnknownPropertyException("The heat capacity", ReasonUnknown);

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
    public SpecificEntropy At(Temperature temperature) => SiUnits.SpecificEntropy(Known.At(temperature));

    /// <summary>The working of the heat capacity at a temperature: formula, inserted values, result, source.</summary>
    /// <param name="temperature">Inside the range.</param>
    /// <returns>The working.</returns>
    /// <exception cref="OutsideTableException">The temperature is outside the range.</exception>
    /// <exception cref="UnknownPropertyException">It is not known.</exception>
    public Working WorkingAt(Temperature temperature) => Known.WorkingAt(temperature);
}

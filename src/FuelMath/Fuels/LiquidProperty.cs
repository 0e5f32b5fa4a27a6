using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// A property of a liquid against temperature, inside a stated range, or the reason why it is not known. Outside its range, and
/// where it is not known, it refuses: nothing is extrapolated.
/// </summary>
/// <remarks>
/// The kinds are fixed: <see cref="LiquidDensity"/>, <see cref="LiquidViscosity"/>, <see cref="LiquidVaporPressure"/>,
/// <see cref="LiquidHeatCapacity"/> and <see cref="LiquidBulkModulus"/>, each of which gives its own quantity.
/// </remarks>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public abstract class LiquidProperty
{
    private readonly string name;

    // Set in the copy that belongs to a fuel, and never after.
    private TemperatureLaw? law;
    private string? fuel;

    /// <summary>A property that is known.</summary>
    /// <param name="name">What it is called, as a sentence about it starts.</param>
    /// <param name="law">What it follows.</param>
    internal LiquidProperty(string name, TemperatureLaw law) =>
        (this.name, this.law, ReasonUnknown) = (name, law, null);

    /// <summary>A property that is not known.</summary>
    /// <param name="name">What it is called, as a sentence about it starts.</param>
    /// <param name="reason">Why it is not known, a sentence.</param>
    internal LiquidProperty(string name, string reason) => (this.name, ReasonUnknown) = (name, reason);

    /// <summary>Whether it is known at all.</summary>
    public bool IsKnown => law is not null;

    /// <summary>Why it is not known, a sentence; null where it is known.</summary>
    public string? ReasonUnknown { get; }

    /// <summary>Where the figures come from.</summary>
    public ImmutableArray<DataSource> Sources => law is null ? [] : [.. law.Sources];

    /// <summary>What about them is an estimate, in sentences; empty when nothing is.</summary>
    public ImmutableArray<string> Estimates => law is null ? [] : [.. law.Estimates];

    /// <summary>The lowest temperature inside the range; null where the property is not known.</summary>
    public Temperature? LowestTemperature => law is null ? null : SiUnits.Temperature(law.Lowest);

    /// <summary>The highest temperature inside the range; null where the property is not known.</summary>
    public Temperature? HighestTemperature => law is null ? null : SiUnits.Temperature(law.Highest);

    internal TemperatureLaw Law =>
        law
        ?? throw new UnknownPropertyException(
            fuel is null ? name : (RefusalText)$"{name:property} of fuel '{fuel:part}'",
            ReasonUnknown is null ? "" : (RefusalText)$"{ReasonUnknown:explanation}",
            GetType().Name["Liquid".Length..]
        );

    /// <summary>The same property of a fuel, which its refusals name.</summary>
    internal static T Of<T>(T property, string fuel)
        where T : LiquidProperty
    {
        var owned = (T)property.MemberwiseClone();
        (owned.law, owned.fuel) = (property.law?.Of(fuel), fuel);
        return owned;
    }

    /// <summary>
    /// How far the figure at a temperature may be off, as a share of it, where it is an estimate of known size; zero where it is
    /// published or measured. A bulk modulus may be off either way, a vapor pressure may lie above what is told.
    /// </summary>
    /// <param name="temperature">Inside the range.</param>
    /// <returns>The share, zero or more.</returns>
    /// <exception cref="OutsideTableException">The temperature is outside the range.</exception>
    /// <exception cref="UnknownPropertyException">It is not known.</exception>
    public Ratio ErrorAt(Temperature temperature) => SiUnits.Ratio(Law.ErrorAt(temperature));

    /// <summary>How the figure at a temperature was made: formula, numbers put in, result, source.</summary>
    /// <param name="temperature">Inside the range.</param>
    /// <returns>The working.</returns>
    /// <exception cref="OutsideTableException">The temperature is outside the range.</exception>
    /// <exception cref="UnknownPropertyException">It is not known.</exception>
    public Working WorkingAt(Temperature temperature) => Law.WorkingAt(temperature);

    /// <inheritdoc />
    public sealed override string ToString() =>
        ReasonUnknown ?? LogText.Of($"{name} from {LowestTemperature!.Value} to {HighestTemperature!.Value}");
}

using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A length of copper wire at a temperature, one way only.</summary>
/// <remarks>Annealed copper, from -40 °C to 150 °C.</remarks>
/// <seealso href="../guide/wiring.html">Wiring</seealso>
public sealed class Conductor
{
    /// <summary>Lowest temperature, in °C.</summary>
    internal const double LowestCelsius = -40;

    /// <summary>Highest temperature, in °C.</summary>
    internal const double HighestCelsius = 150;

    /// <summary>Describes a single wire.</summary>
    /// <param name="size">Its size.</param>
    /// <param name="length">Its length, one way; greater than zero.</param>
    /// <param name="temperature">Temperature of the copper, from -40 °C to 150 °C.</param>
    /// <exception cref="ArgumentNullException"><paramref name="size"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length or the temperature is outside its range.</exception>
    public Conductor(WireSize size, Length length, Temperature temperature)
        : this(1, size, length, temperature) { }

    private Conductor(int wires, WireSize size, Length length, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(size);
        double meters = Guard.Positive(length, length.InSi());
        double kelvins = Guard.InRange(
            temperature,
            temperature.InSi(),
            SiUnits.KelvinsFromCelsius(LowestCelsius),
            SiUnits.KelvinsFromCelsius(HighestCelsius),
            SiUnits.Temperature
        );
        Wires = wires;
        Size = size;
        Length = length;
        Temperature = temperature;
        Si = Formulas
            .WireResistance.Resistance(
                new Real(WireResistance.CopperResistivity),
                new Real(WireResistance.CopperCoefficient),
                new Real(meters),
                new Real(size.Si * wires),
                new Real(SiUnits.CelsiusFromKelvins(kelvins))
            )
            .Value;
    }

    /// <summary>Wires in parallel, which share the current.</summary>
    public int Wires { get; }

    /// <summary>Size of each.</summary>
    public WireSize Size { get; }

    /// <summary>Length, one way.</summary>
    public Length Length { get; }

    /// <summary>Temperature of the copper.</summary>
    public Temperature Temperature { get; }

    /// <summary>Resistance from end to end, in Ω. Source: [NBS-Handbook-100] copper at 20 °C and its coefficient.</summary>
    public ElectricResistance Resistance => SiUnits.ElectricResistance(Si);

    internal double Si { get; }

    /// <summary>The working of its resistance.</summary>
    /// <returns>The working.</returns>
    public Working ResistanceWorking() => TracedResistance().ToWorking();

    internal Traced TracedResistance() =>
        WireResistance.Resistance(
            Traced.Input(Symbols.Resistivity, WireResistance.CopperResistivity),
            Traced.Input(Symbols.ResistanceCoefficient, WireResistance.CopperCoefficient),
            ReaderUnits.Input(Symbols.Length, Length, Length.InSi()),
            Traced.Input(Symbols.Area, Size.Si * Wires),
            Traced.Input(Symbols.Temperature, SiUnits.CelsiusFromKelvins(Temperature.InSi()))
        );

    /// <summary>Equal wires in parallel.</summary>
    /// <param name="wires">Number of wires, from 1 to 100.</param>
    /// <param name="size">Size of each.</param>
    /// <param name="length">Length, one way; greater than zero.</param>
    /// <param name="temperature">Temperature of the copper, from -40 °C to 150 °C.</param>
    /// <returns>The combined conductor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length or the temperature is outside its range.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Conductor FromParallel(int wires, WireSize size, Length length, Temperature temperature) =>
        new(Guard.InRange(wires, 1, 100), size, length, temperature);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Length} of {Size}: {Resistance}");
}

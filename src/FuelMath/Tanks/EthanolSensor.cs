using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A sensor whose frequency depends on the ethanol content of the fuel that flows through it.</summary>
/// <remarks>
/// It measures an electric property: water and methanol count as more than their volume of ethanol. Stagnant fuel and
/// air bubbles cause errors.
/// </remarks>
/// <seealso href="../guide/tanks.html">Tanks</seealso>
public sealed partial class EthanolSensor
{
    private readonly double atNone;
    private readonly double atAll;
    private readonly double uncertainty;

    /// <summary>Creates a sensor with a linear signal.</summary>
    /// <param name="atNone">Its frequency without ethanol; greater than zero.</param>
    /// <param name="atAll">Its frequency in ethanol; greater than zero and not that without.</param>
    /// <param name="standardUncertainty">Standard uncertainty of the content, above 0 % and up to 50 %.</param>
    /// <param name="source">Where the figures come from.</param>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A frequency or the uncertainty is outside its range, or both frequencies are equal.
    /// </exception>
    public EthanolSensor(Frequency atNone, Frequency atAll, Ratio standardUncertainty, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        this.atNone = Guard.Positive(atNone, atNone.InSi());
        this.atAll = Guard.Positive(atAll, atAll.InSi());
        if (this.atAll == this.atNone)
        {
            throw Guard.OutOfRange(atAll, $"another frequency than without ethanol, {atNone:other}");
        }

        uncertainty = Guard.PositiveUpTo(standardUncertainty, standardUncertainty.InSi(), 0.5, SiUnits.Ratio);
        Source = source;
    }

    /// <summary>Where the figures come from.</summary>
    public DataSource Source { get; }

    /// <summary>The usual line: 50 Hz without ethanol, 150 Hz in ethanol. Source: [Common-practice] content sensors.</summary>
    /// <param name="standardUncertainty">Standard uncertainty of the content, above 0 % and up to 50 %.</param>
    /// <returns>The sensor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is outside its range.</exception>
    public static EthanolSensor FromUsualScale(Ratio standardUncertainty) =>
        new(
            SiUnits.Frequency(50),
            SiUnits.Frequency(150),
            standardUncertainty,
            new DataSource("Common-practice", "content sensors, 50 Hz to 150 Hz")
        );

    /// <summary>The content at a frequency.</summary>
    /// <param name="frequency">Between the two of the line: outside them a sensor reports a fault.</param>
    /// <returns>The content with its uncertainty.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not between the two.</exception>
    public Measurement Read(Frequency frequency)
    {
        double signal = Guard.InRange(
            frequency,
            frequency.InSi(),
            Math.Min(atNone, atAll),
            Math.Max(atNone, atAll),
            SiUnits.Frequency
        );
        return new(
            TankBalance.ContentFromSignal(new Real(signal), new Real(atNone), new Real(atAll)).Value,
            uncertainty,
            ["Ethanol content: water and methanol count as ethanol, and more than by their volume."],
            () =>
                TankBalance.ContentFromSignal(
                    Traced.Input(TankSymbols.Signal, signal),
                    Traced.Input(TankSymbols.SignalAtNone, atNone),
                    Traced.Input(TankSymbols.SignalAtAll, atAll)
                )
        );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"[{Source.Key}]");
}

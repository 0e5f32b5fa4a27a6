using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The suction side of a pump: the margin above boiling, and the suction head that the pump requires.
/// </summary>
/// <remarks>
/// <para>
/// The loss of a filter ahead of the pump reduces this margin and grows with dirt; behind the pump it only reduces the
/// pressure delivered. <see cref="WithLoss"/> adds such a loss.
/// </para>
/// <para>
/// Caution: when fuel boils at the inlet, a pump loses flow and runs dry; its fuel cools and lubricates it.
/// </para>
/// </remarks>
/// <seealso href="../guide/pumps.html">Pumps</seealso>
public sealed class PumpInlet
{
    /// <summary>Describes a suction side.</summary>
    /// <param name="fuel">The fuel, whose vapor pressure is known.</param>
    /// <param name="temperature">Its temperature.</param>
    /// <param name="surface">Absolute pressure on the fuel in the tank.</param>
    /// <param name="height">Height of the fuel above the pump inlet; negative below it.</param>
    /// <param name="suctionLoss">Pressure lost between tank and pump; not negative.</param>
    /// <exception cref="ArgumentNullException"><paramref name="fuel"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="height"/> is not finite, or <paramref name="suctionLoss"/> is negative.
    /// </exception>
    /// <exception cref="UnknownPropertyException">A property of the fuel is not known; the message says which.</exception>
    public PumpInlet(Fuel fuel, Temperature temperature, AbsolutePressure surface, Length height, Pressure suctionLoss)
    {
        ArgumentNullException.ThrowIfNull(fuel);
        Guard.NotNegative(suctionLoss, suctionLoss.InSi());
        (Fuel, Temperature, Surface, Height, SuctionLoss) = (fuel, temperature, surface, height, suctionLoss);
        Margin = VaporMargin.AtPumpInlet(fuel, temperature, surface, height, suctionLoss);
    }

    /// <summary>The fuel.</summary>
    public Fuel Fuel { get; }

    /// <summary>Its temperature.</summary>
    public Temperature Temperature { get; }

    /// <summary>Absolute pressure on the fuel in the tank.</summary>
    public AbsolutePressure Surface { get; }

    /// <summary>Height of the fuel above the pump inlet.</summary>
    public Length Height { get; }

    /// <summary>Pressure lost between tank and pump.</summary>
    public Pressure SuctionLoss { get; }

    /// <summary>
    /// The margin above boiling at the inlet, as a pressure and as net positive suction head available.
    /// </summary>
    public VaporMargin Margin { get; }

    /// <summary>The same suction side with one more part in it.</summary>
    /// <param name="addedLoss">The pressure loss of that part; not negative.</param>
    /// <returns>The suction side.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The loss is negative or not finite.</exception>
    public PumpInlet WithLoss(Pressure addedLoss) =>
        new(
            Fuel,
            Temperature,
            Surface,
            Height,
            SiUnits.Pressure(SuctionLoss.InSi() + Guard.NotNegative(addedLoss, addedLoss.InSi()))
        );

    /// <summary>Compares the head available with that required by the pump.</summary>
    /// <param name="headRequired">Net positive suction head required by the pump at its flow; not negative.</param>
    /// <param name="source">Where that comes from: the pump's maker or a test.</param>
    /// <returns>One finding when it is not met, else none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The head is negative or not finite.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public ImmutableArray<Finding> Check(Length headRequired, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        double required = Guard.NotNegative(headRequired, headRequired.InSi());
        double available = Margin.NetPositiveSuctionHead.InSi();
        return available >= required
            ? []
            :
            [
                new Finding(
                    FindingCode.SuctionHeadLow,
                    Margin.Boils ? Severity.Danger : Severity.Warning,
                    "pump inlet",
                    Margin.Boils
                        ? "The fuel boils at the pump's inlet"
                        : "The pump asks for more suction head than there is",
                    Guard.Show(SiUnits.Length(available), headRequired.Unit),
                    Guard.Show(headRequired, headRequired.Unit),
                    source,
                    "Flood the inlet, shorten and widen the suction side, move the fine filter behind the pump, or cool the fuel."
                ).WithQuantities(SiUnits.Length(available), headRequired),
            ];
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Margin}");
}

using UnitsNet;

namespace FuelMath;

/// <summary>The effect of a hot coil on its current, and an estimate of the effect on the dead time.</summary>
/// <remarks>
/// <para>
/// The resistance rises by copper's coefficient, and the current falls. How much later the needle opens depends on the
/// coil's inductance, which is rarely known. The estimate treats the hot coil as a cold one at the lower voltage that
/// gives the same final current. For a first-order circuit of resistance and inductance this overestimates by at most
/// the ratio of the resistances: the true change lies between zero and this one.
/// </para>
/// <para>
/// Source: [NBS-Handbook-100] table 1 for the resistance; the estimate is our own, [Definition] of a first-order
/// circuit.
/// </para>
/// </remarks>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
public sealed class CoilHeating
{
    private readonly double cold;
    private readonly double hot;

    /// <summary>Creates the comparison of a coil at two temperatures.</summary>
    /// <param name="coil">The coil.</param>
    /// <param name="dataAt">Temperature of the coil when its dead time was taken; -50 °C to 200 °C.</param>
    /// <param name="now">Its temperature now; -50 °C to 200 °C.</param>
    /// <param name="driver">The driver.</param>
    /// <exception cref="ArgumentNullException">Coil or driver is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public CoilHeating(CoilResistance coil, Temperature dataAt, Temperature now, InjectorDriver driver)
    {
        ArgumentNullException.ThrowIfNull(coil);
        ArgumentNullException.ThrowIfNull(driver);
        cold = coil.SiAt(CoilResistance.Celsius(dataAt));
        hot = coil.SiAt(CoilResistance.Celsius(now));
        (Coil, DataAt, Now, Driver) = (coil, dataAt, now, driver);
    }

    /// <summary>The coil.</summary>
    public CoilResistance Coil { get; }

    /// <summary>Temperature of the coil when its dead time was taken.</summary>
    public Temperature DataAt { get; }

    /// <summary>Its temperature now.</summary>
    public Temperature Now { get; }

    /// <summary>The driver.</summary>
    public InjectorDriver Driver { get; }

    /// <summary>Its resistance now, in ohm.</summary>
    public ElectricResistance Resistance => SiUnits.ElectricResistance(hot);

    /// <summary>The rise of its resistance, as a fraction of that of the data.</summary>
    public Ratio ResistanceRise => SiUnits.Ratio((hot / cold) - 1);

    /// <summary>The largest current now.</summary>
    /// <param name="supply">Voltage at the supply; greater than zero.</param>
    /// <returns>The current, in A; with a driver that limits it, it may be unchanged.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="supply"/> is not greater than zero.</exception>
    public ElectricCurrent LargestCurrent(ElectricPotential supply) => Driver.LargestCurrent(supply, Resistance);

    /// <summary>
    /// The voltage at which the coil at the temperature of the data would draw its present final current.
    /// </summary>
    /// <param name="supply">Voltage at the supply; greater than zero.</param>
    /// <returns>The voltage, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="supply"/> is not greater than zero.</exception>
    public ElectricPotential EquivalentVoltage(ElectricPotential supply) =>
        SiUnits.ElectricPotential(
            Guard.Positive(supply, supply.InSi()) * (cold + Driver.BallastSi) / (hot + Driver.BallastSi)
        );

    /// <summary>An estimate of the growth of the dead time: an upper bound, see the remarks.</summary>
    /// <param name="deadTime">The dead time of the data.</param>
    /// <param name="atInjector">Voltage at the injector; greater than zero.</param>
    /// <param name="differentialPressure">Rail less discharge pressure; not negative.</param>
    /// <returns>The change, in s; negative for a coil colder than that of the data.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="deadTime"/> is null.</exception>
    /// <exception cref="OutsideTableException">The table does not reach the equivalent voltage and refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="atInjector"/> is not greater than zero, or <paramref name="differentialPressure"/> is negative.
    /// </exception>
    public Duration EstimatedDeadTimeChange(
        DeadTimeTable deadTime,
        ElectricPotential atInjector,
        Pressure differentialPressure
    )
    {
        ArgumentNullException.ThrowIfNull(deadTime);
        return SiUnits.Duration(
            deadTime.SiAt(EquivalentVoltage(atInjector), differentialPressure)
                - deadTime.SiAt(atInjector, differentialPressure)
        );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Resistance} at {Now}");
}

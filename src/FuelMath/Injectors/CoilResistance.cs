using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The resistance of a copper coil with its temperature, for conversion to other temperatures.</summary>
/// <remarks>
/// <para>
/// Copper gains 0.393 % of its resistance at 20 °C per kelvin: 27.5 % for 70 K. Valid from -50 °C to 200 °C. A coil
/// that was just driven is hotter than its body: let it rest before measuring.
/// </para>
/// <para>Source: [NBS-Handbook-100] table 1.</para>
/// </remarks>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
public sealed partial class CoilResistance
{
    private const double Coldest = -50;
    private const double Hottest = 200;
    private const double LowBelow = 5;
    private const double HighAbove = 10;

    private readonly double ohms;
    private readonly double celsius;

    /// <summary>Creates a measured resistance.</summary>
    /// <param name="measured">The resistance; greater than zero.</param>
    /// <param name="at">Temperature of the coil; -50 °C to 200 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="measured"/> is not greater than zero, or <paramref name="at"/> is not from -50 °C to 200 °C.
    /// </exception>
    public CoilResistance(ElectricResistance measured, Temperature at)
    {
        ohms = Guard.Positive(measured, measured.InSi());
        celsius = Celsius(at);
        (Measured, MeasuredAt) = (measured, at);
    }

    /// <summary>The resistance as measured.</summary>
    public ElectricResistance Measured { get; }

    /// <summary>Temperature of the coil when it was measured.</summary>
    public Temperature MeasuredAt { get; }

    /// <summary>The resistance at 20 °C, in ohm.</summary>
    public ElectricResistance AtTwentyCelsius => SiUnits.ElectricResistance(SiAt(20));

    /// <summary>The kind of driver that it needs, by its resistance at 20 °C.</summary>
    public ImpedanceClass Impedance =>
        SiAt(20) < LowBelow ? ImpedanceClass.Low
        : SiAt(20) > HighAbove ? ImpedanceClass.High
        : ImpedanceClass.Between;

    /// <summary>The resistance at another temperature.</summary>
    /// <param name="temperature">Temperature of the coil; -50 °C to 200 °C.</param>
    /// <returns>The resistance, in ohm.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside its range.</exception>
    public ElectricResistance At(Temperature temperature) => SiUnits.ElectricResistance(SiAt(Celsius(temperature)));

    /// <summary>The mean temperature of the winding from its resistance.</summary>
    /// <param name="now">The resistance of the same coil now; greater than zero.</param>
    /// <returns>The temperature, in K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="now"/> is not greater than zero, or corresponds to a temperature outside -50 °C to 200 °C.
    /// </exception>
    public Temperature TemperatureFor(ElectricResistance now)
    {
        Guard.InRange(now, Guard.Positive(now, now.InSi()), SiAt(Coldest), SiAt(Hottest), SiUnits.ElectricResistance);
        double told = WireResistance
            .TemperatureFromResistance(
                new Real(ohms),
                new Real(WireResistance.CopperCoefficient),
                new Real(celsius),
                new Real(now.InSi())
            )
            .Value;
        return SiUnits.Temperature(SiUnits.KelvinsFromCelsius(told));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Measured} at {MeasuredAt}");

    internal double SiAt(double atCelsius) =>
        WireResistance
            .CarriedResistance(
                new Real(ohms),
                new Real(WireResistance.CopperCoefficient),
                new Real(celsius),
                new Real(atCelsius)
            )
            .Value;

    internal static double Celsius(
        Temperature temperature,
        [CallerArgumentExpression(nameof(temperature))] string paramName = ""
    ) =>
        SiUnits.CelsiusFromKelvins(
            Guard.InRange(
                temperature,
                temperature.InSi(),
                SiUnits.KelvinsFromCelsius(Coldest),
                SiUnits.KelvinsFromCelsius(Hottest),
                SiUnits.Temperature,
                paramName
            )
        );
}

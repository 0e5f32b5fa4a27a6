using UnitsNet;

namespace FuelMath;

/// <summary>The layout of injectors on an engine: the number per chamber, and the pulses per cycle.</summary>
/// <seealso href="../guide/sizing.html">Sizing, timing and idle of injectors</seealso>
public sealed class InjectorLayout
{
    /// <summary>Creates a layout.</summary>
    /// <param name="engine">The engine.</param>
    /// <param name="injectorsPerChamber">Injectors that feed one cylinder or rotor, 1 to 8.</param>
    /// <param name="pulsesPerCycle">
    /// Pulses in one working cycle, 1 to 8: 1 for sequential injection, 2 for batch injection on a four-stroke. A
    /// two-stroke cylinder and a rotor have a cycle in each turn of the shaft.
    /// </param>
    /// <exception cref="ArgumentNullException"><paramref name="engine"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public InjectorLayout(Engine engine, int injectorsPerChamber, int pulsesPerCycle)
    {
        ArgumentNullException.ThrowIfNull(engine);
        Engine = engine;
        InjectorsPerChamber = Guard.InRange(injectorsPerChamber, 1, 8);
        PulsesPerCycle = Guard.InRange(pulsesPerCycle, 1, 8);
    }

    /// <summary>The engine.</summary>
    public Engine Engine { get; }

    /// <summary>Injectors that feed one cylinder or rotor.</summary>
    public int InjectorsPerChamber { get; }

    /// <summary>Pulses of each in one working cycle.</summary>
    public int PulsesPerCycle { get; }

    /// <summary>Injectors of the whole engine.</summary>
    public int Injectors => InjectorsPerChamber * Engine.Chambers;

    /// <summary>Pulses per chamber and cycle, over all its injectors.</summary>
    internal double PulsesPerChamber => (double)InjectorsPerChamber * PulsesPerCycle;

    /// <summary>The time between two pulses of an injector.</summary>
    /// <param name="speed">Speed of the shaft; greater than zero.</param>
    /// <returns>The period, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The speed is not greater than zero.</exception>
    public Duration PeriodAt(RotationalSpeed speed) => Engine.InjectionPeriod(speed, PulsesPerCycle);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Injectors} injectors, {InjectorsPerChamber} a chamber");
}

using FuelMath.Injectors;
using UnitsNet;

namespace FuelMath.Systems;

/// <summary>What one injector does at an operating point.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class InjectorResult
{
    internal InjectorResult(
        string stage,
        InjectorSeat seat,
        Pressure differentialPressure,
        ElectricPotential voltage,
        InjectorPulse pulse,
        VolumeFlow meanFlow,
        bool isShut
    )
    {
        Stage = stage;
        Seat = seat;
        DifferentialPressure = differentialPressure;
        Voltage = voltage;
        Pulse = pulse;
        MeanFlow = meanFlow;
        IsShut = isShut;
    }

    /// <summary>The stage it belongs to.</summary>
    public string Stage { get; }

    /// <summary>Its place.</summary>
    public InjectorSeat Seat { get; }

    /// <summary>Pressure at its node minus the pressure that it sprays against.</summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>
    /// Mean voltage at its terminals while it opens, which its dead time belongs to: with its own coil's current in the
    /// wires, and that of others whose pulses overlap. The supply's voltage where nothing is pulsed.
    /// </summary>
    public ElectricPotential Voltage { get; }

    /// <summary>Its pulse: width, dead time (zero where nothing is pulsed: fuel cut, all open), duty cycle, mass.</summary>
    public InjectorPulse Pulse { get; }

    /// <summary>Mean volume flow.</summary>
    public VolumeFlow MeanFlow { get; }

    /// <summary>Whether it is told to stay shut.</summary>
    public bool IsShut { get; }
}

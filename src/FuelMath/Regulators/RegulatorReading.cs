using UnitsNet;

namespace FuelMath;

/// <summary>One reading of a bypass regulator on the bench: what it held while bypassing a flow.</summary>
/// <remarks>
/// Taken with the reference and the return line open to ambient pressure. A set point without the bypassed flow at
/// which it was taken says little, so both are asked for. The default value is a reading of nothing at no flow.
/// </remarks>
public readonly struct RegulatorReading
{
    /// <summary>Creates one reading.</summary>
    /// <param name="differentialPressure">Upstream less reference pressure; greater than zero.</param>
    /// <param name="bypassedFlow">Volume flow through the return; not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or outside what is allowed.</exception>
    public RegulatorReading(Pressure differentialPressure, VolumeFlow bypassedFlow)
    {
        Guard.Positive(differentialPressure, differentialPressure.InSi());
        Guard.NotNegative(bypassedFlow, bypassedFlow.InSi());
        DifferentialPressure = differentialPressure;
        BypassedFlow = bypassedFlow;
    }

    /// <summary>Upstream less reference pressure.</summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>Volume flow through the return.</summary>
    public VolumeFlow BypassedFlow { get; }
}

using FuelMath.Quantities;
using FuelMath.Regulators;
using UnitsNet;

namespace FuelMath.Systems;

/// <summary>What one bypass regulator does at an operating point.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class RegulatorResult
{
    internal RegulatorResult(
        string line,
        RegulatorState state,
        GaugePressure inlet,
        GaugePressure reference,
        VolumeFlow bypassedFlow
    )
    {
        Line = line;
        State = state;
        Inlet = inlet;
        Reference = reference;
        BypassedFlow = bypassedFlow;
    }

    /// <summary>The line that the regulator is in.</summary>
    public string Line { get; }

    /// <summary>Seated: the pump can't supply the demand. Regulating. Fully open: a fixed restriction above the return line.</summary>
    public RegulatorState State { get; }

    /// <summary>The pressure that it holds, or that stands at its inlet.</summary>
    public GaugePressure Inlet { get; }

    /// <summary>The pressure on its reference port.</summary>
    public GaugePressure Reference { get; }

    /// <summary>The flow that it sends back.</summary>
    public VolumeFlow BypassedFlow { get; }
}

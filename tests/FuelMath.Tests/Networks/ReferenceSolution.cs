namespace FuelMath.Tests.Networks;

/// <summary>What one of the means found, in SI.</summary>
/// <param name="Pressure">Gauge pressure of each node, Pa; nodes without a determined one are left out.</param>
/// <param name="Flow">Flow of each link, m3/s.</param>
/// <param name="EmitterFlow">Flow of the emitter on each node, m3/s.</param>
/// <param name="State">open, active or closed, for pumps and regulators.</param>
internal sealed record ReferenceSolution(
    IReadOnlyDictionary<string, double> Pressure,
    IReadOnlyDictionary<string, double> Flow,
    IReadOnlyDictionary<string, double> EmitterFlow,
    IReadOnlyDictionary<string, string> State
)
{
    /// <summary>The greatest node pressure, at least 1 kPa: the scale of pressures.</summary>
    internal double PressureScale => Math.Max(1e3, Pressure.Values.Max(Math.Abs));

    /// <summary>The greatest link flow: the scale of flows.</summary>
    internal double FlowScale => Flow.Values.Max(Math.Abs);
}

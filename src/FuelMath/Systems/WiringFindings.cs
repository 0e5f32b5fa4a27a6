using FuelMath.Findings;
using FuelMath.Internal;
using FuelMath.Wiring;

namespace FuelMath.Systems;

/// <summary>What there is to say of the mesh that feeds pumps and injectors.</summary>
internal sealed class WiringFindings(SolvedSystem solved)
{
    internal void Look()
    {
        if (solved.Parts.Wiring is not { } wiring)
        {
            return;
        }

        foreach (WiringSource source in wiring.Mesh.Sources.Where(s => s.Kind == WiringSourceKind.Alternator))
        {
            if (wiring.StateOf(source.Name) == AlternatorState.AtLimit)
            {
                solved.Add(
                    FindingCode.AlternatorAtLimit,
                    Severity.Warning,
                    source.Name,
                    $"Alternator '{source.Name}' gives all it can",
                    Shown.Volts(wiring.VoltageOf(source.Name).InSi()),
                    Shown.Volts(source.Volts),
                    "The battery makes up for the rest and drains: fewer loads, more speed, or a larger alternator.",
                    SolvedSystem.ByDefinition
                );
            }
        }
    }
}

namespace FuelMath;

/// <summary>What there is to say of the mesh that feeds pumps and injectors.</summary>
internal sealed class WiringFindings(SolvedSystem solved)
{
    /// <summary>The battery current that counts as none, as a share of the alternator's greatest.</summary>
    private const double Balanced = 1e-9;

    internal void Find()
    {
        if (solved.Parts.Wiring is not { } wiring)
        {
            return;
        }

        WiringMesh.Source[] stores = [.. wiring.Mesh.Sources.Where(s => s.Kind != WiringMesh.SourceKind.Alternator)];
        double drained = stores.Sum(s => wiring.CurrentFrom(s.Name).InSi());
        foreach (WiringMesh.Source source in wiring.Mesh.Sources.Where(s => s.Kind == WiringMesh.SourceKind.Alternator))
        {
            if (wiring.StateOf(source.Name) != WiringMesh.AlternatorCondition.AtLimit)
            {
                continue;
            }

            bool drains = stores.Length == 0 || drained > Balanced * source.Limit;
            string way = drains ? "out of" : "into";
            solved.Add(
                FindingCode.AlternatorAtLimit,
                drains ? Severity.Warning : Severity.Note,
                source.Name,
                $"Alternator '{source.Name}' gives all it can",
                Shown
                    .Amperes(drained)
                    .As(n => $"{Show.Volts(wiring.VoltageOf(source.Name).InSi())}, {n} {way} the battery"),
                Shown.Amperes(source.Limit).As(n => $"{Show.Volts(source.Volts)}, {n} from the alternator"),
                drains
                    ? "What it lacks comes out of the battery, which drains: fewer loads, more speed, or a larger alternator."
                    : "The battery is still charged, with what the loads leave: a further load of that size would drain it.",
                PartState.ByDefinition
            );
        }
    }
}

using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Compares a solved state with the limits of its system and gives the findings.</summary>
internal static class SystemFindings
{
    /// <summary>All findings, the gravest first.</summary>
    internal static ImmutableArray<Finding> Of(ReportedSolve solve, SystemParts parts)
    {
        var solved = new SolvedSystem(solve, parts);
        new InjectorFindings(solved).Find();
        new MixtureFindings(solved).Find();
        new PathFindings(solved).Find();
        new EscapeFindings(solved).Find();
        new PumpFindings(solved).Find();
        new VaporFindings(solved).Find();
        new WiringFindings(solved).Find();
        foreach (Limits.OwnLimit own in solve.System.Limits.Own)
        {
            solved.Add(OfOwner(own, solve.System.Limits.Standing!.ValueOf(own.Kind)));
        }

        return [.. solved.Found.OrderByDescending(f => f.Severity)];
    }

    /// <summary>An owner's limit is noted wherever it was applied, also where it is not exceeded.</summary>
    private static Finding OfOwner(Limits.OwnLimit own, UnitsNet.IQuantity standing) =>
        new Finding(
            FindingCode.LimitOfOwner,
            Severity.Note,
            "limits",
            $"The owner's limit {own.Kind} is held: {own.Reason}",
            Guard.Show(own.Value, own.Value.Unit),
            $"{Guard.Show(standing, own.Value.Unit)} without it",
            own.Source,
            "See that the reason still stands."
        ).WithQuantities(own.Value, standing);
}

using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Holds a solved state against the limits of its system, and says what to act on.</summary>
internal static class SystemFindings
{
    /// <summary>All findings, the gravest first.</summary>
    internal static ImmutableArray<Finding> Of(
        FuelSystem system,
        OperatingPoint point,
        SystemParts parts,
        FuelPathSolution path,
        SolverState inputs
    )
    {
        var solved = new SolvedSystem(system, point, parts, path, inputs);
        new InjectorFindings(solved).Look();
        new MixtureFindings(solved).Look();
        new PathFindings(solved).Look();
        new PumpFindings(solved).Look();
        new VaporFindings(solved).Look();
        new WiringFindings(solved).Look();
        return [.. solved.Found.OrderByDescending(f => f.Severity)];
    }
}

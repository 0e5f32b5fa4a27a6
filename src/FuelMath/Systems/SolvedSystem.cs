using FuelMath.Findings;
using FuelMath.Sources;

namespace FuelMath.Systems;

/// <summary>A settled solve as findings look at it, and the list that they add to.</summary>
internal sealed class SolvedSystem(
    FuelSystem system,
    OperatingPoint point,
    SystemParts parts,
    double[] pressures,
    double[] flows
)
{
    internal static readonly DataSource ByDefinition = new("Definition", "what the part is for");

    private readonly List<Finding> found = [];

    internal FuelSystem System { get; } = system;

    internal OperatingPoint Point { get; } = point;

    internal SystemParts Parts { get; } = parts;

    /// <summary>Gauge pressures in the order of the plan's nodes, Pa.</summary>
    internal double[] Pressures { get; } = pressures;

    /// <summary>Volume flows in the order of the plan's lines, m3/s.</summary>
    internal double[] Flows { get; } = flows;

    internal IEnumerable<Finding> Found => found;

    /// <summary>Adds a finding whose limit is one of the system's limits.</summary>
    internal void Add(
        FindingCode code,
        Severity severity,
        string part,
        string what,
        Shown value,
        Shown limit,
        string action
    ) => Add(code, severity, part, what, value, limit, action, System.Limits.Source);

    /// <summary>Adds a finding whose limit comes from elsewhere.</summary>
    internal void Add(
        FindingCode code,
        Severity severity,
        string part,
        string what,
        Shown value,
        Shown limit,
        string action,
        DataSource source
    ) => Add(Finding.Of(code, severity, part, what, value, limit, source, action));

    internal void Add(Finding finding) => found.Add(finding);
}

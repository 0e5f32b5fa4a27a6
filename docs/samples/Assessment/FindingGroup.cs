using FuelMath.Findings;

namespace FuelMath.Samples.Assessment;

/// <summary>The same finding at several operating points, with its value at each.</summary>
internal sealed record FindingGroup(
    Severity Severity,
    string What,
    string Action,
    string Source,
    IReadOnlyList<string> Values
)
{
    /// <summary>All findings of all points, the gravest first.</summary>
    internal static IReadOnlyList<FindingGroup> Of(IReadOnlyList<SolvedPoint> points) =>
        [
            .. points
                .Where(p => p.State is not null)
                .SelectMany(p => p.State!.Findings.Select(f => (Point: p.Point.Name, Finding: f)))
                .GroupBy(f => (f.Finding.Severity, f.Finding.What, f.Finding.Action))
                .OrderByDescending(g => g.Key.Severity)
                .Select(g => new FindingGroup(
                    g.Key.Severity,
                    g.Key.What,
                    g.Key.Action,
                    g.First().Finding.LimitSource.ToString(),
                    [
                        .. g.GroupBy(f => (f.Finding.Value, f.Finding.Limit))
                            .Select(v =>
                                $"{v.Key.Value}; limit {v.Key.Limit} ({(v.Count() == points.Count ? "every point" : string.Join("; ", v.Select(one => one.Point)))})"
                            ),
                    ]
                )),
        ];
}

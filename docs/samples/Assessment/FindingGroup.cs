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
    internal static IReadOnlyList<FindingGroup> Of(IReadOnlyList<SolvedPoint> points) => Of(points, points, []);

    /// <summary>What the measured injectors add: findings that do not stand already at that point with the rated ones.</summary>
    internal static IReadOnlyList<FindingGroup> Added(MeasuredSet measured, IReadOnlyList<SolvedPoint> rated) =>
        Of(measured.Uncorrected, rated, [.. Named(rated).Select(Key)]);

    private static IReadOnlyList<FindingGroup> Of(
        IReadOnlyList<SolvedPoint> points,
        IReadOnlyList<SolvedPoint> all,
        HashSet<string> known
    ) =>
        [
            .. Named(points)
                .Where(f => !known.Contains(Key(f)))
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
                                $"{v.Key.Value}; limit {v.Key.Limit} ({(v.Count() == all.Count ? "every point" : string.Join("; ", v.Select(one => one.Point)))})"
                            ),
                    ]
                )),
        ];

    private static IEnumerable<(string Point, Finding Finding)> Named(IReadOnlyList<SolvedPoint> points) =>
        points
            .Where(p => p.State is not null)
            .SelectMany(p => p.State!.Findings.Select(f => (Point: p.Point.Name, Finding: f)));

    /// <summary>What tells one finding from another; a danger with another value is another danger.</summary>
    private static string Key((string Point, Finding Finding) one) =>
        $"{one.Point}|{one.Finding.What}|{one.Finding.Severity}|{(one.Finding.Severity == Severity.Danger ? one.Finding.Value : "")}";
}

namespace FuelMath;

/// <summary>The tables of verdicts and findings.</summary>
internal static class VerdictTables
{
    internal static SheetTable Verdicts(SystemAssessment assessment) =>
        SheetTable.Of(
            "verdicts",
            "Verdicts",
            "Because: the finding that decides. A point or set with something not known is never said to hold for that reason alone.",
            [
                SheetTable.Column.Words("point or set"),
                SheetTable.Column.Words("verdict"),
                SheetTable.Column.Words("because"),
                SheetTable.Column.Words("value"),
                SheetTable.Column.Words("not known, and why"),
            ],
            [
                .. assessment.Points.Select(p => Row(p.Point.Name, p.Verdict, Seen(p.Deciding.Basis))),
                .. assessment.Sets.Select(s => Row($"injectors, {s.Stage}", s.Verdict, "")),
            ]
        );

    internal static SheetTable Findings(SystemAssessment assessment) =>
        SheetTable.Of(
            "findings",
            "Findings",
            "",
            [
                SheetTable.Column.Words("severity"),
                SheetTable.Column.Words("what"),
                SheetTable.Column.Words("at"),
                SheetTable.Column.Words("seen"),
                SheetTable.Column.Words("value"),
                SheetTable.Column.Words("limit"),
                SheetTable.Column.Words("by"),
                SheetTable.Column.Words("do"),
            ],
            assessment.Findings.SelectMany(f =>
                f.Occurrences.Select(
                    object?[] (o) =>
                        [
                            f.Severity.ToString().ToLowerInvariant(),
                            f.What,
                            o.Place,
                            o.Basis is { } basis ? StateTables.Words(basis) : "",
                            o.Finding.Value,
                            o.Finding.Limit,
                            f.LimitSource.ToString(),
                            f.Action,
                        ]
                )
            )
        );

    private static object?[] Row(string name, Verdict verdict, string seen) =>
        [
            name,
            Verdict.Words(verdict.Kind),
            verdict.Reasons.FirstOrDefault() is { } reason ? seen + reason.What : "",
            verdict.Reasons.FirstOrDefault()?.Value ?? "",
            string.Join("; ", verdict.NotJudged.Select(f => f.What).Distinct()),
        ];

    /// <summary>The injectors; that a sensor fails, the finding says itself.</summary>
    private static string Seen(SystemAssessment.StateBasis basis) =>
        SystemAssessment.IsMeasured(basis) ? "as measured: " : "";
}

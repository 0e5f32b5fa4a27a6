namespace FuelMath.Samples.Assessment;

/// <summary>What fits on a screen: verdicts, dangers and warnings, the numbers to enter; in 60 lines of 100 columns.</summary>
internal sealed class ConsoleSummary(TuningSheet sheet, IReadOnlyList<string> files)
{
    private readonly SystemAssessment assessment = sheet.Assessment;

    internal const int Lines = 60;
    internal const int Width = 100;

    /// <summary>How much is said of a finding: all; what, how much and what to do; what and how much.</summary>
    private const int Full = 0;
    private const int Short = 1;
    private const int Title = 2;

    private readonly SystemAssessment.GroupedFinding[] act =
    [
        .. sheet.Assessment.Findings.Where(f => f.Severity >= Severity.Warning),
    ];

    internal IReadOnlyList<string> Text()
    {
        List<string> verdict = Verdicts();
        List<string> numbers = Numbers();
        List<string> end =
        [
            "",
            .. Wrapping.Wrap(
                $"The rest (points, pictures, path, evidence): {string.Join(", ", files)}; or --all.",
                Width,
                0
            ),
        ];
        // Dangers come before the numbers: what they need, the numbers give up.
        int dangers = Findings(act.Count(f => f.Severity == Severity.Danger), new int[act.Length]).Count;
        int room = Lines - verdict.Count - end.Count;
        if (numbers.Count > room - dangers)
        {
            numbers = ["", .. Wrapping.Wrap($"Numbers to enter: {sheet.Instruction} See the sheet.", Width, 0)];
        }

        return [.. verdict, .. FindingsIn(room - numbers.Count), .. numbers, .. end];
    }

    private List<string> Verdicts()
    {
        string date = sheet.Dated is { } day ? $"{day:yyyy-MM-dd}" : "not stated";
        var lines = new List<string>
        {
            $"{assessment.System.Name}: {Say.Verdict(assessment.Verdict.Kind).ToUpperInvariant()}",
        };
        lines.AddRange(
            Wrapping.Wrap(
                $"Data: {assessment.System.Source}, date {date}. Fuel: {assessment.System.Fuel.Name}.",
                Width,
                0
            )
        );
        lines.Add("");
        (string Name, string Verdict, string Because, string Open)[] rows =
        [
            ("point", "verdict", "because (number of the finding below)", "not judged"),
            .. assessment.Points.Select(p => (p.Point.Name, Say.Verdict(p.Verdict.Kind), Because(p), Open(p.Verdict))),
            .. assessment.Sets.Select(s =>
                ($"injectors, {s.Stage}", Say.Verdict(s.Verdict.Kind), Because(s.Verdict, s.Stage), Open(s.Verdict))
            ),
        ];
        int name = Math.Min(30, rows.Max(r => r.Name.Length));
        int open = Math.Min(20, rows.Max(r => r.Open.Length));
        int because = Width - name - open - 17;
        int most = (Lines - 30) / rows.Length >= 2 ? 2 : 1;
        foreach ((string Name, string Verdict, string Because, string Open) row in rows)
        {
            string[] why = [.. Wrapping.Fit(row.Because, because, most)];
            string[] left = [.. Wrapping.Fit(row.Name, name, most)];
            string[] right = [.. Wrapping.Fit(row.Open, open, most)];
            for (int i = 0; i < Math.Max(why.Length, Math.Max(left.Length, right.Length)); i++)
            {
                lines.Add(
                    $"  {At(left, i).PadRight(name)}  {(i == 0 ? row.Verdict : ""), -10} {At(why, i).PadRight(because)}  {At(right, i)}".TrimEnd()
                );
            }
        }

        return Capped(lines, 30, "more points: see the page");
    }

    private static string At(string[] lines, int i) => i < lines.Length ? lines[i] : "";

    private string Because(SystemAssessment.PointAssessment point) =>
        point.Verdict.Kind == Verdict.Outcome.Holds
            ? ""
            : $"{Say.Injectors(point.Deciding.Basis)}{Because(point.Verdict, point.Point.Name)}";

    private string Because(Verdict verdict, string place) =>
        verdict.Reasons.FirstOrDefault() is { } reason ? $"{NumberOf(reason, place)}{reason.What}" : "";

    private string NumberOf(Finding finding, string place)
    {
        int at = Array.FindIndex(
            act,
            f =>
                f.Occurrences.Any(o =>
                    o.Place == place && o.Finding.What == finding.What && o.Finding.Severity == finding.Severity
                )
        );
        return at < 0 ? "" : $"[{at + 1}] ";
    }

    /// <summary>What could not be judged, by number where it matters, else by the part.</summary>
    private string Open(Verdict verdict) =>
        string.Join(
            ", ",
            verdict
                .NotJudged.Select(f =>
                    Array.FindIndex(act, a => a.What == f.What && a.Severity == f.Severity) is var at and >= 0
                        ? $"[{at + 1}]"
                        : $"({f.Part})"
                )
                .Distinct()
        );

    /// <summary>All that fits, the gravest in the longest form; what does not fit is counted.</summary>
    private List<string> FindingsIn(int room)
    {
        int[] forms = [.. act.Select(_ => Title)];
        for (int shown = act.Length; shown > 0; shown--)
        {
            int rest = act.Length - shown;
            if (Findings(shown, forms).Count + (rest > 0 ? 1 : 0) > room)
            {
                continue;
            }

            for (int i = 0; i < shown; i++)
            {
                for (forms[i] = Full; forms[i] < Title && Findings(shown, forms).Count + (rest > 0 ? 1 : 0) > room; )
                {
                    forms[i]++;
                }
            }

            List<string> lines = Findings(shown, forms);
            return rest == 0 ? lines : [.. lines, $"  and {rest} more dangers or warnings: see the page"];
        }

        return act.Length == 0 ? Findings(0, forms) : ["", $"{act.Length} dangers and warnings: see the page."];
    }

    private List<string> Findings(int count, int[] forms)
    {
        var lines = new List<string> { "" };
        if (act.Length == 0)
        {
            lines.Add("No danger and no warning among what could be judged.");
        }

        for (int i = 0; i < count; i++)
        {
            SystemAssessment.GroupedFinding one = act[i];
            SystemAssessment.Occurrence worst = one.Occurrences.MaxBy(Departure)!;
            string title = $"[{i + 1}] {one.Severity.ToString().ToUpperInvariant()} {one.What}";
            lines.AddRange(
                forms[i] == Full
                    ? Wrapping.Wrap(
                        $"{title}: {worst.Finding.Value} (limit {worst.Finding.Limit}). At {Places(one)}. Do: {one.Action}",
                        Width,
                        4
                    )
                : forms[i] == Short ? Wrapping.Wrap($"{title}: {worst.Finding.Value}. Do: {one.Action}", Width, 4)
                : Wrapping.Wrap($"{title}: {worst.Finding.Value}", Width, 4)
            );
        }

        int notes = assessment.Findings.Length - act.Length;
        if (notes > 0 && count == act.Length)
        {
            lines.Add($"    {notes} {(notes == 1 ? "note" : "notes")}: see the page.");
        }

        return lines;
    }

    private static double Departure(SystemAssessment.Occurrence one) =>
        one.Finding is { ValueQuantity: { } value, LimitQuantity: { } limit }
        && value.Unit.GetType() == limit.Unit.GetType()
            ? Math.Abs((double)value.As(value.Unit) / limit.As(value.Unit) - 1)
            : 0;

    private string Places(SystemAssessment.GroupedFinding one)
    {
        string[] places = [.. one.Occurrences.Select(o => o.Place).Distinct()];
        return places.Length > 1 && assessment.Points.All(p => places.Contains(p.Point.Name))
            ? "every point"
            : string.Join("; ", places);
    }

    /// <summary>For each stage in four lines or so what is entered; the sheet has all of it.</summary>
    private List<string> Numbers()
    {
        var lines = new List<string> { "" };
        foreach (TuningSheet.StageSheet stage in sheet.Stages)
        {
            bool mayRun = stage.Kind is Verdict.Outcome.Holds or Verdict.Outcome.ActFirst;
            lines.AddRange(Wrapping.Fit($"{stage.Stage.ToUpperInvariant()}: {stage.Instruction}", Width, 2));
            if (!mayRun)
            {
                lines.AddRange(Wrapping.Fit("  The numbers stand in the sheet, under this verdict.", Width, 1));
                continue;
            }

            SheetTable flows = stage.Tables.First(t => t.Name.EndsWith("static-flow", StringComparison.Ordinal));
            foreach (var row in flows.Rows.Where(r => r[0].Text.EndsWith("told", StringComparison.Ordinal)))
            {
                lines.AddRange(
                    Wrapping.Fit(
                        $"  {row[0].Text}: {row[4].Text} cm3/min, {row[5].Text} g/s of {row[1].Text} at {row[3].Text} bar across it"
                            + (row[6].IsEmpty ? "" : $", +/- {row[6].Text} %")
                            + $" ({row[7].Text})",
                        Width,
                        2
                    )
                );
            }

            SheetTable dead =
                stage.Tables.LastOrDefault(t => t.Name.EndsWith("dead-time-measured", StringComparison.Ordinal))
                ?? stage.Tables.First(t => t.Name.EndsWith("dead-time", StringComparison.Ordinal));
            lines.AddRange(
                Wrapping.Fit(
                    $"  dead time, {dead.Columns[1].Name}: {string.Join("  ", dead.Rows.Select(r => $"{r[0].Text} V {r[1].Text} ms"))}",
                    Width,
                    2
                )
            );
        }

        return lines;
    }

    private static List<string> Capped(List<string> lines, int most, string rest) =>
        lines.Count <= most ? lines : [.. lines.Take(most - 1), $"  {lines.Count - most + 1} {rest}"];
}

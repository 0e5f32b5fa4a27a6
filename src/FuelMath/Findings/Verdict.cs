using System.Collections.Immutable;

namespace FuelMath;

/// <summary>The verdict on findings: holds, act first, not known or do not run, with the deciding findings.</summary>
/// <remarks>
/// <para>
/// A danger gives "do not run". Otherwise a warning that something could not be judged gives "not known", and any other
/// warning "act first". With notes alone it is "holds"; notes on what was not judged are listed in
/// <see cref="NotJudged"/>. A verdict on nothing is "not known".
/// </para>
/// <para>
/// "Holds" is a statement about the data given, never clearance to load an engine: verify with a sensor at light load
/// first.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/AssessmentExamples.cs" region="Verdict" />
/// </example>
/// <seealso href="../guide/assessments.html">Assessments</seealso>
public sealed partial class Verdict
{
    private Verdict(ImmutableArray<Finding> findings)
    {
        Findings = findings;
        Kind = findings.Select(KindOf).DefaultIfEmpty(Outcome.Holds).Max();
        Reasons = Kind == Outcome.Holds ? [] : [.. findings.Where(f => KindOf(f) == Kind)];
        NotJudged = [.. findings.Where(f => f.IsNotKnown)];
    }

    /// <summary>The kind of verdict.</summary>
    public Outcome Kind { get; }

    /// <summary>The findings that decide it; empty when it holds.</summary>
    public ImmutableArray<Finding> Reasons { get; }

    /// <summary>What could not be judged, whether it decides or not.</summary>
    public ImmutableArray<Finding> NotJudged { get; }

    /// <summary>All findings, the gravest first.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>The verdict on something judged.</summary>
    /// <param name="findings">The findings; may be empty. Copied.</param>
    /// <returns>The verdict.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="findings"/> is null.</exception>
    /// <exception cref="ArgumentException">One of them is null.</exception>
    public static Verdict Of(IEnumerable<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        return new([.. Lists.NoNulls(findings).OrderByDescending(KindOf)]);
    }

    /// <summary>The combined verdict: the worst of several, with equal findings listed once.</summary>
    /// <param name="verdicts">The verdicts; if empty, the result is "not known".</param>
    /// <returns>The verdict.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="verdicts"/> is null.</exception>
    /// <exception cref="ArgumentException">One of them is null.</exception>
    public static Verdict Together(IEnumerable<Verdict> verdicts)
    {
        ArgumentNullException.ThrowIfNull(verdicts);
        ImmutableArray<Verdict> all = [.. Lists.NoNulls(verdicts)];
        return all.IsEmpty
            ? Of([Nothing])
            : Of(
                all.SelectMany(v => v.Findings)
                    .DistinctBy(f => (f.Code, f.Severity, f.IsNotKnown, f.Part, f.What, f.Value, f.Limit))
            );
    }

    /// <summary>The verdict on a single finding.</summary>
    /// <param name="finding">The finding.</param>
    /// <returns>The kind.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="finding"/> is null.</exception>
    public static Outcome KindOf(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return finding.Severity switch
        {
            Severity.Danger => Outcome.DoNotRun,
            Severity.Warning => finding.IsNotKnown ? Outcome.NotKnown : Outcome.ActFirst,
            _ => Outcome.Holds,
        };
    }

    /// <summary>Formats the verdict as one line: the words, the first reason, how many more, and what was not judged.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string text = Words(Kind);
        if (!Reasons.IsEmpty)
        {
            string more = Reasons.Length > 1 ? $" and {Reasons.Length - 1} more" : "";
            text += $": {Reasons[0].What} ({Reasons[0].Value}){more}";
        }

        string[] open = [.. NotJudged.Except(Reasons).Select(f => f.What).Distinct()];
        return open.Length == 0 ? text : $"{text}; not judged: {string.Join("; ", open)}";
    }

    /// <summary>The words for a kind.</summary>
    internal static string Words(Outcome kind) =>
        kind switch
        {
            Outcome.Holds => "holds",
            Outcome.ActFirst => "act first",
            Outcome.DoNotRun => "do not run",
            _ => "not known",
        };

    private static Finding Nothing { get; } =
        new Finding(
            FindingCode.NothingJudged,
            Severity.Warning,
            "everything",
            "There is nothing to judge",
            "none given",
            "one or more",
            new("Definition", "a verdict needs something that it is about"),
            "Give an operating point."
        ).AsNotKnown();
}

using System.Collections.Immutable;

namespace FuelMath;

/// <summary>One finding of an assessment, once, with every place that it holds for.</summary>
/// <remarks>
/// What is a danger only while a sensor fails counts as a warning, as in the verdict, and is left out where the same is found
/// with the sensor. What the measured injectors show stands beside what stands already with the described ones only where it
/// is a danger of another size.
/// </remarks>
public sealed class FindingAcrossPoints
{
    private FindingAcrossPoints(ImmutableArray<FindingOccurrence> occurrences) => Occurrences = occurrences;

    /// <summary>Where it holds, in the order of the points; one or more.</summary>
    public ImmutableArray<FindingOccurrence> Occurrences { get; }

    /// <summary>What kind of finding it is.</summary>
    public FindingCode Code => First.Code;

    /// <summary>How much it matters.</summary>
    public Severity Severity => First.Severity;

    /// <summary>What it comes to by itself.</summary>
    public VerdictKind Kind => Verdict.KindOf(First);

    /// <summary>The part, stage, node or chamber that it is about.</summary>
    public string Part => First.Part;

    /// <summary>What was found.</summary>
    public string What => First.What;

    /// <summary>Where the limit comes from.</summary>
    public DataSource LimitSource => First.LimitSource;

    /// <summary>What to do.</summary>
    public string Action => First.Action;

    /// <summary>Whether it says what could not be judged.</summary>
    public bool IsNotKnown => First.IsNotKnown;

    private Finding First => Occurrences[0].Finding;

    /// <summary>Formats the finding as one line: how much it matters, what, and where.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Severity}: {What} ({string.Join("; ", Occurrences.Select(o => $"{o.Place}: {o.Finding.Value}"))}). {Action}";

    internal static ImmutableArray<FindingAcrossPoints> Of(IReadOnlyCollection<FindingOccurrence> all) =>
        [
            .. all.Where(o => !IsKnownWithSensor(o, all))
                .GroupBy(o =>
                    (o.Finding.Code, o.Finding.Severity, o.Finding.IsNotKnown, o.Finding.Part, o.Finding.What)
                )
                .Select(g => new FindingAcrossPoints([.. g.GroupBy(o => o.Place).SelectMany(Told)]))
                .OrderByDescending(f => f.Kind)
                .ThenByDescending(f => f.Severity),
        ];

    private static bool IsKnownWithSensor(FindingOccurrence one, IEnumerable<FindingOccurrence> all) =>
        one.Basis == StateBasis.AsMeasuredUncorrected
        && all.Any(o =>
            o.Basis is StateBasis.AsDescribed or StateBasis.AsMeasured
            && o.Place == one.Place
            && o.Finding.Code == one.Finding.Code
            && o.Finding.Part == one.Finding.Part
            && o.Finding.Severity >= one.Finding.Severity
        );

    /// <summary>At one place: the first, and of dangers also those of another value.</summary>
    private static IEnumerable<FindingOccurrence> Told(IEnumerable<FindingOccurrence> atOnePlace)
    {
        FindingOccurrence[] all = [.. atOnePlace];
        return all[0].Finding.Severity == Severity.Danger ? all.DistinctBy(o => o.Finding.Value) : all.Take(1);
    }
}

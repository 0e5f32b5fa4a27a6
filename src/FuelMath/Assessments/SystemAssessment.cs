using System.Collections.Immutable;

namespace FuelMath;

/// <summary>
/// The assessment of a fuel system at its operating points, as described and, where its injectors were measured on a
/// bench, as measured, with the sensor that holds a mixture and if it fails: a verdict for each point, for each set of
/// injectors, and for the whole.
/// </summary>
/// <remarks>
/// Missing data never give "holds": a refused state, a set that is not accepted and an unknown vapor pressure all enter
/// the verdict. It is no clearance to load an engine: verify with a sensor at light load first.
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/AssessmentExamples.cs" region="Assessment" />
/// </example>
/// <seealso href="../guide/assessments.html">Assessments</seealso>
public sealed partial class SystemAssessment
{
    private static readonly DataSource Rule = new("Definition", "what was not read on a bench is taken as described");

    /// <summary>Assesses a system as described.</summary>
    /// <param name="system">The system.</param>
    /// <param name="points">The operating points; an empty list gives the verdict "not known". Copied.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A point commands widths for another number of stages.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mixture overflows the range of a number.</exception>
    public SystemAssessment(FuelSystem system, IEnumerable<OperatingPoint> points)
        : this(system, points, null, []) { }

    /// <summary>Assesses a system as described and as measured.</summary>
    /// <param name="system">The system as described.</param>
    /// <param name="points">The operating points; an empty list gives the verdict "not known". Copied.</param>
    /// <param name="measured">The same system with its injectors as measured.</param>
    /// <param name="sets">The bench result of each stage. Copied.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// A set names a stage that the system does not have, or one stage has two sets, or the measured system has other stages,
    /// another number of chambers or injectors in other places, or a point commands widths for another number of stages.
    /// </exception>
    public static SystemAssessment FromBench(
        FuelSystem system,
        IEnumerable<OperatingPoint> points,
        FuelSystem measured,
        IEnumerable<StageSet> sets
    )
    {
        ArgumentNullException.ThrowIfNull(measured);
        return new(system, points, measured, sets);
    }

    /// <summary>The same assessment, which says as well which uncertain inputs make the scatter at each point, in place of those of the system.</summary>
    /// <param name="inputs">What is uncertain; at least one. Copied.</param>
    /// <returns>The assessment, with <see cref="Shares"/>; verdict and findings are the same.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="inputs"/> is null.</exception>
    /// <exception cref="ArgumentException">No input is uncertain.</exception>
    public SystemAssessment WithUncertainInputs(IEnumerable<UncertainInput> inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        inputs = Lists.NoNulls(inputs);
        UncertainInput[] all = [.. inputs];
        return all.Length > 0 ? new(this, SharesOf(all)) : throw Guard.Empty(nameof(inputs));
    }

    private ImmutableArray<PointShares> SharesOf(IReadOnlyCollection<UncertainInput> inputs) =>
        inputs.Count == 0 ? [] : [.. Points.Select(p => PointShares.Of(Measured ?? System, p.Point, inputs))];

    private SystemAssessment(SystemAssessment other, ImmutableArray<PointShares> shares)
    {
        (System, Measured, Sets, Points) = (other.System, other.Measured, other.Sets, other.Points);
        (Verdict, Findings, Shares) = (other.Verdict, other.Findings, shares);
    }

    private SystemAssessment(
        FuelSystem system,
        IEnumerable<OperatingPoint> points,
        FuelSystem? measured,
        IEnumerable<StageSet> sets
    )
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(sets);
        OperatingPoint[] all = Lists.NoNulls(points);
        (System, Measured, Sets) = (system, measured, [.. Lists.NoNulls(sets)]);
        CheckSets();
        if (measured is not null)
        {
            CheckAlike(system, measured);
        }

        Points = [.. all.Select(p => PointAssessment.Of(system, p, measured))];
        Shares = SharesOf(system.UncertainInputs);
        ImmutableArray<Finding> notMeasured = [.. NotMeasured()];
        Verdict[] own =
        [
            Verdict.Together(Points.Select(p => p.Verdict)),
            .. Sets.Select(s => s.Verdict),
            Verdict.Of(notMeasured),
        ];
        Verdict = Verdict.Together(own);
        Findings = GroupedFinding.Of([
            .. Points.SelectMany(p => p.Occurrences),
            .. Sets.SelectMany(s => s.Verdict.Findings.Select(f => new Occurrence(s.Stage, null, f))),
            .. notMeasured.Select(f => new Occurrence(f.Part, null, f)),
        ]);
    }

    /// <summary>The system as described.</summary>
    public FuelSystem System { get; }

    /// <summary>The system with its injectors as measured; null when they were not.</summary>
    public FuelSystem? Measured { get; }

    /// <summary>Every point, in the order given.</summary>
    public ImmutableArray<PointAssessment> Points { get; }

    /// <summary>Every set of injectors measured on a bench, in the order given.</summary>
    public ImmutableArray<StageSet> Sets { get; }

    /// <summary>
    /// Which uncertain inputs make the scatter at each point, with injectors as measured where they were; empty where neither
    /// <see cref="FuelSystem.UncertainInputs"/> nor <see cref="WithUncertainInputs"/> says what is uncertain.
    /// </summary>
    public ImmutableArray<PointShares> Shares { get; }

    /// <summary>The verdict on the whole.</summary>
    public Verdict Verdict { get; }

    /// <summary>Every finding once, with the places where it holds; the gravest first.</summary>
    public ImmutableArray<GroupedFinding> Findings { get; }

    /// <summary>Formats the verdict on the whole as one line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{System.Name}: {Verdict}";

    private void CheckSets()
    {
        string[] stages = [.. System.Stages.Select(s => s.Name)];
        string? unknown = Sets.Select(s => s.Stage).FirstOrDefault(s => !stages.Contains(s));
        if (unknown is not null)
        {
            throw new RefusedArgumentException(
                RefusalCode.NotOneOf,
                $"Must name one of: {stages:allowed}; it was '{unknown:given}'.",
                "sets"
            );
        }

        Guard.DifferentNames(Sets.Select(s => s.Stage), "sets");
    }

    /// <summary>The measured system has its own injectors, in the same places of the same engine.</summary>
    private static void CheckAlike(FuelSystem system, FuelSystem measured)
    {
        if (!measured.Stages.Select(s => s.Name).SequenceEqual(system.Stages.Select(s => s.Name)))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotAlike,
                $"Must have the stages of '{system.Name:part}' in their order: {system.Stages.Select(s => s.Name):allowed}.",
                nameof(measured)
            );
        }

        if (measured.Engine.Chambers != system.Engine.Chambers)
        {
            throw new RefusedArgumentException(
                RefusalCode.NotAlike,
                $"Must have {system.Engine.Chambers:exactly} chambers, as '{system.Name:part}' has; it has {measured.Engine.Chambers:value}.",
                nameof(measured)
            );
        }

        if (!Seats(measured).SequenceEqual(Seats(system)))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotAlike,
                $"Must have its injectors at the nodes and chambers of those of '{system.Name:part}'.",
                nameof(measured)
            );
        }
    }

    private static IEnumerable<(string Stage, string Node, int Chamber)> Seats(FuelSystem system) =>
        system.Stages.SelectMany(s => s.Seats.Select(seat => (s.Name, seat.Node, seat.Chamber)));

    private IEnumerable<Finding> NotMeasured() =>
        Measured is null
            ? []
            : System
                .Stages.Where(s => Sets.All(set => set.Stage != s.Name))
                .Select(s =>
                    new Finding(
                        FindingCode.SetNotMeasured,
                        Severity.Note,
                        s.Name,
                        $"No reading of the injectors of stage '{s.Name}' is judged",
                        "none",
                        "a set report",
                        Rule,
                        "Put them on the bench as well."
                    ).AsNotKnown()
                );
}

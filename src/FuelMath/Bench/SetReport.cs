using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>A set of injectors against its rating and against each other.</summary>
/// <remarks>
/// <para>
/// Judged by limits, not by standard scores: in a set of n no score can exceed (n - 1) / sqrt(n), so a rule of three
/// standard deviations can't flag any of ten or fewer. Source: [Shiffler-1988]. What the readings can't show is
/// undecided, with a finding. The spread is compared with the range of n equal injectors, not with the difference of a
/// pair; every interval uses the pooled scatter of all repeats, but
/// for an injector whose repeats scatter more than those of the others. Source: [Harter-1960], [ISO-5725-2] section 7.3.3.
/// </para>
/// <para>Caution: never run an engine leaner than intended to test a set.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/BenchExamples.cs" region="Set" />
/// </example>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed partial class SetReport
{
    private readonly SetFlows flows;

    /// <summary>Reports on a set.</summary>
    /// <param name="rating">The rating of each injector; readings are converted to its conditions.</param>
    /// <param name="injectors">Two or more injectors. Copied.</param>
    /// <param name="limits">The limits.</param>
    /// <param name="confidence">
    /// Confidence level of the interval of a flow and of a verdict on counted drops; 50 % to 99.99 %.
    /// </param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// There are fewer than two injectors, a name occurs twice, or one has no reading of static flow.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    public SetReport(
        FlowRating rating,
        IEnumerable<BenchedInjector> injectors,
        AcceptanceLimits limits,
        Ratio confidence
    )
    {
        ArgumentNullException.ThrowIfNull(rating);
        ArgumentNullException.ThrowIfNull(injectors);
        ArgumentNullException.ThrowIfNull(limits);
        _ = Student.TwoSided(1, confidence);
        (Rating, Limits) = (rating, limits);
        ImmutableArray<BenchedInjector> all = [.. Lists.NoNulls(injectors)];
        Guard.AtLeast(2, all.Length, "A set", nameof(injectors));
        Guard.DifferentNames(all.Select(i => i.Name), nameof(injectors));
        flows = new(all, rating, limits, confidence);
        ImmutableArray<SetCoil?> coils = Coils(all, limits);
        Members =
        [
            .. all.Select((one, i) => new Member(one.Name, i, flows, Leakage(one, limits, confidence), coils[i])),
        ];
        Findings = SetFindings.Of(this);
    }

    /// <summary>The rating of each injector.</summary>
    public FlowRating Rating { get; }

    /// <summary>The limits.</summary>
    public AcceptanceLimits Limits { get; }

    /// <summary>The injectors, in the order given.</summary>
    public ImmutableArray<Member> Members { get; }

    /// <summary>Mean flow under the conditions of the rating, in m³/s.</summary>
    public VolumeFlow MeanFlow => SiUnits.VolumeFlow(flows.Mean);

    /// <summary>(largest - smallest) / mean.</summary>
    public Ratio Spread => SiUnits.Ratio(flows.Spread);

    /// <summary>Standard deviation, with n - 1, over mean.</summary>
    public Ratio CoefficientOfVariation => SiUnits.Ratio(flows.Deviation / flows.Mean);

    /// <summary>
    /// The repeatability of the bench: the pooled standard deviation of repeats about each injector's own mean, as a
    /// fraction of the mean flow, and at least the resolution of the instrument over the square root of twelve; without
    /// the injectors that scatter more than the others; null where no injector was read twice.
    /// </summary>
    public Ratio? Repeatability => flows.Repeatability is { } value ? SiUnits.Ratio(value) : null;

    /// <summary>
    /// The least significant difference between two injectors chosen beforehand, as a fraction of the mean flow; null
    /// where no injector was read twice. The largest and the smallest of a set differ by more: see
    /// <see cref="LeastSpread"/>.
    /// </summary>
    public Ratio? LeastDifference => flows.LeastDifference is { } value ? SiUnits.Ratio(value) : null;

    /// <summary>
    /// The least significant spread, as a fraction of the mean flow: equal injectors stay within it with the stated
    /// confidence, by the studentized range. Where no injector was read twice it is one step of the instrument.
    /// </summary>
    public Ratio LeastSpread => SiUnits.Ratio(flows.LeastSpread);

    /// <summary>The findings, injector by injector.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>The largest standard score that is possible in a set of this size: (n - 1) / sqrt(n).</summary>
    public Ratio LargestPossibleScore => SiUnits.Ratio((Members.Length - 1) / Math.Sqrt(Members.Length));

    /// <summary>
    /// The verdict on the spread: rejected if it is above its limit and above the least significant spread; else
    /// undecided if the readings can't show a spread as small as the limit; else accepted.
    /// </summary>
    public BenchVerdict SpreadVerdict =>
        Spread.InSi() > Math.Max(Limits.Spread.InSi(), flows.LeastSpread) + Guard.EdgeTolerance ? BenchVerdict.Rejected
        : flows.LeastSpread > Limits.Spread.InSi() + Guard.EdgeTolerance ? BenchVerdict.Undecided
        : BenchVerdict.Accepted;

    /// <summary>
    /// Whether the spread is within its limit; null where the <see cref="SpreadVerdict"/> is undecided.
    /// </summary>
    public bool? IsMatched =>
        SpreadVerdict switch
        {
            BenchVerdict.Accepted => true,
            BenchVerdict.Rejected => false,
            _ => null,
        };

    /// <summary>Rejected if the spread or one injector is; else undecided if one of them is; else accepted.</summary>
    public BenchVerdict Verdict =>
        SpreadVerdict == BenchVerdict.Rejected || Members.Any(m => m.Verdict == BenchVerdict.Rejected)
            ? BenchVerdict.Rejected
        : SpreadVerdict == BenchVerdict.Undecided || Members.Any(m => m.Verdict == BenchVerdict.Undecided)
            ? BenchVerdict.Undecided
        : BenchVerdict.Accepted;

    /// <summary>Whether its <see cref="Verdict"/> is accepted; undecided is not.</summary>
    public bool IsAccepted => Verdict == BenchVerdict.Accepted;

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{Members.Length} injectors, mean {MeanFlow}, spread {Spread}, {Verdict}");

    private static LeakageVerdict? Leakage(BenchedInjector one, AcceptanceLimits limits, Ratio confidence) =>
        one.Now.Leakage.IsEmpty ? null : new(one.Now.Leakage, limits.Leakage, limits.Drop, confidence);

    private static ImmutableArray<SetCoil?> Coils(ImmutableArray<BenchedInjector> all, AcceptanceLimits limits)
    {
        double?[] ohms = [.. all.Select(i => i.Now.Coil.IsEmpty ? (double?)null : CoilVerdict.MeanSi(i.Now.Coil))];
        double[] known = [.. ohms.OfType<double>()];
        double? median = known.Length < 3 ? null : Averages.Median(known);
        return
        [
            .. all.Select(
                (one, i) =>
                    ohms[i] is { } value
                        ? new SetCoil(
                            value,
                            (value / median) - 1,
                            limits.Coil is { } band ? new CoilVerdict(one.Now.Coil, band) : null
                        )
                        : null
            ),
        ];
    }
}

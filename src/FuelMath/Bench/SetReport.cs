using System.Collections.Immutable;
using FuelMath.Injectors;
using FuelMath.Internal;
using FuelMath.Uncertainty;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>A set of injectors against its rating and against each other.</summary>
/// <remarks>
/// <para>
/// Judged by limits, never by standard scores: in a set of n none can exceed (n - 1) / sqrt(n), so that a rule of three
/// standard deviations can't flag any one of ten or fewer. Source: [Shiffler-1988].
/// </para>
/// <para>
/// Caution: never run an engine leaner than intended to test a set. Instances are immutable and safe to share between
/// threads. Equality is by reference.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/BenchExamples.cs" region="Set" />
/// </example>
public sealed class SetReport
{
    private readonly double mean;

    /// <summary>Reports on a set.</summary>
    /// <param name="rating">What each of them is rated at; readings are carried to its conditions.</param>
    /// <param name="injectors">Two or more injectors. Copied.</param>
    /// <param name="limits">What they are held against.</param>
    /// <param name="confidence">How often the interval of a flow holds the truth; 50 % to 99.99 %.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two injectors.</exception>
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
        BenchedInjector[] all = [.. injectors];
        Guard.AtLeast(2, all.Length, "A set", nameof(injectors));
        double[] flows = [.. all.Select(i => BenchedInjector.FlowsSi(i.Readings, rating).Average())];
        var sample = new Sample(flows);
        mean = sample.Mean;
        Spread = SiUnits.Ratio((flows.Max() - flows.Min()) / mean);
        CoefficientOfVariation = SiUnits.Ratio(sample.StandardDeviation / mean);
        double rated = rating.StaticVolumeFlow.InSi();
        double reach = limits.FromRating.InSi() + Guard.EdgeTolerance;
        Members =
        [
            .. all.Select(
                (one, i) =>
                    new SetMember(
                        one.Name,
                        flows[i],
                        HalfWidth(one, rating, confidence),
                        one.BeforeCleaning.IsEmpty
                            ? null
                            : BenchedInjector.FlowsSi(one.BeforeCleaning, rating).Average(),
                        rated,
                        mean,
                        sample.StandardDeviation,
                        1 + flows.Count(f => f > flows[i]),
                        Math.Abs((flows[i] / rated) - 1) <= reach
                    )
            ),
        ];
    }

    /// <summary>What each of them is rated at.</summary>
    public FlowRating Rating { get; }

    /// <summary>What they are held against.</summary>
    public AcceptanceLimits Limits { get; }

    /// <summary>The injectors, in the order given.</summary>
    public ImmutableArray<SetMember> Members { get; }

    /// <summary>Mean flow under the conditions of the rating, in m³/s.</summary>
    public VolumeFlow MeanFlow => SiUnits.VolumeFlow(mean);

    /// <summary>(largest - smallest) / mean.</summary>
    public Ratio Spread { get; }

    /// <summary>Standard deviation, with n - 1, over mean.</summary>
    public Ratio CoefficientOfVariation { get; }

    /// <summary>The largest standard score that is possible in a set of this size: (n - 1) / sqrt(n).</summary>
    public Ratio LargestPossibleScore => SiUnits.Ratio((Members.Length - 1) / Math.Sqrt(Members.Length));

    /// <summary>Whether the spread lies within its limit.</summary>
    public bool IsMatched => Spread.InSi() <= Limits.Spread.InSi() + Guard.EdgeTolerance;

    /// <summary>Whether the set is matched and every injector accepted.</summary>
    public bool IsAccepted => IsMatched && Members.All(m => m.IsAccepted);

    private static double? HalfWidth(BenchedInjector one, FlowRating rating, Ratio confidence) =>
        one.Readings.Length < 2
            ? null
            : new Sample(BenchedInjector.FlowsSi(one.Readings, rating)).StandardError
                * Student.TwoSided(one.Readings.Length - 1, confidence);
}

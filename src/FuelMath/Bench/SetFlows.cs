using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>Flows of one injector under the conditions of a rating, m³/s.</summary>
/// <param name="Now">Their mean.</param>
/// <param name="Repeats">Number of readings.</param>
/// <param name="Squares">The sum of their squares about the mean.</param>
/// <param name="Rounding">The standard deviation from the resolution of the instrument.</param>
/// <param name="Before">The mean from before cleaning.</param>
internal sealed record SetFlow(double Now, int Repeats, double Squares, double Rounding, double? Before)
{
    /// <summary>
    /// The standard error of the mean for a given scatter of one reading. Equal readings were all rounded the same way,
    /// so repeats do not average the rounding error out.
    /// </summary>
    internal double ErrorAt(double scatter) => Math.Max(scatter / Math.Sqrt(Repeats), Rounding);

    /// <summary>Degrees of freedom of its scatter.</summary>
    internal int Freedom => Repeats - 1;

    /// <summary>The sum of squares, and at least that of rounding: equal readings do not show that nothing scatters.</summary>
    internal double LeastSquares => Math.Max(Squares, Freedom * Rounding * Rounding);

    /// <summary>The standard deviation of one reading by its own repeats alone, and at least that of rounding.</summary>
    internal double OwnScatter => Math.Sqrt(LeastSquares / Freedom);
}

/// <summary>The coil of one injector, at 20 °C.</summary>
internal sealed record SetCoil(double Ohms, double? FromMedian, CoilVerdict? Verdict);

/// <summary>Kernel: flows of a set under the conditions of a rating, m³/s.</summary>
internal sealed class SetFlows
{
    internal SetFlows(
        ImmutableArray<BenchedInjector> injectors,
        FlowRating rating,
        AcceptanceLimits limits,
        Ratio confidence
    )
    {
        if (injectors.FirstOrDefault(i => i.Readings.IsEmpty) is { } silent)
        {
            throw new RefusedArgumentException(
                RefusalCode.Missing,
                $"Must have readings of static flow, each of them; '{silent.Name:part}' has none.",
                nameof(injectors)
            );
        }

        All = [.. injectors.Select(i => Of(i, rating))];
        var sample = new Sample(All.Select(f => f.Now));
        (Mean, Deviation) = (sample.Mean, sample.StandardDeviation);
        Spread = (All.Max(f => f.Now) - All.Min(f => f.Now)) / Mean;
        Rated = rating.StaticVolumeFlow.InSi();
        RatedPressure = rating.DifferentialPressure.InSi();
        Reach = limits.FromRating.InSi() + Guard.EdgeTolerance;
        Scatters = SetScatter.Of(All);
        SetFlow[] pooled = [.. All.Where((_, i) => Scatters[i] is null)];
        int freedom = pooled.Sum(f => f.Freedom);
        if (freedom == 0)
        {
            // Readings of equal flows differ by one step at most.
            LeastSpread = Math.Sqrt(12) * All.Max(f => f.Rounding) / Mean;
            return;
        }

        double rounding = Averages.RootMeanSquare(pooled.Select(f => f.Rounding));
        double scatter = Math.Max(Math.Sqrt(pooled.Sum(f => f.Squares) / freedom), rounding);
        double[] errors = [.. All.Select((f, i) => f.ErrorAt(Scatters[i] is null ? scatter : f.OwnScatter))];
        double factor = Student.TwoSided(freedom, confidence);
        Repeatability = scatter / Mean;
        LeastDifference = factor * Math.Sqrt(2) * errors.Max() / Mean;
        LeastSpread = StudentizedRange.Quantile(All.Length, freedom, confidence) * errors.Max() / Mean;
        HalfWidths =
        [
            .. All.Select(
                (f, i) => errors[i] * (Scatters[i] is null ? factor : Student.TwoSided(f.Freedom, confidence))
            ),
        ];
    }

    internal ImmutableArray<SetFlow> All { get; }

    internal double Mean { get; }

    internal double Deviation { get; }

    /// <summary>(Largest - smallest) / mean.</summary>
    internal double Spread { get; }

    internal double Rated { get; }

    /// <summary>The differential pressure of the rating, Pa.</summary>
    internal double RatedPressure { get; }

    /// <summary>The largest allowed departure from the rating, including the edge tolerance.</summary>
    internal double Reach { get; }

    /// <summary>The injectors whose repeats scatter more than those of the others; null for each that is pooled.</summary>
    internal ImmutableArray<SetScatter?> Scatters { get; }

    /// <summary>Half of Student's interval of each flow, by the pooled scatter or its own; empty without repeats.</summary>
    internal ImmutableArray<double> HalfWidths { get; } = [];

    /// <summary>
    /// Pooled standard deviation of repeats or that of rounding, whichever is greater, as a fraction of the mean, without
    /// those that scatter more than the others; null without repeats.
    /// </summary>
    internal double? Repeatability { get; }

    /// <summary>The least significant difference between two injectors, as a fraction of the mean.</summary>
    internal double? LeastDifference { get; }

    /// <summary>
    /// The spread within which equal injectors stay, as a fraction of the mean: from scatter, or one step without
    /// repeats.
    /// </summary>
    internal double LeastSpread { get; }

    private static SetFlow Of(BenchedInjector one, FlowRating rating)
    {
        double[] now = BenchedInjector.FlowsSi(one.Readings, rating);
        double mean = Averages.Mean(now);
        double rounding = Averages.RootMeanSquare(now.Select((f, i) => f * one.Readings[i].Collected.RoundingShare));
        double? before = one.BeforeCleaning.IsEmpty
            ? null
            : Averages.Mean(BenchedInjector.FlowsSi(one.BeforeCleaning, rating));
        return new(mean, now.Length, now.Sum(f => (f - mean) * (f - mean)), rounding, before);
    }
}

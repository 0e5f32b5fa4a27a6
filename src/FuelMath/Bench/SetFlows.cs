using System.Collections.Immutable;
using FuelMath.Injectors;
using FuelMath.Internal;
using FuelMath.Uncertainty;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>Flows of one injector under the conditions of a rating, m³/s.</summary>
internal sealed record SetFlow(double Now, int Repeats, double Squares, double? HalfWidth, double? Before);

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
            throw new ArgumentException(
                $"Must have readings of static flow, each of them; '{silent.Name}' has none.",
                nameof(injectors)
            );
        }

        All = [.. injectors.Select(i => Of(i, rating, confidence))];
        var sample = new Sample(All.Select(f => f.Now));
        (Mean, Deviation) = (sample.Mean, sample.StandardDeviation);
        Spread = (All.Max(f => f.Now) - All.Min(f => f.Now)) / Mean;
        Rated = rating.StaticVolumeFlow.InSi();
        RatedPressure = rating.DifferentialPressure.InSi();
        Reach = limits.FromRating.InSi() + Guard.EdgeTolerance;
        int freedom = All.Sum(f => f.Repeats - 1);
        if (freedom > 0)
        {
            double repeatability = Math.Sqrt(All.Sum(f => f.Squares) / freedom) / Mean;
            int least = All.Min(f => f.Repeats);
            (Repeatability, LeastDifference) = (
                repeatability,
                Student.TwoSided(freedom, confidence) * repeatability * Math.Sqrt(2.0 / least)
            );
        }
    }

    internal ImmutableArray<SetFlow> All { get; }

    internal double Mean { get; }

    internal double Deviation { get; }

    /// <summary>(Largest - smallest) / mean.</summary>
    internal double Spread { get; }

    internal double Rated { get; }

    /// <summary>The differential pressure of the rating, Pa.</summary>
    internal double RatedPressure { get; }

    /// <summary>The largest departure from the rating, with the tolerance of an edge.</summary>
    internal double Reach { get; }

    /// <summary>Pooled standard deviation of repeats, as a share of the mean; none without repeats.</summary>
    internal double? Repeatability { get; }

    /// <summary>The least difference between two injectors that the repeats can show, as a share of the mean.</summary>
    internal double? LeastDifference { get; }

    private static SetFlow Of(BenchedInjector one, FlowRating rating, Ratio confidence)
    {
        double[] now = BenchedInjector.FlowsSi(one.Readings, rating);
        double mean = Averages.Mean(now);
        double? half =
            now.Length < 2 ? null : new Sample(now).StandardError * Student.TwoSided(now.Length - 1, confidence);
        double? before = one.BeforeCleaning.IsEmpty
            ? null
            : Averages.Mean(BenchedInjector.FlowsSi(one.BeforeCleaning, rating));
        return new(mean, now.Length, now.Sum(f => (f - mean) * (f - mean)), half, before);
    }
}

using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>What the leakage readings at one pressure, of one fluid and temperature, say against a limit.</summary>
/// <remarks>
/// Counts add up, and so do volumes; each kind is judged by itself. Rejected if either kind is, else accepted if either is.
/// Made by a <see cref="LeakageVerdict"/>.
/// </remarks>
public sealed class LeakageAtCondition
{
    private readonly double rate;
    private readonly LeakageLimit limit;

    internal LeakageAtCondition(
        ImmutableArray<LeakageReading> readings,
        LeakageLimit limit,
        DropVolume drop,
        Ratio confidence
    )
    {
        (Readings, this.limit) = (readings, limit);
        rate = readings.Sum(r => r.In(limit.IsByDrops, drop.Si).Amount) / readings.Sum(r => r.OverSi);
        LeakageReading[] counted = [.. readings.Where(r => r.Drops.HasValue)];
        LeakageReading[] collected = [.. readings.Where(r => !r.Drops.HasValue)];
        double dropsAllowed = limit.IsByDrops ? limit.Si : limit.Si / drop.Si;
        double volumeAllowed = limit.IsByDrops ? limit.Si * drop.Si : limit.Si;
        BenchVerdict[] verdicts =
        [
            .. counted.Length > 0 ? [OfCount(counted, dropsAllowed, confidence)] : Array.Empty<BenchVerdict>(),
            .. collected.Length > 0 ? [OfVolume(collected, volumeAllowed)] : Array.Empty<BenchVerdict>(),
        ];
        Verdict =
            verdicts.Contains(BenchVerdict.Rejected) ? BenchVerdict.Rejected
            : verdicts.Contains(BenchVerdict.Accepted) ? BenchVerdict.Accepted
            : BenchVerdict.Undecided;
    }

    /// <summary>The readings.</summary>
    public ImmutableArray<LeakageReading> Readings { get; }

    /// <summary>The differential pressure that was held.</summary>
    public Pressure DifferentialPressure => Readings[0].Conditions.DifferentialPressure;

    /// <summary>What they say.</summary>
    public BenchVerdict Verdict { get; }

    /// <summary>What passed, as a share of the limit.</summary>
    public Ratio ShareOfLimit => SiUnits.Ratio(rate / limit.Si);

    /// <summary>Formats what passed, in the measure of the limit, and at which pressure.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        (
            limit.IsByDrops
                ? FormattableString.Invariant($"{rate * 60:0.###} drops/min")
                : Guard.Show(SiUnits.VolumeFlow(rate), UnitsNet.Units.VolumeFlowUnit.CubicCentimeterPerMinute)
        ) + $" at {Show.Bar(DifferentialPressure.InSi())}";

    /// <summary>Drops against the most per second.</summary>
    private static BenchVerdict OfCount(LeakageReading[] readings, double allowed, Ratio confidence)
    {
        long count = readings.Sum(r => (long)r.Drops!.Value);
        double mean = allowed * readings.Sum(r => r.OverSi);
        double left = PoissonLimits.Left(confidence);
        return PoissonLimits.AtMost(count, mean) <= left ? BenchVerdict.Accepted
            : PoissonLimits.AtLeast(count, mean) <= left ? BenchVerdict.Rejected
            : BenchVerdict.Undecided;
    }

    /// <summary>A volume against the most per second, with one step of the glass for each reading to either side.</summary>
    private static BenchVerdict OfVolume(LeakageReading[] readings, double allowed)
    {
        double most = allowed * readings.Sum(r => r.OverSi);
        double volume = readings.Sum(r => r.Collected!.Value.InSi());
        double step = readings.Sum(r => r.Resolution!.Value.InSi());
        double slack = Guard.EdgeTolerance * most;
        return volume + step <= most + slack ? BenchVerdict.Accepted
            : volume - step > most + slack ? BenchVerdict.Rejected
            : BenchVerdict.Undecided;
    }
}

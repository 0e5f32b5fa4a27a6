using System.Collections.Immutable;
using FuelMath.Internal;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>What leakage readings of one injector say against a limit.</summary>
/// <remarks>
/// Readings count together: all that passed over all of the time. Undecided where even the limit would not have shown one
/// step of the instrument in that time: no drop in twenty seconds does not prove one drop a minute. Immutable and safe to
/// share between threads. Equality is by reference.
/// </remarks>
public sealed class LeakageVerdict
{
    private readonly double rate;

    /// <summary>Judges leakage.</summary>
    /// <param name="readings">One or more readings. Copied.</param>
    /// <param name="limit">The most that may pass.</param>
    /// <param name="drop">The volume of a drop, for readings in another measure than the limit.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    public LeakageVerdict(IEnumerable<LeakageReading> readings, LeakageLimit limit, DropVolume drop)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(limit);
        ArgumentNullException.ThrowIfNull(drop);
        (Readings, Limit, Drop) = ([.. readings], limit, drop);
        Guard.AtLeast(1, Readings.Length, "A verdict on leakage", nameof(readings));
        (double Amount, double Step)[] all = [.. Readings.Select(r => r.In(limit.IsByDrops, drop.Si))];
        double seconds = Readings.Sum(r => r.OverSi);
        (double amount, double step) = (all.Sum(a => a.Amount), all.Max(a => a.Step));
        rate = amount / seconds;
        double allowed = limit.Si * seconds * (1 + Guard.EdgeTolerance);
        RestsOnDropVolume = Readings.Any(r => r.Drops.HasValue != limit.IsByDrops);
        Verdict =
            allowed < step
                ? amount > allowed + step
                    ? BenchVerdict.Rejected
                    : BenchVerdict.Undecided
                : amount <= allowed
                    ? BenchVerdict.Accepted
                    : BenchVerdict.Rejected;
    }

    /// <summary>The readings.</summary>
    public ImmutableArray<LeakageReading> Readings { get; }

    /// <summary>The most that may pass.</summary>
    public LeakageLimit Limit { get; }

    /// <summary>The volume of a drop that was used where measures differ.</summary>
    public DropVolume Drop { get; }

    /// <summary>What the readings say.</summary>
    public BenchVerdict Verdict { get; }

    /// <summary>Whether the volume of a drop played a part; see whether it is an estimate.</summary>
    public bool RestsOnDropVolume { get; }

    /// <summary>What passed, as a share of the limit.</summary>
    public Ratio ShareOfLimit => SiUnits.Ratio(rate / Limit.Si);

    /// <summary>Formats what passed, in the measure of the limit.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Limit.IsByDrops
            ? FormattableString.Invariant($"{rate * 60:0.###} drops/min")
            : Guard.Show(SiUnits.VolumeFlow(rate), UnitsNet.Units.VolumeFlowUnit.CubicCentimeterPerMinute);
}

using FuelMath.Internal;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>What a set report says of one injector.</summary>
/// <remarks>Made by a <see cref="SetReport"/>. Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class SetMember
{
    private readonly SetFlow flow;
    private readonly SetFlows set;

    internal SetMember(string name, SetFlow flow, SetFlows set, LeakageVerdict? leakage, SetCoil? coil)
    {
        (Name, this.flow, this.set) = (name, flow, set);
        (Leakage, Coil) = (leakage, coil?.Verdict);
        if (coil is not null)
        {
            CoilAtTwentyCelsius = SiUnits.ElectricResistance(coil.Ohms);
            CoilFromMedian = coil.FromMedian is { } share ? SiUnits.Ratio(share) : null;
        }
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The mean of its readings under the conditions of the rating, in m³/s.</summary>
    public VolumeFlow Flow => SiUnits.VolumeFlow(flow.Now);

    /// <summary>Half of Student's interval of that mean, in m³/s; none with a single reading.</summary>
    public VolumeFlow? FlowHalfWidth => flow.HalfWidth is { } value ? SiUnits.VolumeFlow(value) : null;

    /// <summary>Its departure from the rating, as a share of it.</summary>
    public Ratio FromRating => SiUnits.Ratio((flow.Now / set.Rated) - 1);

    /// <summary>Its departure from the mean of the set, as a share of it.</summary>
    public Ratio FromMean => SiUnits.Ratio((flow.Now / set.Mean) - 1);

    /// <summary>Its departure from the mean in standard deviations of the set: see the largest that is possible.</summary>
    public Ratio StandardScore => SiUnits.Ratio(set.Deviation == 0 ? 0 : (flow.Now - set.Mean) / set.Deviation);

    /// <summary>Its place by flow: 1 flows most; equal flows share the better place.</summary>
    public int Rank => 1 + set.All.Count(f => f.Now > flow.Now);

    /// <summary>What cleaning brought, as a share of the flow before; none without readings from before.</summary>
    public Ratio? CleaningGain => flow.Before is { } value ? SiUnits.Ratio((flow.Now / value) - 1) : null;

    /// <summary>Whether its flow lies within the limit about the rating.</summary>
    public bool IsFlowAccepted => Math.Abs((flow.Now / set.Rated) - 1) <= set.Reach;

    /// <summary>
    /// Whether the interval of its flow lies wholly on one side of the limit; none with a single reading, which can't tell.
    /// </summary>
    public bool? IsFlowClear =>
        flow.HalfWidth is { } half
            ? Math.Abs(Math.Abs((flow.Now / set.Rated) - 1) - set.Reach) > half / set.Rated
            : null;

    /// <summary>What its leakage says; none without a reading.</summary>
    public LeakageVerdict? Leakage { get; }

    /// <summary>The resistance of its coil at 20 °C, in ohm; none without a reading.</summary>
    public ElectricResistance? CoilAtTwentyCelsius { get; }

    /// <summary>The departure of its coil from the median of the set; none with fewer than three coils.</summary>
    public Ratio? CoilFromMedian { get; }

    /// <summary>What its coil says against the band; none without a reading or without a band.</summary>
    public CoilVerdict? Coil { get; }

    /// <summary>
    /// Rejected if flow, leakage or coil is; else undecided if leakage or coil is, or if leakage was watched only below the
    /// pressure of the rating; else accepted, as far as it was read.
    /// </summary>
    public BenchVerdict Verdict =>
        !IsFlowAccepted || Leakage?.Verdict == BenchVerdict.Rejected || Coil?.Verdict == BenchVerdict.Rejected
            ? BenchVerdict.Rejected
        : Leakage?.Verdict == BenchVerdict.Undecided || Coil?.Verdict == BenchVerdict.Undecided || !IsLeakageWatched
            ? BenchVerdict.Undecided
        : BenchVerdict.Accepted;

    /// <summary>Whether its <see cref="Verdict"/> is accepted; undecided is not.</summary>
    public bool IsAccepted => Verdict == BenchVerdict.Accepted;

    /// <summary>Whether leakage was not read at all, or also at the pressure of the rating or above.</summary>
    internal bool IsLeakageWatched =>
        Leakage is null || Leakage.HighestDifferentialPressure.InSi() >= set.RatedPressure * (1 - Guard.EdgeTolerance);
}

using UnitsNet;

namespace FuelMath.Bench;

public sealed partial class SetReport
{
    /// <summary>The results of a set report for one injector.</summary>
    /// <remarks>Created by a <see cref="SetReport"/>.</remarks>
    public sealed class Member
    {
        private readonly SetFlow flow;
        private readonly SetFlows set;
        private readonly double? half;
        private readonly SetScatter? scatter;

        internal Member(string name, int place, SetFlows set, LeakageVerdict? leakage, SetCoil? coil)
        {
            (Name, flow, this.set) = (name, set.All[place], set);
            scatter = set.Scatters[place];
            half = set.HalfWidths.IsEmpty ? null : set.HalfWidths[place];
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

        /// <summary>
        /// Half of Student's interval of that mean, in m³/s, by the pooled scatter of the repeats of the set, or by its
        /// own where it is not pooled; null where no injector was read twice.
        /// </summary>
        public VolumeFlow? FlowHalfWidth => half is { } value ? SiUnits.VolumeFlow(value) : null;

        /// <summary>
        /// Whether its repeats scatter as those of the others do, so that the scatter of all is taken for it; else its own
        /// is, and a finding says so.
        /// </summary>
        /// <remarks>Source: [ISO-5725-2] section 7.3.3, Cochran's test at 5 %.</remarks>
        public bool IsPooled => scatter is null;

        /// <summary>
        /// Its own repeatability: the standard deviation of its repeats, as a fraction of their mean, and at least the
        /// resolution of the instrument over the square root of twelve; null where it was not read twice.
        /// </summary>
        public Ratio? Repeatability => flow.Freedom > 0 ? SiUnits.Ratio(flow.OwnScatter / flow.Now) : null;

        /// <summary>Its departure from the rating, as a fraction of it.</summary>
        public Ratio FromRating => SiUnits.Ratio((flow.Now / set.Rated) - 1);

        /// <summary>Its departure from the mean of the set, as a fraction of it.</summary>
        public Ratio FromMean => SiUnits.Ratio((flow.Now / set.Mean) - 1);

        /// <summary>
        /// Its departure from the mean in standard deviations of the set; see
        /// <see cref="SetReport.LargestPossibleScore"/>.
        /// </summary>
        public Ratio StandardScore => SiUnits.Ratio(set.Deviation == 0 ? 0 : (flow.Now - set.Mean) / set.Deviation);

        /// <summary>Its rank by flow: 1 flows most; equal flows share the better rank.</summary>
        public int Rank => 1 + set.All.Count(f => f.Now > flow.Now);

        /// <summary>
        /// The gain of flow by cleaning, as a fraction of the flow before; null without readings from before.
        /// </summary>
        public Ratio? CleaningGain => flow.Before is { } value ? SiUnits.Ratio((flow.Now / value) - 1) : null;

        /// <summary>Whether its flow lies within the limit about the rating.</summary>
        public bool IsFlowAccepted => Math.Abs((flow.Now / set.Rated) - 1) <= set.Reach;

        /// <summary>
        /// Whether the interval of its flow lies wholly on one side of the limit; null where no injector was read
        /// twice,
        /// unless half a step of the instrument alone already crosses the limit.
        /// </summary>
        public bool? IsFlowClear =>
            half is { } value ? IsClearBy(value)
            : IsClearBy(flow.Rounding * Math.Sqrt(3)) ? null
            : false;

        /// <summary>The verdict on its leakage; null without a reading.</summary>
        public LeakageVerdict? Leakage { get; }

        /// <summary>The resistance of its coil at 20 °C, in ohm; null without a reading.</summary>
        public ElectricResistance? CoilAtTwentyCelsius { get; }

        /// <summary>The departure of its coil from the median of the set; null with fewer than three coils.</summary>
        public Ratio? CoilFromMedian { get; }

        /// <summary>The verdict on its coil; null without a reading or a band.</summary>
        public CoilVerdict? Coil { get; }

        /// <summary>
        /// Rejected if flow, leakage or coil is; else undecided if one of them is, if leakage was watched only below the
        /// pressure of the rating, or if its repeats scatter more than chance explains in 99 % of sets; else accepted, as
        /// far as it was read.
        /// </summary>
        public BenchVerdict Verdict =>
            !IsFlowAccepted || Leakage?.Verdict == BenchVerdict.Rejected || Coil?.Verdict == BenchVerdict.Rejected
                ? BenchVerdict.Rejected
            : IsFlowClear == false
            || Leakage?.Verdict == BenchVerdict.Undecided
            || Coil?.Verdict == BenchVerdict.Undecided
            || !IsLeakageWatched
            || scatter is { IsOutlier: true }
                ? BenchVerdict.Undecided
            : BenchVerdict.Accepted;

        /// <summary>Whether its <see cref="Verdict"/> is accepted; undecided is not.</summary>
        public bool IsAccepted => Verdict == BenchVerdict.Accepted;

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Name}: {Flow}, {FromMean} from the mean, {Verdict}");

        /// <summary>The test by which its scatter is not pooled; null where it is.</summary>
        internal SetScatter? Scatter => scatter;

        /// <summary>Whether leakage was not read, or was also read at the pressure of the rating or above.</summary>
        internal bool IsLeakageWatched =>
            Leakage is null
            || Leakage.HighestDifferentialPressure.InSi() >= set.RatedPressure * (1 - Guard.EdgeTolerance);

        private bool IsClearBy(double halfWidth) =>
            Math.Abs(Math.Abs((flow.Now / set.Rated) - 1) - set.Reach) > halfWidth / set.Rated;
    }
}

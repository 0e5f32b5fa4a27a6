using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

public sealed partial class LeakageVerdict
{
    /// <summary>
    /// The verdict on leakage readings at one pressure, with one fluid and temperature, against a limit.
    /// </summary>
    /// <remarks>
    /// Counts of drops are added up, and so are volumes; each kind is judged separately. Rejected if either kind is,
    /// else
    /// accepted if either is. Created by a <see cref="LeakageVerdict"/>.
    /// </remarks>
    public sealed class AtCondition
    {
        private readonly double rate;
        private readonly AcceptanceLimits.LeakageLimit limit;

        internal AtCondition(
            ImmutableArray<Reading> readings,
            AcceptanceLimits.LeakageLimit limit,
            DropVolume drop,
            Ratio confidence
        )
        {
            (Readings, this.limit) = (readings, limit);
            rate = readings.Sum(r => r.In(limit.IsByDrops, drop.Si)) / readings.Sum(r => r.OverSi);
            Reading[] counted = [.. readings.Where(r => r.Drops.HasValue)];
            Reading[] collected = [.. readings.Where(r => !r.Drops.HasValue)];
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
        public ImmutableArray<Reading> Readings { get; }

        /// <summary>The differential pressure that was held.</summary>
        public Pressure DifferentialPressure => Readings[0].Conditions.DifferentialPressure;

        /// <summary>The verdict.</summary>
        public BenchVerdict Verdict { get; }

        /// <summary>The leakage as a fraction of the limit.</summary>
        public Ratio ShareOfLimit => SiUnits.Ratio(rate / limit.Si);

        /// <summary>Formats the leakage, in the measure of the limit, and the pressure.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            (
                limit.IsByDrops
                    ? FormattableString.Invariant($"{rate * 60:0.###} drops/min")
                    : Guard.Show(SiUnits.VolumeFlow(rate), UnitsNet.Units.VolumeFlowUnit.CubicCentimeterPerMinute)
            ) + $" at {Show.Bar(DifferentialPressure.InSi())}";

        /// <summary>Judges drops against the allowed rate.</summary>
        private static BenchVerdict OfCount(Reading[] readings, double allowed, Ratio confidence)
        {
            long count = readings.Sum(r => (long)r.Drops!.Value);
            double mean = allowed * readings.Sum(r => r.OverSi);
            double left = PoissonLimits.Left(confidence);
            return PoissonLimits.AtMost(count, mean) <= left ? BenchVerdict.Accepted
                : PoissonLimits.AtLeast(count, mean) <= left ? BenchVerdict.Rejected
                : BenchVerdict.Undecided;
        }

        /// <summary>
        /// Judges a volume against the allowed rate, with one step of the glass per reading as the uncertainty to
        /// either
        /// side.
        /// </summary>
        private static BenchVerdict OfVolume(Reading[] readings, double allowed)
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
}

using UnitsNet;

namespace FuelMath.Bench;

public sealed partial class LeakageVerdict
{
    /// <summary>
    /// The leakage of a closed injector over a time: drops that were counted, or a volume that was collected.
    /// </summary>
    /// <remarks>
    /// Kept as read; zero is a reading too. Caution: a leaking injector can fill a cylinder or the sump with fuel.
    /// </remarks>
    public sealed class Reading
    {
        private const int MostDrops = 1_000_000;

        private Reading(int? drops, Volume? collected, Volume? resolution, Duration over, BenchConditions conditions)
        {
            ArgumentNullException.ThrowIfNull(conditions);
            OverSi = Guard.Positive(over, over.InSi());
            (Drops, Collected, Resolution, Over, Conditions) = (drops, collected, resolution, over, conditions);
        }

        /// <summary>Number of drops; null when a volume was collected.</summary>
        public int? Drops { get; }

        /// <summary>The volume collected; null when drops were counted.</summary>
        public Volume? Collected { get; }

        /// <summary>The resolution of the glass; null when drops were counted.</summary>
        public Volume? Resolution { get; }

        /// <summary>The time of observation.</summary>
        public Duration Over { get; }

        /// <summary>What the bench held.</summary>
        public BenchConditions Conditions { get; }

        internal double OverSi { get; }

        /// <summary>Drops that were counted.</summary>
        /// <param name="drops">Number of drops; 0 to 1 000 000.</param>
        /// <param name="over">The time of observation; greater than zero.</param>
        /// <param name="conditions">What the bench held.</param>
        /// <returns>The reading.</returns>
        /// <exception cref="ArgumentNullException"><paramref name="conditions"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        public static Reading FromDrops(int drops, Duration over, BenchConditions conditions) =>
            new(Guard.InRange(drops, 0, MostDrops), null, null, over, conditions);

        /// <summary>A volume that was collected.</summary>
        /// <param name="collected">The volume; not negative.</param>
        /// <param name="resolution">The smallest step that can be read; greater than zero.</param>
        /// <param name="over">The time of observation; greater than zero.</param>
        /// <param name="conditions">What the bench held.</param>
        /// <returns>The reading.</returns>
        /// <exception cref="ArgumentNullException"><paramref name="conditions"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        public static Reading FromVolume(Volume collected, Volume resolution, Duration over, BenchConditions conditions)
        {
            Guard.NotNegative(collected, collected.InSi());
            Guard.Positive(resolution, resolution.InSi());
            return new(null, collected, resolution, over, conditions);
        }

        /// <inheritdoc />
        public override string ToString() =>
            Drops is null ? LogText.Of($"{Collected} in {Over}") : LogText.Of($"{Drops} drops in {Over}");

        /// <summary>The amount, in drops or in m³.</summary>
        internal double In(bool drops, double dropVolume) =>
            (Drops, drops) switch
            {
                ({ } count, true) => count,
                ({ } count, false) => count * dropVolume,
                (null, false) => Collected!.Value.InSi(),
                (null, true) => Collected!.Value.InSi() / dropVolume,
            };
    }
}

using UnitsNet;

namespace FuelMath;

public sealed partial class FilterLoading
{
    /// <summary>The times between which a filter is full, from the bounds of its dirt.</summary>
    public sealed class ServiceInterval
    {
        internal ServiceInterval(Duration shortest, Duration? longest, DataSource source) =>
            (Shortest, Longest, Source) = (shortest, longest, source);

        /// <summary>The time with the most dirt: change the filter by then.</summary>
        public Duration Shortest { get; }

        /// <summary>The time with the least dirt; null when the least is zero.</summary>
        public Duration? Longest { get; }

        /// <summary>Where the bounds of the dirt come from.</summary>
        public DataSource Source { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Shortest} to {Longest}");
    }
}

using UnitsNet;

namespace FuelMath;

/// <summary>Between which times a filter is full, as far as the bounds of its dirt let it be told.</summary>
public sealed class ServiceInterval
{
    internal ServiceInterval(Duration shortest, Duration? longest, DataSource source) =>
        (Shortest, Longest, Source) = (shortest, longest, source);

    /// <summary>With the most dirt. Change it by then.</summary>
    public Duration Shortest { get; }

    /// <summary>With the least dirt; null when there may be none, and it may last for ever.</summary>
    public Duration? Longest { get; }

    /// <summary>Where the bounds of the dirt come from.</summary>
    public DataSource Source { get; }
}

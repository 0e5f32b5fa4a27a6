using FuelMath.Internal;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>What a set report says of one injector.</summary>
/// <remarks>Made by a <see cref="SetReport"/>. Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class SetMember
{
    private readonly double flow;
    private readonly double? halfWidth;
    private readonly double rating;
    private readonly double mean;
    private readonly double? before;

    internal SetMember(
        string name,
        double flow,
        double? halfWidth,
        double? before,
        double rating,
        double mean,
        double deviation,
        int rank,
        bool isAccepted
    )
    {
        (Name, Rank, IsAccepted) = (name, rank, isAccepted);
        (this.flow, this.halfWidth, this.before, this.rating, this.mean) = (flow, halfWidth, before, rating, mean);
        StandardScore = SiUnits.Ratio(deviation == 0 ? 0 : (flow - mean) / deviation);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The mean of its readings under the conditions of the rating, in m³/s.</summary>
    public VolumeFlow Flow => SiUnits.VolumeFlow(flow);

    /// <summary>Half of Student's interval of that mean, in m³/s; none with a single reading.</summary>
    public VolumeFlow? FlowHalfWidth => halfWidth is { } value ? SiUnits.VolumeFlow(value) : null;

    /// <summary>Its departure from the rating, as a share of it.</summary>
    public Ratio FromRating => SiUnits.Ratio((flow / rating) - 1);

    /// <summary>Its departure from the mean of the set, as a share of it.</summary>
    public Ratio FromMean => SiUnits.Ratio((flow / mean) - 1);

    /// <summary>Its departure from the mean in standard deviations of the set: see the largest that is possible.</summary>
    public Ratio StandardScore { get; }

    /// <summary>Its place by flow: 1 flows most; equal flows share the better place.</summary>
    public int Rank { get; }

    /// <summary>What cleaning brought, as a share of the flow before; none without readings from before.</summary>
    public Ratio? CleaningGain => before is { } value ? SiUnits.Ratio((flow / value) - 1) : null;

    /// <summary>Whether it lies within the limit about the rating.</summary>
    public bool IsAccepted { get; }
}

using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Anything that fuel passes between two places: a hose, a filter, a pump, a regulator.</summary>
/// <remarks>
/// Only the library derives from it: a part names the law by which it takes or gives pressure, and answers what findings,
/// leak tests and estimates ask, so that nothing outside looks at which part it is. Parts are immutable and safe to share between threads; equality is by
/// reference.
/// </remarks>
public abstract class FlowPart
{
    private protected FlowPart() { }

    /// <summary>Its law with its settings. Asked once for each network.</summary>
    internal abstract LawSettings Law { get; }

    /// <summary>What has to be said of a point, beside its fluid, before it can be read there.</summary>
    internal virtual PartNeeds Needs => PartNeeds.None;

    /// <summary>What is read of it in one solve, for a part that changes from point to point; else null.</summary>
    internal virtual PartReading? Reading() => null;

    /// <summary>Whether it does nothing but take pressure from what flows in it: no pump, and nothing with a spring.</summary>
    internal virtual bool IsPassage => true;

    /// <summary>Whether pressure that is shut in on one side of it stays there, the pumps standing still.</summary>
    internal virtual bool ShutsIn => false;

    /// <summary>Where inside it a pressure that is shut in may get lost.</summary>
    internal virtual LeakPlaces LeakPlaces => LeakPlaces.None;

    /// <summary>The fuel in it, m³; null where nobody knows.</summary>
    internal virtual double? VolumeSi => null;

    /// <summary>The names of those of its fittings whose losses are estimates.</summary>
    internal virtual ImmutableArray<string> Estimated => [];

    /// <summary>Why it can't be in a line by itself, a sentence; null where it can.</summary>
    internal virtual string? WhyNoLine => null;

    /// <summary>Why a fuel system can't hold it, a clause; null where it can.</summary>
    internal virtual string? WhyNoSystem => null;

    /// <summary>What is to be said of it in a solved state.</summary>
    internal virtual IEnumerable<Finding> FindingsAt(PartState at) => [];
}

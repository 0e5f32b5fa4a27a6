using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Any part through which fuel flows between two nodes: a hose, a filter, a pump, a regulator.</summary>
/// <remarks>
/// Only the library derives from it: a part names its pressure law, and provides its findings, leak places and
/// estimates, so that no code outside depends on the type of part.
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public abstract class FlowPart
{
    private protected FlowPart() { }

    /// <summary>Its law with its settings. Called once for each network.</summary>
    internal abstract LawSettings Law { get; }

    /// <summary>The inputs that the part needs at an operating point, besides the fluid.</summary>
    internal virtual PartNeeds Needs => PartNeeds.None;

    /// <summary>Its reading in one solve, for a part that changes from point to point; else null.</summary>
    internal virtual PartReading? Reading() => null;

    /// <summary>Whether it only causes a pressure loss: no pump, and nothing with a spring.</summary>
    internal virtual bool IsPassage => true;

    /// <summary>Whether it is a pump, running or stopped.</summary>
    internal virtual bool IsPump => false;

    /// <summary>Whether it traps pressure on one side when the pumps are stopped.</summary>
    internal virtual bool ShutsIn => false;

    /// <summary>Whether it lets through only what is too much, and shuts before the pressure ahead of it falls.</summary>
    internal virtual bool ReturnsSurplus => false;

    /// <summary>Where trapped pressure may leak inside it.</summary>
    internal virtual LeakPlaces LeakPlaces => LeakPlaces.None;

    /// <summary>The fuel in it, m³; null where not known.</summary>
    internal virtual double? VolumeSi => null;

    /// <summary>The names of its fittings with estimated losses.</summary>
    internal virtual ImmutableArray<string> Estimated => [];

    /// <summary>Why it can't be a line by itself, a sentence; null if it can.</summary>
    internal virtual RefusalText? WhyNoLine => null;

    /// <summary>The types that stand in its place in a fuel system; empty where it may be there itself.</summary>
    internal virtual ImmutableArray<string> KindInSystem => [];

    /// <summary>Its findings in a solved state.</summary>
    internal virtual IEnumerable<Finding> FindingsAt(PartState at) => [];
}

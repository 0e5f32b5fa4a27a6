namespace FuelMath.Networks;

/// <summary>Anything that fuel passes between two places: a hose, a filter, a pump, a regulator.</summary>
/// <remarks>
/// Only the library derives from it: a part names the law by which it takes or gives pressure, and the solver asks nothing
/// else. Parts are immutable and safe to share between threads; equality is by reference.
/// </remarks>
public abstract class FlowPart
{
    private protected FlowPart() { }

    /// <summary>Its law with its settings. Asked once for each network.</summary>
    internal abstract LinkPart Law { get; }

    /// <summary>What has to be said of a point, beside its fluid, before it can be read there.</summary>
    internal virtual PartNeeds Needs => PartNeeds.None;

    /// <summary>What is read of it in one solve, for a part that changes from point to point; else null.</summary>
    internal virtual PartReading? Reading() => null;
}

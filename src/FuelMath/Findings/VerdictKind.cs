namespace FuelMath;

/// <summary>What a verdict says, the better first.</summary>
public enum VerdictKind
{
    /// <summary>Everything that matters was judged, and nothing needs action.</summary>
    Holds,

    /// <summary>Something must be done before the result is relied on.</summary>
    ActFirst,

    /// <summary>Something that matters could not be judged: what it would say is not known.</summary>
    NotKnown,

    /// <summary>Do not run the engine like this.</summary>
    DoNotRun,
}
